import { Worker } from 'node:worker_threads';
import type { WorkerLike } from '../../../workers/client.ts';

type Listener = (event: { data?: unknown; message?: string }) => void;

/** A Node worker thread, running a TypeScript file, with the events of a browser's worker. */
export class NodeWorker implements WorkerLike {
  readonly #worker: Worker;
  readonly #wrapped = new Map<unknown, (value: unknown) => void>();

  constructor(file: URL, argv: string[] = []) {
    this.#worker = new Worker(new URL('./run-typescript.mjs', import.meta.url), {
      argv: [file.href, ...argv],
      stderr: true,
    });
  }

  postMessage(message: unknown, transfer: Transferable[] = []): void {
    this.#worker.postMessage(message, transfer as never);
  }

  addEventListener(type: string, listener: EventListenerOrEventListenerObject): void {
    const wrapped = (value: unknown) => (listener as unknown as Listener)(eventOf(type, value));
    this.#wrapped.set(listener, wrapped);
    this.#worker.on(type, wrapped);
  }

  removeEventListener(type: string, listener: EventListenerOrEventListenerObject): void {
    const wrapped = this.#wrapped.get(listener);
    if (wrapped) this.#worker.off(type, wrapped);
  }

  terminate(): Promise<number> {
    return this.#worker.terminate();
  }
}

const eventOf = (type: string, value: unknown) =>
  type === 'error' ? { message: value instanceof Error ? value.message : String(value) } : { data: value };

export const spawnFixture =
  (name: string, ...argv: string[]) =>
  () =>
    new NodeWorker(new URL(`../fixtures/${name}.ts`, import.meta.url), argv);
