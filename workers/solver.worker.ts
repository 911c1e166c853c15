/** The solver in its own thread. */
import { expose } from 'comlink';
import { forceCurveForBuild, solveLift, WEIGHT_SPREADS } from '../src/solver/index.ts';
import { cycleForBuild } from './cycle-for-build.ts';
import { createSolverApi } from './solver-api.ts';

expose(createSolverApi({ forceCurveForBuild, cycleForBuild, solveLift, weightSpreads: WEIGHT_SPREADS }));
