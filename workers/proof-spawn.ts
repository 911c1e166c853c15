import type { WorkerLike } from './worker-link.ts';

/** The proof's worker as built for the browser. The options stand here in full, because the build reads them. */
export const spawnProofWorker = (): WorkerLike =>
  new Worker(new URL('./proof.worker.ts', import.meta.url), { type: 'module', name: 'shimwright-proof' });
