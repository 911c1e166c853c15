import { afterEach, describe, expect, it } from 'vitest';
import { createSolverClient, type SolverClient, type SolverStatus, type WorkerLike } from '../../workers/client.ts';
import { spawnFixture } from './helpers/node-worker.ts';
import { codesOf, failureOf, firstProgress, liftRequest, request, threadOf } from './helpers/requests.ts';

let client: SolverClient;
afterEach(() => client.close());

const open = (spawn: () => WorkerLike = spawnFixture('broken-solver'), onStatus?: (status: SolverStatus) => void) => {
  client = createSolverClient({ spawn, onStatus, graceMs: 2 ** 30, sharedMemory: true });
  return client;
};

describe('channels', () => {
  it('a newer request supersedes the one that runs and the one that waits', async () => {
    open();
    const { onProgress, started } = firstProgress();
    const running = client.forceCurves(request('runs until asked to stop'), { onProgress });
    await started;
    const waiting = client.forceCurves(request('good'));
    const newest = client.forceCurves(request('good'));
    expect(await codesOf([running, waiting])).toEqual(['superseded', 'superseded']);
    expect(threadOf(await newest)).toBeGreaterThan(0);
  });

  it('requests on other channels, and of another kind, are left alone', async () => {
    open();
    const lift = failureOf(client.lift(liftRequest));
    const [a, b] = ['a', 'b'].map((channel) => client.forceCurves(request('good'), { channel }));
    expect(threadOf(await a)).toBe(threadOf(await b));
    expect((await lift).code).toBe('invalid-input');
  });
});

describe('progress', () => {
  it('is told while the run goes on', async () => {
    const { onProgress, started } = firstProgress();
    const abort = new AbortController();
    const running = open().forceCurves(request('runs until asked to stop'), { onProgress, signal: abort.signal });
    expect(await started).toBe(0);
    abort.abort();
    expect((await failureOf(running)).code).toBe('cancelled');
  });

  it('is not told after the request was superseded', async () => {
    open();
    const seen: number[] = [];
    const first = client.forceCurves(request('good'), { onProgress: (fraction) => seen.push(fraction) });
    const second = client.forceCurves(request('good'));
    expect((await failureOf(first)).code).toBe('superseded');
    await second;
    expect(seen).toEqual([]);
  });
});

describe('the end', () => {
  it('a signal that was aborted before rejects without asking', async () => {
    const error = await failureOf(open().forceCurves(request('good'), { signal: AbortSignal.abort() }));
    expect(error.code).toBe('cancelled');
  });

  it('closing rejects what runs, what waits and what comes later', async () => {
    const states: string[] = [];
    open(undefined, ({ state }) => states.push(state));
    const { onProgress, started } = firstProgress();
    const running = client.forceCurves(request('blocks for ever'), { onProgress });
    const waiting = client.forceCurves(request('good'), { channel: 'other' });
    await started;
    client.close();
    const later = client.forceCurves(request('good'));
    expect(await codesOf([running, waiting, later])).toEqual(['closed', 'closed', 'closed']);
    expect(states.at(-1)).toBe('closed');
  });

  it('a browser that allows no worker rejects with the reason', async () => {
    open(() => {
      throw new Error('workers are not allowed here');
    });
    const error = await failureOf(client.forceCurves(request('good')));
    expect(error.code).toBe('worker-crashed');
    expect(error.message).toMatch(/workers are not allowed here/);
  });

  it('an unreadable message counts as a crash', async () => {
    const listeners = new Map<string, EventListener>();
    open(() => ({
      postMessage: () => {},
      addEventListener: (type, listener) => listeners.set(type, listener as EventListener),
      removeEventListener: () => {},
      terminate: () => {},
    }));
    const jobs = [client.forceCurves(request('good')), client.forceCurves(request('good'), { channel: 'other' })];
    listeners.get('messageerror')?.(new Event('messageerror'));
    expect(await codesOf(jobs)).toEqual(['worker-crashed', 'worker-crashed']);
  });
});
