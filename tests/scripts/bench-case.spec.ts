import { describe, expect, it } from 'vitest';
import { type BenchCase, runBench } from '../bench/bench-case.ts';
import { BENCH_CASES } from '../bench/cases.ts';

/** A clock that moves by the next of these steps between start and end of each timed run. */
const clockOf = (...steps: number[]) => {
  let time = 0;
  let reading = 0;
  return () => {
    if (reading % 2 === 1) time += steps[(reading - 1) / 2];
    reading += 1;
    return time;
  };
};

const bench = (check: BenchCase['check'] = () => {}): BenchCase => ({
  name: 'planted',
  items: 1,
  prepare: () => () => 42,
  check,
});

describe('runBench', () => {
  it('gives median and 95th percentile of the timed runs', () => {
    const result = runBench(bench(), { now: clockOf(5, 1, 3, 2, 4), warmUps: 2, runs: 5 });
    expect(result).toEqual({ runs: 5, median_ms: 3, p95_ms: 5 });
  });

  it('gives a rate where a run works through several items', () => {
    const result = runBench({ ...bench(), items: 6 }, { now: clockOf(2, 4, 3), warmUps: 0, runs: 3 });
    expect(result).toMatchObject({ median_ms: 3, items: 6, perSecond: 2000 });
  });

  it('fails on a wrong result, in a warm-up or in a timed run', () => {
    let calls = 0;
    const wrongAt = (call: number) => () => {
      calls += 1;
      if (calls === call) throw new Error('a wrong result');
    };
    const options = { now: () => 0, warmUps: 2, runs: 3 };
    for (const call of [1, 3, 5]) {
      calls = 0;
      expect(() => runBench(bench(wrongAt(call)), options)).toThrow('a wrong result');
    }
    expect(calls).toBe(5);
  });
});

describe('the cases', () => {
  it('have a name each', () => expect(new Set(BENCH_CASES.map(({ name }) => name)).size).toBe(BENCH_CASES.length));

  it.each(BENCH_CASES)('$name gives a result that holds, and refuses an empty one', ({ prepare, check }) => {
    expect(() => check(prepare()())).not.toThrow();
    expect(() => check(Array.isArray(prepare()()) ? [] : { points: [] })).toThrow();
  });
});
