import type { WorkerLike } from './worker-link.ts';

/** The solver's worker as built for the browser. The options stand here in full, because the build reads them. */
export const spawnSolverWorker = (): WorkerLike =>
  new Worker(new URL('./solver.worker.ts', import.meta.url), { type: 'module', name: 'shimwright-solver' });
