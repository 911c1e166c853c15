/** Keeps a force curve for each build: solves what has changed, shows the last good curve until the new one is there. */

import { computed, effect, signal, untracked } from '@preact/signals';
import { createSolverClient, SolverError } from '../../../workers/client.ts';
import type { BuildCurve, ForceCurvesRequest, SolverStatus, SpeedBand } from '../../../workers/protocol.ts';
import type { Build, Project } from '../../model/project.ts';
import { text } from '../text/en.ts';
import { position_m } from './conditions.ts';
import { tell } from './notices.ts';
import { showNumber } from './quantities.ts';
import type { Failure } from './reasons.ts';
import type { ForceCurve } from './solved.ts';
import { solvedSpeeds } from './speeds.ts';
import { project, theory, topSpeed } from './store.ts';

/** What is known of one build. `curve` belongs to `build` as it was when solved; `stale` says that this is not now. */
export interface Outcome {
  readonly key: string;
  readonly build: Build;
  readonly curve?: ForceCurve;
  readonly failure?: Failure;
  readonly stale: boolean;
}

export interface SolverState {
  readonly phase: 'loading' | 'idle' | 'solving' | 'solved' | 'restarted' | 'failed';
  readonly message: string;
}

type Result = Extract<BuildCurve, { status: 'failed' }> | { readonly status: 'solved'; readonly curve: ForceCurve };
type Answer = { readonly build: Build; readonly result: Result };

/** Answers kept for undo, redo and switching back [builds]. */
const KEPT = 48;
/** A run that nobody wants any more may take this long before it is stopped [ms]. */
const PATIENCE_MS = 250;

const answers = new Map<string, Answer>();
export const outcomes = signal<ReadonlyMap<string, Outcome>>(new Map());
export const solverState = signal<SolverState>({ phase: 'loading', message: text.solver.loading });
export const anyStale = computed(() => [...outcomes.value.values()].some((outcome) => outcome.stale));

/** Everything a curve depends on, and nothing else: names, notes, measurements, a fit and assembly do not solve again. */
export function keyOf({ damper, fluid, gas }: Project, build: Build, stroke_m = position_m.value): string {
  const { id: _i, name: _n, notes: _t, measurements: _m, fit: _f, assembly: _a, ...parts } = build;
  const bench = [topSpeed.value, theory.value, stroke_m];
  return JSON.stringify([parts, { ...damper, name: '' }, { ...fluid, name: '' }, gas, bench]);
}

/** As the document and the bench are now. */
export const keyNow = (build: Build): string => keyOf(project.value, build);

interface Run {
  readonly keys: ReadonlyMap<string, Build>;
  readonly stop: AbortController;
  readonly startedAt: number;
}
let running: Run | undefined;
let crashed = false;
/** What was being solved when a worker went down. */
const suspects = new Set<string>();

const client = createSolverClient({ onStatus });

function onStatus(status: SolverStatus): void {
  if (status.state === 'crashed') {
    crashed = true;
    solverState.value = { phase: 'failed', message: text.solver.failed };
  } else if (status.state === 'ready' && crashed) {
    crashed = false;
    solverState.value = { phase: 'restarted', message: text.solver.restarted };
    tell(text.solver.restartedWhy);
  } else if (status.state === 'protocol-mismatch') {
    solverState.value = { phase: 'failed', message: status.message };
  }
}

function keep(key: string, answer: Answer): void {
  answers.delete(key);
  answers.set(key, answer);
  if (answers.size > KEPT) answers.delete(answers.keys().next().value as string);
}

/** The answer as it stands, or the last curve of this build, marked stale. */
function outcomeFor(build: Build, key: string): Outcome | undefined {
  const answer = answers.get(key);
  const before = outcomes.value.get(build.id);
  if (!answer) return before && { ...before, stale: true };
  if (answer.result.status === 'solved') return { key, build: answer.build, curve: answer.result.curve, stale: false };
  return {
    ...before,
    key,
    build: before?.build ?? build,
    failure: answer.result.error,
    stale: before?.curve !== undefined,
  };
}

interface Wanted {
  readonly build: Build;
  readonly key: string;
}

const wantedNow = (): Wanted[] => project.value.builds.map((build) => ({ build, key: keyNow(build) }));

