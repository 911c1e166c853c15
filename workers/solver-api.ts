/** The worker's side of the protocol: unpacks a request, calls the solver, packs the reply. No numerics, no defaults. */
import { type ProxyMethods, releaseProxy } from 'comlink';
import { holdLifeline } from './lifeline.ts';
import {
  type BuildBands,
  type BuildCurve,
  type BuildCycle,
  type BuildForces,
  type CycleRequest,
  type CycleResult,
  type ForceBandsRequest,
  type ForceBandsResult,
  type ForceCurve,
  type ForceCurvesRequest,
  type ForceCurvesResult,
  type ForcesRequest,
  type ForcesResult,
  isInputFault,
  type Job,
  type JobResults,
  PROTOCOL_VERSION,
  type Progress,
  type SolveHooks,
  type SolverApi,
  type SpeedBand,
  type WireError,
  type WireReply,
  type WireRequest,
} from './protocol.ts';
import type { Solver } from './solver.ts';

export function createSolverApi(solver: Solver): SolverApi {
  return {
    async hello(lifeline) {
      await holdLifeline(lifeline);
      return { protocol: PROTOCOL_VERSION };
    },
    async run(request, onProgress) {
      try {
        // Copied, and no buffer handed over: what the solver keeps for the next run stays whole.
        return answer(solver, request, onProgress);
      } finally {
        (onProgress as Progress & Partial<ProxyMethods>)[releaseProxy]?.();
      }
    },
  };
}

function answer(solver: Solver, { runId, job, stopFlag }: WireRequest, onProgress: Progress): WireReply {
  const flag = stopFlag && new Int32Array(stopFlag);
  const shouldStop = () => flag !== undefined && Atomics.load(flag, 0) !== 0;
  try {
    const result = solve(solver, job, shouldStop, onProgress);
    return shouldStop() ? { runId, status: 'stopped' } : { runId, status: 'done', result };
  } catch (error) {
    return shouldStop() ? { runId, status: 'stopped' } : { runId, status: 'failed', error: wireErrorOf(error) };
  }
}

function solve(solver: Solver, job: Job, shouldStop: () => boolean, onProgress: Progress): JobResults[Job['kind']] {
  if (job.kind === 'force-curves') return solveCurves(solver, job.request, shouldStop, onProgress);
  if (job.kind === 'force-bands') return solveBands(solver, job.request, shouldStop, onProgress);
  if (job.kind === 'forces') return solveForces(solver, job.request, shouldStop, onProgress);
  if (job.kind === 'weight-spreads') return { spreads: solver.weightSpreads };
  if (job.kind === 'chassis') return solver.chassisReading(job.request.project, job.request);
  if (job.kind === 'wanted-curve') return solver.wantedCurve(job.request.project, job.request);
  if (job.kind === 'fit-choices')
    return { choices: solver.fitChoicesForBuild(job.request.project, job.request.buildId) };
  if (job.kind === 'trace') return solver.driveOfTrace(job.request);
  if (job.kind === 'hysteresis') return solver.hysteresisOfLoops(job.request);
  if (job.kind === 'cycle') return solveCycles(solver, job.request, shouldStop, onProgress);
  const hooks = { shouldStop, onProgress: (done: number, total: number) => onProgress(done / total) };
  if (job.kind === 'fit') {
    const { project, buildId, ...options } = job.request;
    return solver.fitMeasured(project, buildId, options, hooks);
  }
  if (job.kind === 'search-start') {
    const { project, request, settings, start } = job.request;
    return solver.searchStart(project, request, settings, start, hooks);
  }
  if (job.kind === 'search-present')
    return solver.presentStacks(job.request.project, job.request.request, job.request.theory);
  if (job.kind === 'sensitivity') {
    const { project, buildId, ...question } = job.request;
    return solver.sensitivityForBuild(project, buildId, question, hooks);
  }
  if (job.kind === 'tolerance-samples') {
    const { project, buildId, ...question } = job.request;
    return solver.toleranceSamples(project, buildId, question, hooks);
  }
  if (job.kind === 'tolerance-reading') {
    const { speeds_m_s, solved, seed } = job.request;
    return solver.readTolerance(speeds_m_s, solved, seed);
  }
  const { stack, pressures_Pa, options } = job.request;
  return solver.solveLift(stack, pressures_Pa, options, hooks);
}

