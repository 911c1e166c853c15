/** Solves a sweep: one build under one setting after the other, the coarse ones first, while the sweep is looked at. */

import { effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildForces, SpeedForces } from '../../../workers/protocol.ts';
import type { Build, Project } from '../../model/project.ts';
import { coarseFirst } from './coarse-first.ts';
import { errorInWords, type Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { requestFor } from './solve.ts';

export type { SpeedForces };

/** One build under one setting. */
export interface SweepPoint {
  /** Everything that its forces depend on. */
  readonly key: string;
  /** Which point of the sweep it is, whatever is edited meanwhile. */
  readonly slot: string;
  readonly build: Build;
  /** With the setting. */
  readonly project: Project;
  /** From full extension, where the sweep goes through the stroke [m]; that of the bench when absent. */
  readonly stroke_m?: number;
  /** Where it lies along the sweep. */
  readonly at: number;
}

/** Answers kept: all sweeps of a handful of builds, and a few steps of undo [points]. */
const KEPT = 600;
/** While a key is being typed, the sweep of the number before it is not worth its start [ms]. */
const PATIENCE_MS = 120;

const answers = signal<ReadonlyMap<string, BuildForces>>(new Map());
/** The last forces of each slot. */
const last = new Map<string, SpeedForces>();
export const sweepRunning = signal(false);
/** Why the last run gave no answer at all. */
export const sweepFailure = signal<Failure | undefined>(undefined);

export interface SweepAnswer {
  /** Of the build as it was before an edit where `stale`. */
  readonly forces?: SpeedForces;
  readonly failure?: string;
  readonly stale: boolean;
}

/** Undefined while nothing is known of the point. */
export function sweepAnswer({ key, slot }: SweepPoint): SweepAnswer | undefined {
  const answer = answers.value.get(key);
  if (answer?.status === 'solved') return { forces: answer.forces, stale: false };
  if (answer) return { failure: errorInWords(answer.error), stale: false };
  const before = last.get(slot);
  return before && { forces: before, stale: true };
}

function keep({ key, slot }: SweepPoint, answer: BuildForces): void {
  if (answer.status === 'solved') last.set(slot, answer.forces);
  answers.value = new Map([...answers.value, [key, answer] as const].slice(-KEPT));
}

let running: AbortController | undefined;

const isUnknown = ({ key }: SweepPoint): boolean => !answers.peek().has(key);

async function solveAll(missing: readonly SweepPoint[]): Promise<void> {
  const stop = new AbortController();
  running = stop;
  sweepRunning.value = true;
  try {
    for (const point of coarseFirst(missing)) {
      const { build, project, stroke_m } = point;
      const request = { ...requestFor([build]), project, ...(stroke_m !== undefined && { stroke_m }) };
      const { builds } = await sideSolver().forces(request, { signal: stop.signal, channel: 'sweep' });
      sweepFailure.value = undefined;
      keep(point, builds[build.id]);
    }
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') sweepFailure.value = error;
  } finally {
    if (running === stop) {
      running = undefined;
      sweepRunning.value = false;
    }
  }
}

/** Starts following what the sweep wants; ends with the view. */
export function startSweep(wanted: ReadonlySignal<readonly SweepPoint[]>): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const dispose = effect(() => {
    const missing = wanted.value.filter(isUnknown);
    clearTimeout(timer);
    running?.abort();
    if (missing.length > 0) timer = setTimeout(() => void untracked(() => solveAll(missing)), PATIENCE_MS);
  });
  return () => {
    dispose();
    clearTimeout(timer);
    running?.abort();
  };
}
