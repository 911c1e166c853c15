import type { Job, Progress, WireReply } from './protocol.ts';
import type { SolverError } from './solver-error.ts';

export interface CallOptions {
  /** From 0 to 1, while the run goes on. */
  readonly onProgress?: Progress;
  /** Aborting it rejects the request with `cancelled`. */
  readonly signal?: AbortSignal;
  /** A new request takes the place of an older one on the same channel; by default each kind of request is one channel. */
  readonly channel?: string;
}

/** One request from its call until its promise has settled, which happens exactly once. */
export interface Ticket {
  readonly runId: number;
  readonly job: Job;
  readonly channel: string;
  readonly stopFlag?: SharedArrayBuffer;
  readonly promise: Promise<WireReply>;
  isSettled(): boolean;
  progress(fraction: number): void;
  resolve(reply: WireReply): void;
  reject(error: SolverError): void;
}

export function createTicket(runId: number, job: Job, options: CallOptions, sharedMemory: boolean): Ticket {
  let settled = false;
  let settle: { resolve: (reply: WireReply) => void; reject: (error: SolverError) => void };
  const promise = new Promise<WireReply>((resolve, reject) => {
    settle = { resolve, reject };
  });
  const once = (act: () => void) => {
    if (settled) return;
    settled = true;
    act();
  };
  return {
    runId,
    job,
    channel: options.channel ?? job.kind,
    ...(sharedMemory && { stopFlag: new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT) }),
    promise,
    isSettled: () => settled,
    progress: (fraction) => !settled && options.onProgress?.(fraction),
    resolve: (reply) => once(() => settle.resolve(reply)),
    reject: (error) => once(() => settle.reject(error)),
  };
}

/** Asks the run to stop, where the worker can hear it. */
export function raiseStopFlag({ stopFlag }: Ticket): void {
  if (stopFlag) Atomics.store(new Int32Array(stopFlag), 0, 1);
}
