/** Drives the builds on show over time, while the cycle is looked at; what was driven once is kept. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildCycle, CycleReading } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { type Drive, driveKey, driveNow, motion } from './cycle-motion.ts';
import { inReaderUnits } from './quantities.ts';
import { errorInWords, type Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { keyNow } from './solve.ts';
import { openId, project, theory, visibleBuilds } from './store.ts';

export type { CycleReading };

/** Answers kept [builds]. */
const KEPT = 48;

export interface CycleAnswer {
  readonly reading?: CycleReading;
  /** The reading is of the build or the motion before: shown until a new run is there, and where that one ended early. */
  readonly stale: boolean;
  /** Why the run of the build as it is gave no reading. */
  readonly trouble?: string;
}

const answers = signal<ReadonlyMap<string, BuildCycle>>(new Map());
export const cyclesRunning = signal(false);
/** Why the last run gave no answers at all. */
export const cyclesFailure = signal<Failure | undefined>(undefined);

const keyOf = (build: Build): string => `${keyNow(build)}|${driveKey.value}`;

/** What was last read off each build, by kind of motion: a loop of a sine is no stand-in for that of a trace. */
const last = new Map<string, CycleReading>();
const lastKey = (buildId: string): string => `${openId.value}:${buildId}:${motion.value}`;

export function cycleOf(build: Build): CycleAnswer {
  const answer = answers.value.get(keyOf(build));
  if (answer?.status === 'finished') return { reading: answer.reading, stale: false };
  const reading = last.get(lastKey(build.id));
  return { ...(reading && { reading }), stale: true, ...(answer && { trouble: troubleOf(answer) }) };
}

/** In the person's units. */
export const troubleOf = (answer: Exclude<BuildCycle, { status: 'finished' }>): string =>
  answer.status === 'unfinished' ? inReaderUnits(answer.reason) : errorInWords(answer.error);

interface Fresh {
  readonly id: string;
  readonly key: string;
  readonly cycle: BuildCycle;
}

function keep(fresh: readonly Fresh[]): void {
  for (const { id, cycle } of fresh) if (cycle.status === 'finished') last.set(lastKey(id), cycle.reading);
  const all = [...answers.value, ...fresh.map(({ key, cycle }) => [key, cycle] as const)];
  answers.value = new Map(all.slice(-KEPT));
}

/** While a key is being typed, the run of the number before it is not worth its start [ms]. */
const PATIENCE_MS = 120;
let timer: ReturnType<typeof setTimeout> | undefined;
let running: AbortController | undefined;

function plan(): void {
  const missing = visibleBuilds.value.filter((build) => !answers.value.has(keyOf(build)));
  clearTimeout(timer);
  running?.abort();
  const wanted = driveNow.value;
  if (wanted && missing.length > 0) timer = setTimeout(() => void untracked(() => drive(wanted, missing)), PATIENCE_MS);
}

async function drive(wanted: Drive, missing: readonly Build[]): Promise<void> {
  const stop = new AbortController();
  running = stop;
  cyclesRunning.value = true;
  const keys = missing.map((build) => ({ id: build.id, key: keyOf(build) }));
  const buildIds = missing.map(({ id }) => id);
  const request = { project: project.value, buildIds, drive: wanted, theory: theory.value };
  try {
    const { cycles } = await sideSolver().cycles(request, { signal: stop.signal, channel: 'cycle' });
    cyclesFailure.value = undefined;
    keep(keys.map(({ id, key }) => ({ id, key, cycle: cycles[id] })));
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') cyclesFailure.value = error;
  } finally {
    if (running === stop) {
      running = undefined;
      cyclesRunning.value = false;
    }
  }
}

/** Starts following the document; ends with the view. */
export function startCycles(): () => void {
  const dispose = effect(plan);
  return () => {
    dispose();
    clearTimeout(timer);
    running?.abort();
  };
}
