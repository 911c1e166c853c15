/** One live worker as the page sees it: greeted once, asked many times, lost at most once. */
import { proxy, wrap } from 'comlink';
import { watchLifeline } from './lifeline.ts';
import {
  isGreeting,
  isReplyTo,
  PROTOCOL_VERSION,
  type Progress,
  type SolverApi,
  type WireReply,
  type WireRequest,
} from './protocol.ts';
import { SolverError } from './solver-error.ts';
import { ENDED_ITSELF, type WorkerLike, watchEnd } from './worker-end.ts';

export interface WorkerLink {
  /** Settles when the worker has said that it speaks this protocol. @throws SolverError */
  readonly greeted: Promise<void>;
  /** @throws SolverError whenever there is no reply to this request. */
  run(request: WireRequest, onProgress: Progress): Promise<WireReply>;
  /** Ends the worker; what was running on it rejects with `closed`. */
  close(): void;
}

/** @param onLost called once if the worker fails or goes away by itself */
export function linkWorker(worker: WorkerLike, lifeline: string, onLost: (reason: SolverError) => void): WorkerLink {
  const api = wrap<SolverApi>(worker);
  const { ended, end, gone } = watchEnd(worker, onLost);
  const greet = async () => {
    checkGreeting(await api.hello(lifeline));
    watchLifeline(lifeline, () => gone(ENDED_ITSELF));
  };
  return {
    greeted: Promise.race([greet().catch(failGreeting), ended]),
    async run(request, onProgress) {
      const reply = await Promise.race([api.run(request, proxy(onProgress)).catch(failSending), ended]);
      if (isReplyTo(request.runId, reply)) return reply;
      throw new SolverError('bad-reply', 'The solver’s worker gave an answer that does not belong to the question.');
    },
    close: () => end(new SolverError('closed', 'The solver’s worker was closed.'), false),
  };
}

const MISMATCH = 'The page and its solver are of different releases: load the page again.';

function checkGreeting(greeting: unknown): void {
  if (!isGreeting(greeting) || greeting.protocol !== PROTOCOL_VERSION) {
    throw new SolverError('protocol-mismatch', MISMATCH);
  }
}

/** A worker that cannot be greeted is none of ours. */
function failGreeting(error: unknown): never {
  throw error instanceof SolverError ? error : new SolverError('protocol-mismatch', `${MISMATCH} (${String(error)})`);
}

/** comlink's words when a reply could not be cloned. */
const UNCLONABLE_REPLY = 'Unserializable return value';

function failSending(error: unknown): never {
  const { name, message } = error instanceof Error ? error : { name: '', message: String(error) };
  const unclonable = name === 'DataCloneError' || message === UNCLONABLE_REPLY;
  throw new SolverError(unclonable ? 'unclonable' : 'solver-failed', message);
}

export type { WorkerLike };
