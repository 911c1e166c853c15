import { describe, expect, it } from 'vitest';
import { type Fitted, leastSquares, type Unknown } from '../../../../src/solver/fit/least-squares.ts';
import { MISRA1A, NORRIS } from '../../../fixtures/strd-table.ts';

const free = (start: number, aside: number): Unknown => ({ start, low: -1e9, high: 1e9, aside });

function solve(unknowns: readonly Unknown[], residuals: (b: readonly number[]) => number[], least = 0): Fitted {
  const found = leastSquares(unknowns, residuals, least);
  if (found.status !== 'converged') throw new Error(found.reason);
  return found;
}

const errorsOf = ({ covariance, values }: Fitted): number[] => values.map((_, i) => Math.sqrt(covariance.get(i, i)));

/** Statistical Reference Datasets of NIST: certified values, seen in public test suites that carry them. */
describe('the certified values of NIST', () => {
  it('are met on Norris, a straight line', () => {
    const found = solve([free(0, 1e-3), free(0, 1e-3)], ([b0, b1]) => NORRIS.map(([x, y]) => y - b0 - b1 * x));
    expect(found.values[0]).toBeCloseTo(-0.262323073774029, 8);
    expect(found.values[1]).toBeCloseTo(1.00211681802045, 10);
    expect(errorsOf(found)[0]).toBeCloseTo(0.232818234301152, 7);
    expect(errorsOf(found)[1]).toBeCloseTo(0.429796848199937e-3, 9);
    expect(found.scatter).toBeCloseTo(0.884796396144373, 8);
    expect(found.degreesOfFreedom).toBeCloseTo(34, 9);
  });

  // Both certified starts: far away and nearer.
  it.each([
    [500, 1e-4],
    [250, 5e-4],
  ])('are met on Misra1a, which is bent, from %s and %s', (b1, b2) => {
    const residuals = ([p, q]: readonly number[]): number[] => MISRA1A.map(([x, y]) => y - p * (1 - Math.exp(-q * x)));
    const found = solve([free(b1, 1e-3), free(b2, 1e-8)], residuals);
    expect(found.values[0] / 2.3894212918e2).toBeCloseTo(1, 6);
    expect(found.values[1] / 5.5015643181e-4).toBeCloseTo(1, 6);
    expect(errorsOf(found)[0] / 2.7070075241).toBeCloseTo(1, 4);
    expect(errorsOf(found)[1] / 7.2668688436e-6).toBeCloseTo(1, 4);
    expect(found.scatter).toBeCloseTo(1.018787633e-1, 7);
  });
});

describe('least squares', () => {
  it('ends on a bound that the best values would pass', () => {
    const residuals = ([a, b]: readonly number[]): number[] => [a - 3, a + b - 5, b - 2, 2 * a - b - 4];
    const found = solve([{ ...free(0, 1e-3), high: 2 }, free(0, 1e-3)], residuals);
    expect(found.values[0]).toBe(2);
    // With a = 2 the others are b - 3, b - 2, -b: b = 5/3.
    expect(found.values[1]).toBeCloseTo(5 / 3, 9);
  });

  it('weighs previous knowledge as one more row, by the scatter of the residuals', () => {
    // Four readings of one number, 1 apart: mean 10, scatter near 1.29; known before as 8 +- 0.5.
    const readings = [8.5, 9.5, 10.5, 11.5];
    const known = { mean: 8, deviation: 0.5 };
    const found = solve([{ ...free(8, 1e-3), known }], ([b]) => readings.map((y) => y - b));
    const { scatter: s } = found;
    const weight = [readings.length / s ** 2, 1 / known.deviation ** 2];
    const mean = (10 * weight[0] + 8 * weight[1]) / (weight[0] + weight[1]);
    expect(found.values[0]).toBeCloseTo(mean, 3);
    expect(found.covariance.get(0, 0)).toBeCloseTo(1 / (weight[0] + weight[1]), 3);
    expect(found.degreesOfFreedom).toBeCloseTo(4 - weight[0] / (weight[0] + weight[1]), 3);
  });

  it('keeps what is known where the residuals say nothing', () => {
    const known = { mean: 1, deviation: 0.2 };
    const found = solve([free(0, 1e-3), { ...free(0, 1e-3), known }], ([a]) => [1 - a, 2 - a, 3 - a]);
    expect(found.values).toEqual([expect.closeTo(2, 9), expect.closeTo(1, 9)]);
    expect(Math.sqrt(found.covariance.get(1, 1))).toBeCloseTo(0.2, 9);
  });

  it('says why there is no fit', () => {
    const status = (unknowns: readonly Unknown[], residuals: () => number[] | undefined): string =>
      leastSquares(unknowns, residuals).status;
    expect(status([free(0, 1)], () => undefined)).toBe('no-state');
    expect(status([free(0, 1), free(0, 1)], () => [1, 2])).toBe('too-few');
    expect(status([free(0, 1), free(0, 1)], () => [1, 2, 3, 4])).toBe('singular');
  });

  it('turns back where the model has no state', () => {
    const residuals = ([b]: readonly number[]) => (b > 4 ? undefined : [b - 3.9, b - 4.05, b - 3.95]);
    const found = leastSquares([free(0, 1e-3)], residuals);
    expect(found).toMatchObject({ status: 'converged', values: [expect.closeTo(3.96667, 4)] });
  });
});
