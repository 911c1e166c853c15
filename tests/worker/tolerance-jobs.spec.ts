import { describe, expect, it } from 'vitest';
import { InputError } from '../../src/units/fault.ts';
import type { Project, ToleranceSamples } from '../../workers/protocol.ts';
import type { Solver } from '../../workers/solver.ts';
import { createSolverApi } from '../../workers/solver-api.ts';
import { THEORIES } from './helpers/fake-solver.ts';

const FAULT = { code: 'build.unknown', path: 'buildId', got: '"unruly"', wanted: 'a build of the project' };

const share = (value: number) => {
  const estimate = { value, low: value, high: value };
  return { first: estimate, total: estimate };
};

const solver = {
  toleranceSamples: (_, buildId, { speeds_m_s, from, to }, { onProgress }) => {
    if (buildId === 'unruly') throw new InputError(FAULT);
    onProgress?.(to - from, 4);
    const samples = { a: [[from]], b: [[to]], ab: [] };
    return { speeds_m_s, drawn_N: speeds_m_s.map(() => 1), parts: [], theories: THEORIES, refusals: [], samples };
  },
  readTolerance: (speeds_m_s, solved, seed) => ({
    names: [],
    spreads: speeds_m_s.map(() => null),
    shares: solved.map(() => [share(seed)]),
    overRange: { compression: [], rebound: [] },
  }),
} satisfies Partial<Solver>;

describe('the jobs of a tolerance', () => {
  it('solves the samples that are asked for, tells how far it is, passes a refusal on, and reads what the page has', async () => {
    const told: number[] = [];
    const api = createSolverApi(solver as unknown as Solver);
    const question = { speeds_m_s: [0.5], theory: 'small-deflection', seed: 1, from: 6, to: 8 } as const;
    const ask = (buildId: string) => {
      const asked = { project: {} as Project, buildId, ...question };
      return api.run({ runId: 1, job: { kind: 'tolerance-samples', request: asked } }, (s) => told.push(s));
    };
    const [done, refused] = [await ask('stock'), await ask('unruly')];
    expect(done).toMatchObject({ status: 'done', result: { speeds_m_s: [0.5], samples: { a: [[6]], b: [[8]] } } });
    expect(told).toEqual([0.5]);
    expect(refused).toMatchObject({ status: 'failed', error: { code: 'invalid-input', fault: FAULT } });
    const { samples } = (done as { result: ToleranceSamples }).result;
    const reading = { speeds_m_s: [0.5], solved: [samples, samples], seed: 3 };
    const read = await api.run({ runId: 2, job: { kind: 'tolerance-reading', request: reading } }, () => {});
    expect(read).toMatchObject({ status: 'done', result: { spreads: [null], shares: [[share(3)], [share(3)]] } });
  });
});
