/** Drives the builds on show by strokes from slow to fast while their peaks are looked at; what was driven once is kept. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildCycle, CycleReading } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { type Drive, peakDrives } from './cycle-motion.ts';
import { troubleOf } from './cycle-solve.ts';
import type { Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { keyNow } from './solve.ts';
import { openId, project, theory, visibleBuilds } from './store.ts';

type Peaks = CycleReading['peaks'];

/** One build by one stroke. */
export interface PeakAnswer {
  readonly frequency_Hz: number;
  readonly peaks?: Peaks;
  /** The peaks are those of before an edit. */
  readonly stale: boolean;
  /** Why the run gave no peaks. */
  readonly trouble?: string;
}

type Kept = { readonly peaks: Peaks } | Exclude<BuildCycle, { status: 'finished' }>;

/** Answers kept [runs]. */
const KEPT = 300;
/** While a key is being typed, the run of the number before it is not worth its start [ms]. */
const PATIENCE_MS = 120;

const answers = signal<ReadonlyMap<string, Kept>>(new Map());
/** The last peaks of each build by each stroke. */
const last = new Map<string, Peaks>();
export const peaksRunning = signal(false);
/** Why the last run gave no answers at all. */
export const peaksFailure = signal<Failure | undefined>(undefined);

const keyOf = (build: Build, drive: Drive): string => `${keyNow(build)}|${JSON.stringify(drive)}`;
const slotOf = (build: Build, stroke: number): string => `${openId.value}:${build.id}:${stroke}`;
const hertzOf = (drive: Drive): number => (drive.kind === 'sine' ? drive.frequency_Hz : 0);

/** From slow to fast. */
export const peaksOf = (build: Build): PeakAnswer[] =>
  peakDrives.value.map((drive, stroke) => {
    const answer = answers.value.get(keyOf(build, drive));
    const before = last.get(slotOf(build, stroke));
    const frequency_Hz = hertzOf(drive);
    if (answer && 'peaks' in answer) return { frequency_Hz, peaks: answer.peaks, stale: false };
    return {
      frequency_Hz,
      ...(before && { peaks: before }),
      stale: true,
      ...(answer && { trouble: troubleOf(answer) }),
    };
  });

const keptOf = (cycle: BuildCycle): Kept => (cycle.status === 'finished' ? { peaks: cycle.reading.peaks } : cycle);

/** All builds that are missing at one stroke: their stacks stay with the worker from one stroke to the next. */
interface Wanted {
  readonly drive: Drive;
  readonly stroke: number;
  readonly builds: readonly Build[];
}

const wantedNow = (): Wanted[] =>
  peakDrives.value
    .map((drive, stroke) => ({
      drive,
      stroke,
      builds: visibleBuilds.value.filter((build) => !answers.value.has(keyOf(build, drive))),
    }))
    .filter(({ builds }) => builds.length > 0);

async function driveBy({ drive, stroke, builds }: Wanted, signal: AbortSignal): Promise<void> {
  const keys = builds.map((build) => keyOf(build, drive));
  const buildIds = builds.map(({ id }) => id);
  const request = { project: project.value, buildIds, drive, theory: theory.value };
  const { cycles } = await sideSolver().cycles(request, { signal, channel: 'peaks' });
  peaksFailure.value = undefined;
  const fresh = builds.map((build, i) => [keys[i], keptOf(cycles[build.id])] as const);
  for (const [i, build] of builds.entries()) {
    const [, kept] = fresh[i];
    if ('peaks' in kept) last.set(slotOf(build, stroke), kept.peaks);
  }
  answers.value = new Map([...answers.value, ...fresh].slice(-KEPT));
}

let running: AbortController | undefined;

async function driveAll(): Promise<void> {
  const stop = new AbortController();
  running = stop;
  peaksRunning.value = true;
  try {
    for (const wanted of wantedNow()) await driveBy(wanted, stop.signal);
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') peaksFailure.value = error;
  } finally {
    if (running === stop) {
      running = undefined;
      peaksRunning.value = false;
    }
  }
}

/** What every run depends on: an answer that comes in starts nothing anew. */
const wish = (): string =>
  visibleBuilds.value.map((build) => peakDrives.value.map((drive) => keyOf(build, drive)).join()).join();

/** Starts following the document; ends with the view. */
export function startPeaks(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const dispose = effect(() => {
    wish();
    clearTimeout(timer);
    running?.abort();
    timer = setTimeout(() => void untracked(driveAll), PATIENCE_MS);
  });
  return () => {
    dispose();
    clearTimeout(timer);
    running?.abort();
  };
}
