/** How the page learns that a worker is no more, whoever ended it. */
import type { Endpoint } from 'comlink';
import { SolverError } from './solver-error.ts';

/** The part of Worker that the page uses. An `exit` event, where there is one, says that the worker ended by itself. */
export interface WorkerLike extends Endpoint {
  terminate(): unknown;
}

export interface WorkerEnd {
  /** The one promise that rejects, once, when the worker is no more. */
  readonly ended: Promise<never>;
  /** Ends the worker with a reason; `lost` when nobody asked for it. */
  end(reason: SolverError, lost: boolean): void;
  /** The worker failed or went away by itself. */
  gone(text: string): void;
}

export const ENDED_ITSELF = 'The solver’s worker ended by itself.';

/** @param onLost called once if the worker fails or goes away by itself */
export function watchEnd(worker: WorkerLike, onLost: (reason: SolverError) => void): WorkerEnd {
  let reject: (reason: SolverError) => void = () => {};
  const ended = new Promise<never>((_, refuse) => {
    reject = refuse;
  });
  ended.catch(() => {});
  let over = false;
  const end = (reason: SolverError, lost: boolean) => {
    if (over) return;
    over = true;
    worker.terminate();
    reject(reason);
    if (lost) onLost(reason);
  };
  const gone = (text: string) => end(new SolverError('worker-crashed', text), true);
  worker.addEventListener('error', (event) => gone(textOf(event) ?? 'The solver’s worker failed.'));
  worker.addEventListener('messageerror', () => gone('The solver’s worker sent something unreadable.'));
  worker.addEventListener('exit', () => gone(ENDED_ITSELF));
  return { ended, end, gone };
}

/** The text of an error event, which DOM types only as an Event. */
function textOf(event: unknown): string | undefined {
  const message = typeof event === 'object' && event !== null && 'message' in event ? event.message : undefined;
  return typeof message === 'string' && message !== '' ? message : undefined;
}