function refresh(wanted: readonly Wanted[]): void {
  const next = new Map<string, Outcome>();
  for (const { build, key } of wanted) {
    const outcome = outcomeFor(build, key);
    if (outcome) next.set(build.id, outcome);
  }
  outcomes.value = next;
}

/** Stops a run once none of what it solves is wanted, but not at once: most are over before the next key is pressed. */
function stopUnwanted(run: Run, wanted: readonly Wanted[]): void {
  if (wanted.some(({ key }) => run.keys.has(key))) return;
  const left = PATIENCE_MS - (performance.now() - run.startedAt);
  setTimeout(() => running === run && run.stop.abort(), Math.max(0, left));
}

function plan(): void {
  const wanted = wantedNow();
  untracked(() => refresh(wanted));
  const missing = new Map(wanted.filter(({ key }) => !answers.has(key)).map(({ key, build }) => [key, build]));
  if (missing.size === 0) return;
  if (running) stopUnwanted(running, wanted);
  else void untracked(() => solve(nextOf(missing)));
}

/** What was asked when a worker went down is asked once more, one build at a time and last: only its cause then stays without a curve. */
function nextOf(missing: ReadonlyMap<string, Build>): ReadonlyMap<string, Build> {
  const unsuspected = [...missing].filter(([key]) => !suspects.has(key));
  return new Map(unsuspected.length > 0 ? unsuspected : [...missing].slice(0, 1));
}

/** The curves of some builds, as the document and the bench are now. */
export const requestFor = (builds: readonly Build[]): ForceCurvesRequest => ({
  project: project.value,
  buildIds: builds.map((build) => build.id),
  speeds_m_s: solvedSpeeds(topSpeed.value),
  theory: theory.value,
  ...(position_m.value !== undefined && { stroke_m: position_m.value }),
});

/** Gives a kept curve its bands, speed by speed. @returns the curve with them; undefined when it is not kept any more */
export function addBands(key: string, bands: readonly (SpeedBand | null)[]): ForceCurve | undefined {
  const plain = answers.get(key);
  if (plain?.result.status !== 'solved') return undefined;
  const points = plain.result.curve.points.map((point, i) => {
    const band = bands[i];
    return point.status === 'converged' && band ? { ...point, band } : point;
  });
  const curve = { ...plain.result.curve, points };
  replaceCurve(key, curve);
  return curve;
}

/** Puts a better curve in the place of a kept one; one that is not kept any more is of no use. */
export function replaceCurve(key: string, curve: ForceCurve): void {
  const answer = answers.get(key);
  if (answer?.result.status !== 'solved') return;
  answers.set(key, { ...answer, result: { status: 'solved', curve } });
  refresh(wantedNow());
}

/** Round curves are there at once, and say whether they serve. */
const roundFirst = (request: ForceCurvesRequest): ForceCurvesRequest =>
  request.theory === 'auto' ? { ...request, theory: 'large-deflection' } : request;

async function solve(missing: ReadonlyMap<string, Build>): Promise<void> {
  const run: Run = { keys: missing, stop: new AbortController(), startedAt: performance.now() };
  running = run;
  solverState.value = { phase: 'solving', message: text.solver.solving };
  const request = roundFirst(requestFor([...missing.values()]));
  try {
    const { curves } = await client.forceCurves(request, { signal: run.stop.signal, channel: 'bench' });
    for (const [key, build] of missing) keep(key, { build, result: curves[build.id] });
    const spent = performance.now() - run.startedAt;
    solverState.value = { phase: 'solved', message: text.solver.solved(showNumber(spent, spent < 10 ? 1 : 0)) };
  } catch (error) {
    if (!(error instanceof SolverError)) throw error;
    settle(error, missing);
  } finally {
    running = undefined;
  }
  plan();
}

/** A run that was stopped is planned again, one whose worker went down once; any other failure is the answer, told to the person. */
function settle(error: SolverError, missing: ReadonlyMap<string, Build>): void {
  if (error.code === 'cancelled' || error.code === 'superseded') return;
  if (error.code === 'worker-crashed' && ![...missing.keys()].some((key) => suspects.has(key))) {
    for (const key of missing.keys()) suspects.add(key);
    return;
  }
  solverState.value = { phase: 'failed', message: text.solver.failed };
  for (const [key, build] of missing)
    keep(key, { build, result: { status: 'failed', error: { code: 'solver-failed', message: error.message } } });
}

/** Starts following the document. */
export const startSolving = (): (() => void) => effect(plan);
