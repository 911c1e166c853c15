/** The page's side of the proof: starts its worker, hears case by case, and knows how it ended. */
import { proxy, wrap } from 'comlink';
import { watchLifeline } from './lifeline.ts';
import type { CaseReport, OnReport, ProofApi } from './proof-protocol.ts';
import { spawnProofWorker } from './proof-spawn.ts';
import { SolverError } from './solver-error.ts';
import { ENDED_ITSELF, type WorkerLike, watchEnd } from './worker-end.ts';

export interface ProofRun {
  /** The number of cases, once every one has been reported. @throws SolverError `worker-crashed`, `closed` when stopped, `solver-failed` */
  readonly finished: Promise<number>;
  /** Ends the worker at once; what was reported stays. */
  stop(): void;
}

/** Runs every reference case once, in a worker of its own that ends with the run. */
export function runProof(onReport: OnReport, spawn: () => WorkerLike = spawnProofWorker): ProofRun {
  let worker: WorkerLike;
  try {
    worker = spawn();
  } catch (error) {
    const reason = new SolverError('worker-crashed', `The proof’s worker did not start: ${String(error)}`);
    return { finished: Promise.reject(reason), stop: () => {} };
  }
  const { ended, end, gone } = watchEnd(worker, () => {});
  const close = () => end(new SolverError('closed', 'The run was stopped.'), false);
  const api = wrap<ProofApi>(worker);
  const lifeline = `shimwright-proof-${crypto.getRandomValues(new Uint32Array(4)).join('-')}`;
  let stopped = false;
  const hear = (report: CaseReport, total: number): void => {
    if (!stopped) onReport(report, total);
  };
  const run = async (): Promise<number> => {
    await api.hello(lifeline);
    watchLifeline(lifeline, () => gone(ENDED_ITSELF));
    return api.run(proxy(hear));
  };
  return {
    finished: Promise.race([run().catch(failRun), ended]).finally(close),
    stop: () => {
      stopped = true;
      close();
    },
  };
}

function failRun(error: unknown): never {
  throw new SolverError('solver-failed', error instanceof Error ? error.message : String(error));
}

export type {
  CaseKind,
  CaseReport,
  JudgedCase,
  ReportedQuantity,
  Tolerance,
  UnreadableCase,
} from './proof-protocol.ts';
export { SolverError };
