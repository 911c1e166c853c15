/** The solver in its own thread. */
import { expose } from 'comlink';
import {
  chassisReading,
  fitMeasured,
  forceCurveForBuild,
  searchStart,
  sensitivityForBuild,
  solveLift,
  WEIGHT_SPREADS,
  wantedCurve,
} from '../src/solver/index.ts';
import { cycleForBuild, driveOfTrace } from './cycle-for-build.ts';
import { forcesForBuild } from './forces-for-build.ts';
import { createSolverApi } from './solver-api.ts';

expose(
  createSolverApi({
    fitMeasured,
    forceCurveForBuild,
    forcesForBuild,
    cycleForBuild,
    searchStart,
    chassisReading,
    wantedCurve,
    driveOfTrace,
    sensitivityForBuild,
    solveLift,
    weightSpreads: WEIGHT_SPREADS,
  }),
);
