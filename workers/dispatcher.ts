/**
 * The queue in front of one worker. Only one request is on the worker at a time, so that ending the worker never costs
 * another request its work. See docs/decisions/0001-cancel.md.
 */
import type { SolverErrorCode, SolverStatus, WireReply } from './protocol.ts';
import { SolverError } from './solver-error.ts';
import { raiseStopFlag, type Ticket } from './ticket.ts';
import { linkWorker, type WorkerLike, type WorkerLink } from './worker-link.ts';

export interface DispatcherOptions {
  readonly spawn: () => WorkerLike;
  readonly onStatus: (status: SolverStatus) => void;
  /** How long a run that nobody wants any more may take to end before its worker is replaced [ms]. */
  readonly graceMs: number;
  /** A name no other worker of this browser has. */
  readonly nameLifeline: () => string;
}

export class Dispatcher {
  readonly #options: DispatcherOptions;
  #queue: Ticket[] = [];
  #running: Ticket | undefined;
  #grace: ReturnType<typeof setTimeout> | undefined;
  #link: WorkerLink | undefined;
  #ready = false;
  /** Once set, every request is refused with it. */
  #refusal: SolverError | undefined;

  constructor(options: DispatcherOptions) {
    this.#options = options;
    this.#startWorker();
  }

  submit(ticket: Ticket): void {
    if (this.#refusal) {
      ticket.reject(this.#refusal);
      return;
    }
    for (const older of this.#alive()) {
      if (older.channel === ticket.channel) this.drop(older, 'superseded', 'A newer request took its place.');
    }
    this.#queue.push(ticket);
    if (!this.#link) this.#startWorker();
    this.#startNext();
  }

  /** Rejects a request at once; when it is on the worker, the worker is freed of it. */
  drop(ticket: Ticket, code: SolverErrorCode, message: string): void {
    if (ticket.isSettled()) return;
    ticket.reject(new SolverError(code, message));
    this.#queue = this.#queue.filter((other) => other !== ticket);
    if (ticket !== this.#running) return;
    raiseStopFlag(ticket);
    this.#grace = setTimeout(() => this.#replaceWorker(), this.#options.graceMs);
  }

  close(): void {
    this.#refuseAll(new SolverError('closed', 'The solver was closed.'));
    this.#tell('closed', 'The solver is closed.');
  }

  #alive(): Ticket[] {
    return [...(this.#running ? [this.#running] : []), ...this.#queue];
  }

  #startWorker(): void {
    this.#ready = false;
    this.#tell('starting', 'The solver is starting.');
    try {
      const link = linkWorker(this.#options.spawn(), this.#options.nameLifeline(), (reason) => this.#onLost(reason));
      this.#link = link;
      link.greeted.then(
        () => this.#onReady(link),
        (reason) => this.#onUngreeted(reason),
      );
    } catch (error) {
      this.#onLost(new SolverError('worker-crashed', `The solver’s worker did not start: ${String(error)}`));
    }
  }

  #onReady(link: WorkerLink): void {
    if (link !== this.#link) return;
    this.#ready = true;
    this.#tell('ready', 'The solver is ready.');
    this.#startNext();
  }

  /** A loss is dealt with by `#onLost`; what is left is a worker that speaks another protocol. */
  #onUngreeted(reason: SolverError): void {
    if (reason.code !== 'protocol-mismatch') return;
    this.#refuseAll(reason);
    this.#tell('protocol-mismatch', reason.message);
  }

  /** A worker that had answered is replaced at once; one that never did waits for the next request, or it would go on for ever. */
  #onLost(reason: SolverError): void {
    const lost = this.#alive();
    const wasReady = this.#ready;
    this.#forgetWorker();
    this.#queue = [];
    for (const ticket of lost) ticket.reject(reason);
    const next = wasReady ? 'A new one has been started.' : 'The next change starts it again.';
    this.#tell('crashed', `The solver stopped unexpectedly. ${next} (${reason.message})`);
    if (wasReady) this.#startWorker();
  }

  #startNext(): void {
    if (!this.#ready || this.#running) return;
    const ticket = this.#queue.shift();
    if (ticket) void this.#runOn(this.#link as WorkerLink, ticket);
  }

  async #runOn(link: WorkerLink, ticket: Ticket): Promise<void> {
    this.#running = ticket;
    const { runId, job, stopFlag } = ticket;
    try {
      const request = { runId, job, ...(stopFlag && { stopFlag }) };
      this.#finish(link, ticket, await link.run(request, ticket.progress));
    } catch (error) {
      this.#fail(link, ticket, error instanceof SolverError ? error : new SolverError('solver-failed', String(error)));
    }
  }

  #finish(link: WorkerLink, ticket: Ticket, reply: WireReply): void {
    ticket.resolve(reply);
    this.#free(link);
  }

  #fail(link: WorkerLink, ticket: Ticket, error: SolverError): void {
    ticket.reject(error);
    // Whoever answers the wrong question once is not asked again.
    if (error.code === 'bad-reply' && link === this.#link) this.#replaceWorker();
    else this.#free(link);
  }

  /** The worker has come back from its run, unless it was replaced meanwhile. */
  #free(link: WorkerLink): void {
    if (link !== this.#link) return;
    clearTimeout(this.#grace);
    this.#running = undefined;
    this.#startNext();
  }

  #replaceWorker(): void {
    this.#forgetWorker();
    this.#startWorker();
  }

  #forgetWorker(): void {
    clearTimeout(this.#grace);
    this.#running = undefined;
    this.#ready = false;
    const link = this.#link;
    this.#link = undefined;
    link?.close();
  }

  #refuseAll(reason: SolverError): void {
    this.#refusal = reason;
    for (const ticket of this.#alive()) ticket.reject(reason);
    this.#queue = [];
    this.#forgetWorker();
  }

  #tell(state: SolverStatus['state'], message: string): void {
    this.#options.onStatus({ state, message });
  }
}
