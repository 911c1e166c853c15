/** Drives the builds on show over time, while the cycle is looked at; what was driven once is kept. */
import { computed, effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildCycle, CycleReading } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import { position_m } from './conditions.ts';
import { sideSolver } from './side-solver.ts';
import { keyNow } from './solve.ts';
import { openId, project, theory, visibleBuilds } from './store.ts';

export type { CycleReading };

/** Answers kept [builds]. */
const KEPT = 48;
/** A usual stroke of a test bench; less where the travel is short (common practice). */
const USUAL_STROKE_MM = 50;
const USUAL_FREQUENCY_HZ = 2;

const wantedStroke_mm = signal<number | undefined>(undefined);
export const frequency_Hz = signal(USUAL_FREQUENCY_HZ);

/** From end to end; always within the travel. */
export const stroke_mm = computed(() => {
  const { travel_mm } = project.value.damper;
  return Math.min(wantedStroke_mm.value ?? USUAL_STROKE_MM, travel_mm);
});
export const setStroke = (next_mm: number): void => {
  wantedStroke_mm.value = next_mm;
};
export const setFrequency = (next_Hz: number): void => {
  frequency_Hz.value = next_Hz;
};

export type CycleAnswer = (BuildCycle | { readonly status: 'waiting' }) & {
  /** Of the build as it was before an edit: shown until the new run is there. */
  readonly stale: boolean;
};

const answers = signal<ReadonlyMap<string, BuildCycle>>(new Map());
export const cyclesRunning = signal(false);
/** Why the last run gave no answers at all. */
export const cyclesFailure = signal<string | undefined>(undefined);

const keyOf = (build: Build): string => `${keyNow(build)}|${stroke_mm.value}|${frequency_Hz.value}`;

/** The last run of each build that finished. */
const last = new Map<string, BuildCycle>();
const lastKey = (buildId: string): string => `${openId.value}:${buildId}`;

export function cycleOf(build: Build): CycleAnswer {
  const answer = answers.value.get(keyOf(build));
  if (answer) return { ...answer, stale: false };
  return { ...(last.get(lastKey(build.id)) ?? { status: 'waiting' }), stale: true };
}

interface Fresh {
  readonly id: string;
  readonly key: string;
  readonly cycle: BuildCycle;
}

function keep(fresh: readonly Fresh[]): void {
  for (const { id, cycle } of fresh) if (cycle.status === 'finished') last.set(lastKey(id), cycle);
  const all = [...answers.value, ...fresh.map(({ key, cycle }) => [key, cycle] as const)];
  answers.value = new Map(all.slice(-KEPT));
}

/** The bench keeps the place in the stroke for the middle of the motion; it moves only as far as the ends ask. */
function driveNow() {
  const travel_m = metresFromMillimetres(project.value.damper.travel_mm);
  const stroke_m = metresFromMillimetres(stroke_mm.value);
  const wanted_m = position_m.value ?? travel_m / 2;
  const middle_m = Math.min(Math.max(wanted_m, stroke_m / 2), travel_m - stroke_m / 2);
  return { kind: 'sine' as const, stroke_m, frequency_Hz: frequency_Hz.value, middle_m };
}

/** While a key is being typed, the run of the number before it is not worth its start [ms]. */
const PATIENCE_MS = 120;
let timer: ReturnType<typeof setTimeout> | undefined;
let running: AbortController | undefined;

function plan(): void {
  const missing = visibleBuilds.value.filter((build) => !answers.value.has(keyOf(build)));
  clearTimeout(timer);
  running?.abort();
  if (missing.length > 0) timer = setTimeout(() => void untracked(() => drive(missing)), PATIENCE_MS);
}

async function drive(missing: readonly Build[]): Promise<void> {
  const stop = new AbortController();
  running = stop;
  cyclesRunning.value = true;
  const keys = missing.map((build) => ({ id: build.id, key: keyOf(build) }));
  const buildIds = missing.map(({ id }) => id);
  const request = { project: project.value, buildIds, drive: driveNow(), theory: theory.value };
  try {
    const { cycles } = await sideSolver().cycles(request, { signal: stop.signal, channel: 'cycle' });
    cyclesFailure.value = undefined;
    keep(keys.map(({ id, key }) => ({ id, key, cycle: cycles[id] })));
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') cyclesFailure.value = error.message;
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
