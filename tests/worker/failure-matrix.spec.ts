import { afterEach, describe, expect, it, onTestFinished, vi } from 'vitest';
import { createSolverClient, type SolverClient, SolverError, type SolverStatus } from '../../workers/client.ts';
import { spawnFixture } from './helpers/node-worker.ts';
import { codesOf, failureOf, firstProgress, liftRequest, request, threadOf } from './helpers/requests.ts';

const FOREVER_MS = 2 ** 30;
let client: SolverClient;
let states: SolverStatus[];

function open(
  fixture: string,
  argument = '',
  options: { graceMs?: number; sharedMemory?: boolean } = {},
): SolverClient {
  states = [];
  client = createSolverClient({
    spawn: spawnFixture(fixture, argument),
    onStatus: (status) => states.push(status),
    graceMs: FOREVER_MS,
    sharedMemory: true,
    ...options,
  });
  return client;
}

const stateNames = () => states.map(({ state }) => state);
const other = { channel: 'other' };

afterEach(() => client.close());

describe('a solver that throws', () => {
  it.each([
    ['throws', 'solver-failed', 'the fixture throws'],
    ['throws text', 'solver-failed', 'only text'],
  ])('%s: leaves the reason with its build', async (way, code, message) => {
    const { curves } = await open('broken-solver').forceCurves(request(way));
    expect(curves[way]).toEqual({ status: 'failed', error: { code, message } });
  });

  it('hands over the fault of a refused input, build by build', async () => {
    const both = { ...request('refuses input'), buildIds: ['refuses input', 'good'] };
    const { curves } = await open('broken-solver').forceCurves(both);
    expect(curves['refuses input']).toMatchObject({
      status: 'failed',
      error: {
        code: 'invalid-input',
        fault: { code: 'stack.shim.thickness', path: 'shims[0].thickness_mm', unit: 'mm' },
      },
    });
    expect(curves.good.status).toBe('solved');
  });

  it('rejects a lift whose input was refused with the fault', async () => {
    const error = await failureOf(open('broken-solver').lift(liftRequest));
    expect(error).toBeInstanceOf(SolverError);
    expect(error).toMatchObject({ code: 'invalid-input', fault: { path: 'shims[0].thickness_mm', got: '-1' } });
  });

  it('goes on with the next job of two', async () => {
    open('broken-solver');
    const [first, second] = [client.lift(liftRequest), client.forceCurves(request('good'))];
    expect((await failureOf(first)).code).toBe('invalid-input');
    expect(threadOf(await second)).toBeGreaterThan(0);
  });

  it('rejects late: rejects with the words of the error', async () => {
    open('rogue', 'rejects late');
    const jobs = [client.forceCurves(request('good')), client.forceCurves(request('good'), other)];
    for (const error of await Promise.all(jobs.map(failureOf))) {
      expect(error).toMatchObject({ code: 'solver-failed', message: 'thrown after a while' });
    }
  });
});

describe('a run that does not end', () => {
  it('blocks for ever: cancelling rejects at once, and a new worker takes the next job', async () => {
    open('broken-solver', '', { graceMs: 0, sharedMemory: false });
    const before = threadOf(await client.forceCurves(request('good')));
    const { onProgress, started } = firstProgress();
    const abort = new AbortController();
    const blocked = client.forceCurves(request('blocks for ever'), { onProgress, signal: abort.signal });
    const waiting = client.forceCurves(request('good'), other);
    await started;
    abort.abort();
    expect((await failureOf(blocked)).code).toBe('cancelled');
    expect(threadOf(await waiting)).not.toBe(before);
    expect(stateNames()).toEqual(['starting', 'ready', 'starting', 'ready']);
  });

  it.each(['runs until asked to stop', 'throws when asked to stop'])('%s: keeps its worker', async (way) => {
    open('broken-solver');
    const before = threadOf(await client.forceCurves(request('good')));
    const { onProgress, started } = firstProgress();
    const abort = new AbortController();
    const stopped = client.forceCurves(request(way), { onProgress, signal: abort.signal });
    const waiting = client.forceCurves(request('good'), other);
    await started;
    abort.abort();
    expect((await failureOf(stopped)).code).toBe('cancelled');
    expect(threadOf(await waiting)).toBe(before);
    expect(stateNames()).toEqual(['starting', 'ready']);
  });

  it('without shared memory, a run that ends within the grace keeps its worker', async () => {
    open('broken-solver', '', { sharedMemory: false });
    const before = threadOf(await client.forceCurves(request('good')));
    const gate = new Int32Array(new SharedArrayBuffer(4));
    const { onProgress, started } = firstProgress();
    const abort = new AbortController();
    const project = { gate: gate.buffer };
    const stopped = client.forceCurves(request('waits at the gate', project), { onProgress, signal: abort.signal });
    const waiting = client.forceCurves(request('good'), other);
    await started;
    abort.abort();
    expect((await failureOf(stopped)).code).toBe('cancelled');
    Atomics.store(gate, 0, 1);
    Atomics.notify(gate, 0);
    expect(threadOf(await waiting)).toBe(before);
  });

  it('drops a job that still waits without touching the one that runs', async () => {
    open('broken-solver');
    const gate = new Int32Array(new SharedArrayBuffer(4));
    const { onProgress, started } = firstProgress();
    const running = client.forceCurves(request('waits at the gate', { gate: gate.buffer }), { onProgress });
    const abort = new AbortController();
    const waiting = client.forceCurves(request('blocks for ever'), { ...other, signal: abort.signal });
    await started;
    abort.abort();
    expect((await failureOf(waiting)).code).toBe('cancelled');
    Atomics.store(gate, 0, 1);
    Atomics.notify(gate, 0);
    const thread = threadOf(await running);
    expect(threadOf(await client.forceCurves(request('good')))).toBe(thread);
  });

  it('takes back its threat once the run has ended', async () => {
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    onTestFinished(() => void vi.useRealTimers());
    open('broken-solver');
    const { onProgress, started } = firstProgress();
    const abort = new AbortController();
    const stopped = client.forceCurves(request('runs until asked to stop'), { onProgress, signal: abort.signal });
    await started;
    abort.abort();
    expect(vi.getTimerCount()).toBe(1);
    expect((await failureOf(stopped)).code).toBe('cancelled');
    await client.forceCurves(request('good'));
    expect(vi.getTimerCount()).toBe(0);
  });
});

