/**
 * Under `auto` the bench first has round curves. Where they do not serve, the waves are followed here, one build after the other, by a
 * solver of its own, and the better curve takes the place of the round one: no edit ever waits for it.
 */

import { computed, effect, signal, untracked } from '@preact/signals';
import { createSolverClient, type SolverClient, SolverError } from '../../../workers/client.ts';
import type { BuildCurve, ForceCurvesRequest } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import type { Failure } from './reasons.ts';
import { keyNow, type Outcome, outcomes, replaceCurve, requestFor } from './solve.ts';
import type { ForceCurve } from './solved.ts';
import { project, selectedBuild, theory, visibleBuilds } from './store.ts';

interface Run {
  readonly key: string;
  readonly build: Build;
  readonly stop: AbortController;
}

/** Why the waves of a curve could not be solved at all, by its key. */
export const wavesFailures = signal<ReadonlyMap<string, Failure>>(new Map());
/** Failures kept, as many as curves are. */
const KEPT = 48;
/** Longer than the pauses of a quick hand, whose next curve comes sooner while nothing else is solved [ms]. */
const PATIENCE_MS = 150;

let client: SolverClient | undefined;
let running: Run | undefined;
let waiting: ReturnType<typeof setTimeout> | undefined;

const solver = (): SolverClient => {
  client ??= createSolverClient();
  return client;
};

const leavesRound = ({ theory: asked, stacks }: ForceCurve): boolean =>
  asked !== 'auto' && Object.values(stacks).some((stack) => stack?.leavesRound !== undefined);

/** Whether the curve of a build as it is now is a round one that a better one is to replace. */
export const awaitsWaves = ({ key, curve, stale }: Outcome): boolean =>
  theory.value === 'auto' && !stale && curve !== undefined && leavesRound(curve) && !wavesFailures.value.has(key);

/** A build on show awaits its waves. */
export const wavesAwaited = computed(() =>
  visibleBuilds.value.some(({ id }) => {
    const outcome = outcomes.value.get(id);
    return outcome !== undefined && awaitsWaves(outcome);
  }),
);

/** What is looked at comes first, what is hidden last. */
const inOrder = (): Build[] => [...new Set([selectedBuild.value, ...visibleBuilds.value, ...project.value.builds])];

function awaiting(): { readonly key: string; readonly build: Build }[] {
  return inOrder().flatMap((build) => {
    const outcome = outcomes.value.get(build.id);
    if (!outcome || !awaitsWaves(outcome) || outcome.key !== keyNow(build)) return [];
    return [{ key: outcome.key, build }];
  });
}

/** Runs with every change of what is awaited, and so puts the start off while changes come. */
function plan(): void {
  const wanted = awaiting();
  clearTimeout(waiting);
  if (running) {
    const { key, stop } = running;
    if (!wanted.some((each) => each.key === key)) stop.abort();
  } else if (wanted.length > 0) {
    waiting = setTimeout(start, PATIENCE_MS);
  }
}

function start(): void {
  const [first] = untracked(awaiting);
  if (first && !running) void solve({ ...first, stop: new AbortController() });
}

async function solve(run: Run): Promise<void> {
  running = run;
  const request: ForceCurvesRequest = requestFor([run.build]);
  try {
    const { curves } = await solver().forceCurves(request, { signal: run.stop.signal, channel: 'waves' });
    take(run.key, curves[run.build.id]);
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    if (error.code !== 'cancelled' && error.code !== 'superseded') refuse(run.key, error);
  } finally {
    running = undefined;
  }
  untracked(plan);
}

function take(key: string, answer: BuildCurve): void {
  if (answer.status === 'solved') replaceCurve(key, answer.curve);
  else refuse(key, answer.error);
}

function refuse(key: string, why: Failure): void {
  wavesFailures.value = new Map([...wavesFailures.value, [key, why] as const].slice(-KEPT));
}

/** Starts following the document. @returns ends it */
export function startWaves(): () => void {
  const dispose = effect(plan);
  return () => {
    dispose();
    clearTimeout(waiting);
  };
}
