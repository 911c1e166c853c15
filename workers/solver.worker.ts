/** The solver in its own thread. */
import { expose } from 'comlink';
import { createSolverApi } from './solver-api.ts';
import { createSolver } from './solver-functions.ts';

expose(createSolverApi(createSolver()));