type Run<Answer> = (buildId: string, hooks: SolveHooks) => Answer;
type Refused = { readonly status: 'failed'; readonly error: WireError };

/** One after the other; one build that cannot be solved leaves the others their answers. */
function eachBuild<Answer>(
  buildIds: readonly string[],
  run: Run<Answer>,
  shouldStop: () => boolean,
  onProgress: Progress,
): Readonly<Record<string, Answer | Refused>> {
  const answers: [string, Answer | Refused][] = [];
  for (const [index, buildId] of buildIds.entries()) {
    if (shouldStop()) break;
    const hooks: SolveHooks = {
      shouldStop,
      onProgress: (done, total) => onProgress((index + done / total) / buildIds.length),
    };
    answers.push([buildId, orRefused(() => run(buildId, hooks))]);
  }
  return Object.fromEntries(answers);
}

function orRefused<Answer>(run: () => Answer): Answer | Refused {
  try {
    return run();
  } catch (error) {
    return { status: 'failed', error: wireErrorOf(error) };
  }
}

function solveCurves(
  solver: Solver,
  { project, buildIds, ...options }: ForceCurvesRequest,
  shouldStop: () => boolean,
  onProgress: Progress,
): ForceCurvesResult {
  const solve: Run<BuildCurve> = (buildId, hooks) => ({
    status: 'solved',
    curve: solver.forceCurveForBuild(project, buildId, options, hooks),
  });
  return { curves: eachBuild(buildIds, solve, shouldStop, onProgress) };
}

function solveBands(
  solver: Solver,
  { project, buildIds, ...options }: ForceBandsRequest,
  shouldStop: () => boolean,
  onProgress: Progress,
): ForceBandsResult {
  const solve: Run<BuildBands> = (buildId, hooks) => {
    const { points } = solver.forceCurveForBuild(project, buildId, { ...options, bands: true }, hooks);
    return { status: 'solved', bands: points.map(bandOf) };
  };
  return { builds: eachBuild(buildIds, solve, shouldStop, onProgress) };
}

function bandOf(point: ForceCurve['points'][number]): SpeedBand | null {
  if (point.status !== 'converged' || !point.band) return null;
  if (point.band.status !== 'converged') return point.band;
  const { parts: _parts, ...band } = point.band;
  return band;
}

function solveForces(
  solver: Solver,
  { project, buildIds, ...options }: ForcesRequest,
  shouldStop: () => boolean,
  onProgress: Progress,
): ForcesResult {
  const solve: Run<BuildForces> = (buildId, hooks) => ({
    status: 'solved',
    forces: solver.forcesForBuild(project, buildId, options, hooks),
  });
  return { builds: eachBuild(buildIds, solve, shouldStop, onProgress) };
}

function solveCycles(
  solver: Solver,
  { project, buildIds, ...options }: CycleRequest,
  shouldStop: () => boolean,
  onProgress: Progress,
): CycleResult {
  const drive: Run<BuildCycle> = (buildId, hooks) => solver.cycleForBuild(project, buildId, options, hooks);
  return { cycles: eachBuild(buildIds, drive, shouldStop, onProgress) };
}

/** An error that carries an input fault blames the input; any other blames the solver. */
function wireErrorOf(error: unknown): WireError {
  if (!(error instanceof Error)) return { code: 'solver-failed', message: String(error) };
  const { message } = error;
  const fault = 'fault' in error ? error.fault : undefined;
  return isInputFault(fault) ? { code: 'invalid-input', message, fault } : { code: 'solver-failed', message };
}
