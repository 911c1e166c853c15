/** What the worker calls of the solver. What is kept of solved stacks stays with one worker. */
import {
  chassisReading,
  fitChoicesForBuild,
  fitMeasured,
  forceCurveForBuild,
  keepStacks,
  presentStacks,
  readTolerance,
  searchStart,
  sensitivityForBuild,
  solveLift,
  toleranceSamples,
  WEIGHT_SPREADS,
  wantedCurve,
} from '../src/solver/index.ts';
import { cycleForBuild, driveOfTrace, hysteresisOfLoops } from './cycle-for-build.ts';
import { forcesForBuild } from './forces-for-build.ts';
import type { Solver } from './solver.ts';

/** The stacks of several builds, now and some edits ago. */
const STACKS_KEPT = 32;

export function createSolver(): Solver {
  const follow = keepStacks(STACKS_KEPT);
  return {
    fitMeasured,
    fitChoicesForBuild,
    forceCurveForBuild: (project, buildId, options, hooks) =>
      forceCurveForBuild(project, buildId, { ...options, follow }, hooks),
    forcesForBuild: (project, buildId, options, hooks) =>
      forcesForBuild(project, buildId, { ...options, follow }, hooks),
    cycleForBuild: (project, buildId, options, hooks) => cycleForBuild(project, buildId, { ...options, follow }, hooks),
    searchStart,
    presentStacks,
    chassisReading,
    wantedCurve,
    driveOfTrace,
    hysteresisOfLoops,
    sensitivityForBuild,
    toleranceSamples,
    readTolerance,
    solveLift,
    weightSpreads: WEIGHT_SPREADS,
  };
}
