/** One live worker as the page sees it: greeted once, asked many times, lost at most once. */
import { type Endpoint, proxy, wrap } from 'comlink';
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

/** The part of Worker that the client uses. An `exit` event, where there is one, says that the worker ended by itself. */
export interface WorkerLike extends Endpoint {
  terminate(): unknown;
}

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
  const { promise: ended, end } = endOf(worker, onLost);
  const gone = (text: string) => end(new SolverError('worker-crashed', text), true);
  worker.addEventListener('error', (event) => gone(textOf(event) ?? 'The solver’s worker failed.'));
  worker.addEventListener('messageerror', () => gone('The solver’s worker sent something unreadable.'));
  worker.addEventListener('exit', () => gone('The solver’s worker ended by itself.'));
  const greet = async () => {
    checkGreeting(await api.hello(lifeline));
    watchLifeline(lifeline, () => gone('The solver’s worker ended by itself.'));
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

/** The one promise that rejects when the worker is no more, whoever ended it. */
function endOf(worker: WorkerLike, onLost: (reason: SolverError) => void) {
  let reject: (reason: SolverError) => void = () => {};
  const promise = new Promise<never>((_, refuse) => {
    reject = refuse;
  });
  promise.catch(() => {});
  let over = false;
  const end = (reason: SolverError, lost: boolean) => {
    if (over) return;
    over = true;
    worker.terminate();
    reject(reason);
    if (lost) onLost(reason);
  };
  return { promise, end };
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

/** The text of an error event, which DOM types only as an Event. */
function textOf(event: unknown): string | undefined {
  const message = typeof event === 'object' && event !== null && 'message' in event ? event.message : undefined;
  return typeof message === 'string' && message !== '' ? message : undefined;
}
