/** Solves the bands of the builds on show, one after the other, once their plain curves are there and bands are wanted. */

import { effect, signal, untracked } from '@preact/signals';
import { SolverError } from '../../../workers/client.ts';
import type { BuildBands } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { isSolved } from '../section/shape-at.ts';
import { bands } from './preferences.ts';
import type { Failure } from './reasons.ts';
import { sideSolver } from './side-solver.ts';
import { addBands, keyNow, type Outcome, outcomes, requestFor } from './solve.ts';
import type { ForceCurve } from './solved.ts';
import { visibleBuilds } from './store.ts';
import { awaitsWaves } from './wave-solve.ts';

interface Run {
  readonly key: string;
  readonly build: Build;
  readonly stop: AbortController;
}

/** Why the last band could not be solved; a band that is there takes it back. */
export const bandsFailure = signal<Failure | undefined>(undefined);
export const bandsRunning = signal(false);

/** Not asked again until something changes. */
const refused = new Set<string>();
let running: Run | undefined;

const hasBands = (curve: ForceCurve): boolean => curve.points.filter(isSolved).every((point) => point.band);

/** Settled curves without a band, as the document is now. */
function lacking(): (Outcome & { readonly build: Build })[] {
  return visibleBuilds.value.flatMap((build) => {
    const outcome = outcomes.value.get(build.id);
    if (!outcome?.curve || outcome.stale || outcome.key !== keyNow(build) || awaitsWaves(outcome)) return [];
    return hasBands(outcome.curve) || refused.has(outcome.key) ? [] : [{ ...outcome, build }];
  });
}

function plan(): void {
  const wanted = bands.value === 'shown' ? lacking() : [];
  if (running) {
    const { key, stop } = running;
    if (!wanted.some((outcome) => outcome.key === key)) stop.abort();
    return;
  }
  const [first] = wanted;
  if (first) void untracked(() => solve({ key: first.key, build: first.build, stop: new AbortController() }));
}

async function solve(run: Run): Promise<void> {
  running = run;
  bandsRunning.value = true;
  const request = requestFor([run.build]);
  try {
    const { builds } = await sideSolver().forceBands(request, { signal: run.stop.signal, channel: 'bands' });
    take(run.key, builds[run.build.id]);
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') refuse(run.key, error);
  } finally {
    running = undefined;
    bandsRunning.value = false;
  }
  untracked(plan);
}

function take(key: string, answer: BuildBands): void {
  if (answer.status === 'failed') {
    refuse(key, answer.error);
    return;
  }
  bandsFailure.value = undefined;
  const banded = addBands(key, answer.bands);
  if (!banded || !hasBands(banded)) refused.add(key);
}

function refuse(key: string, why: Failure): void {
  refused.add(key);
  bandsFailure.value = why;
}

/** Starts following what is on show. */
export const startBands = (): (() => void) => effect(plan);
