/** The solver in its own thread. */
import { expose } from 'comlink';
import { forceCurveForBuild, solveLift } from '../src/solver/index.ts';
import { createSolverApi } from './solver-api.ts';

expose(createSolverApi({ forceCurveForBuild, solveLift }));
