import { describe, expect, it } from 'vitest';
import type { OpeningTable } from '../../../../src/solver/valve/opening-table.ts';
import { risingPart, samplePressures } from '../../../../src/solver/valve/rising-part.ts';

const tableOf = (pressure_Pa: number[], crackingPressure_Pa = Number.POSITIVE_INFINITY): OpeningTable => ({
  table: { theory: 'small-deflection', pressure_Pa, points: [], failures: [] },
  opening: () => 0,
  crackingPressure_Pa,
  kinks_Pa: [],
  end: { status: 'reached', reason: '' },
});

describe('samplePressures', () => {
  it('holds rest, every point of the table and the cracking pressure, in order, with others between', () => {
    const samples = samplePressures(tableOf([0, 1e5, 3e5, 1e6], 2e5));
    for (const p of [0, 1e5, 2e5, 3e5, 1e6]) expect(samples).toContain(p);
    expect(samples).toEqual([...new Set(samples)].sort((p, q) => p - q));
    expect(samples.filter((p) => p > 3e5 && p < 1e6).length).toBeGreaterThan(0);
    expect(samples.filter((p) => p > 0 && p < 1e5).length).toBeGreaterThan(0);
    expect(samples.at(-1)).toBe(1e6);
  });

  it('leaves out points that only rounding tells from the next', () => {
    const samples = samplePressures(tableOf([0, 2e5 * (1 - 1e-9), 2e5 * (1 - 1e-12), 1e6], 2e5));
    expect(samples.filter((p) => Math.abs(p / 2e5 - 1) < 1e-6)).toEqual([2e5]);
  });

  it('has rest alone of a table that has no more, and nothing of an empty one', () => {
    expect(samplePressures(tableOf([0]))).toEqual([0]);
    expect(samplePressures(tableOf([]))).toEqual([]);
  });
});

describe('risingPart', () => {
  const P = [0, 1, 2, 3, 4];

  it('keeps all of a curve that rises, also where nothing flows at first', () => {
    const part = risingPart(P, (p) => ({ flow: Math.max(0, p - 2), drop: 2 * p }));
    expect(part).toEqual({ pressure: P, flow: [0, 0, 0, 1, 2], drop: [0, 2, 4, 6, 8] });
  });

  it.each([
    ['the flow falls', { flow: 0.5, drop: 6 }],
    ['the flow stands still', { flow: 2, drop: 6 }],
    ['the drop falls', { flow: 3, drop: 3.9 }],
  ])('ends before %s', (_, third) => {
    const part = risingPart(P, (p) => (p === 3 ? third : { flow: p, drop: 2 * p }));
    expect(part).toMatchObject({ pressure: [0, 1, 2], flow: [0, 1, 2], cut: { reason: 'falls', pressure_Pa: 2 } });
  });

  it('ends before what is no number', () => {
    const part = risingPart(P, (p) => ({ flow: p, drop: p === 4 ? Number.NaN : p }));
    expect(part).toMatchObject({ pressure: [0, 1, 2, 3], cut: { reason: 'no-number', pressure_Pa: 3 } });
    expect(risingPart(P, () => ({ flow: Number.NaN, drop: 0 }))).toMatchObject({
      pressure: [],
      cut: { reason: 'no-number' },
    });
  });
});