describe('a worker that goes away', () => {
  it.each([
    ['broken-solver', '', 'exits'],
    ['rogue', 'throws outside every call', 'good'],
  ])('%s %s: rejects the job that runs and the one that waits, and says so', async (fixture, argument, way) => {
    open(fixture, argument);
    const jobs = [client.forceCurves(request(way)), client.forceCurves(request('good'), other)];
    expect(await codesOf(jobs)).toEqual(['worker-crashed', 'worker-crashed']);
    expect(stateNames()).toEqual(['starting', 'ready', 'crashed', 'starting']);
    expect(states[2].message).toMatch(/^The solver stopped unexpectedly/);
  });

  it('is replaced by one that works', async () => {
    open('broken-solver');
    const before = threadOf(await client.forceCurves(request('good')));
    await failureOf(client.forceCurves(request('exits')));
    expect(threadOf(await client.forceCurves(request('good')))).not.toBe(before);
  });

  it.each([
    ['rogue', 'exits before greeting'],
    ['no-such-file', ''],
  ])('%s %s: is not started over and over', async (fixture, argument) => {
    open(fixture, argument);
    const jobs = [client.forceCurves(request('good')), client.forceCurves(request('good'), other)];
    expect(await codesOf(jobs)).toEqual(['worker-crashed', 'worker-crashed']);
    expect(stateNames()).toEqual(['starting', 'crashed']);
    expect((await failureOf(client.forceCurves(request('good')))).code).toBe('worker-crashed');
    expect(stateNames()).toEqual(['starting', 'crashed', 'starting', 'crashed']);
  });
});

describe('what cannot be sent', () => {
  it('an unclonable reply rejects its own job only', async () => {
    open('broken-solver');
    const jobs = [client.forceCurves(request('returns a function')), client.forceCurves(request('good'), other)];
    expect((await failureOf(jobs[0])).code).toBe('unclonable');
    expect(threadOf(await jobs[1])).toBeGreaterThan(0);
  });

  it('an unclonable request rejects its own job only', async () => {
    open('broken-solver');
    const jobs = [
      client.forceCurves(request('good', { notes: () => 'no data' })),
      client.forceCurves(request('good'), other),
    ];
    expect((await failureOf(jobs[0])).code).toBe('unclonable');
    expect(threadOf(await jobs[1])).toBeGreaterThan(0);
  });
});

describe('a worker that breaks the protocol', () => {
  it.each(['answers for another run', 'answers nonsense', 'answers without a result'])('%s', async (way) => {
    open('rogue', way);
    const jobs = [client.forceCurves(request('good')), client.forceCurves(request('good'), other)];
    expect(await codesOf(jobs)).toEqual(['bad-reply', 'bad-reply']);
    expect(stateNames()).toEqual(['starting', 'ready', 'starting', 'ready', 'starting']);
  });

  it.each(['speaks another version', 'greets with nonsense', 'exposes nothing'])('%s', async (way) => {
    open('rogue', way);
    const jobs = [client.forceCurves(request('good')), client.forceCurves(request('good'), other)];
    expect(await codesOf(jobs)).toEqual(['protocol-mismatch', 'protocol-mismatch']);
    expect((await failureOf(client.forceCurves(request('good')))).code).toBe('protocol-mismatch');
    expect(stateNames()).toEqual(['starting', 'protocol-mismatch']);
    expect(states[1].message).toMatch(/load the page again/);
  });

  it('chatter that nobody asked for changes nothing', async () => {
    open('rogue', 'chatters');
    expect(await client.forceCurves(request('good'))).toEqual({ curves: {} });
    expect(stateNames()).toEqual(['starting', 'ready']);
  });
});
