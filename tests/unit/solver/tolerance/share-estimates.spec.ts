import { describe, expect, it } from 'vitest';
import { type Samples, sampleStudy } from '../../../../src/solver/tolerance/sample-study.ts';
import { shareEstimator } from '../../../../src/solver/tolerance/share-estimates.ts';
import { varianceShare } from '../../../../src/solver/tolerance/sobol-indices.ts';

/** f = 3 z1 + 4 z2 + 12 z3, shares 9, 16 and 144 of 169; and 5 z1 beside it, whose variance is 25. */
const study = {
  groupOf: [0, 1, 2],
  groups: 3,
  at: ([z1, z2, z3]: readonly number[]) => [3 * z1 + 4 * z2 + 12 * z3, 5 * z1],
};
const SHARES = [9 / 169, 16 / 169, 144 / 169];
const SEEDS = Array.from({ length: 40 }, (_, seed) => seed + 1);
const samplesOf = (seed: number, to: number): Samples => sampleStudy(study, { seed, from: 0, to });

describe('estimates of the shares', () => {
  it('are those of the samples, each within its interval', () => {
    const samples = samplesOf(1, 64);
    const column = (of: Samples['a']) => of.map(([f]) => f as number);
    const estimates = shareEstimator(samples, 1).at([0]);
    estimates.forEach(({ first, total }, group) => {
      const share = varianceShare(column(samples.a), column(samples.b), column(samples.ab[group]));
      expect(first.value).toBeCloseTo(share.first, 12);
      expect(total.value).toBeCloseTo(share.total, 12);
      expect(first.low).toBeLessThanOrEqual(first.value);
      expect(first.high).toBeGreaterThanOrEqual(first.value);
    });
  });

  it('have intervals that hold the true share in at least 90 of 100 studies (95 by their definition; shares by hand)', () => {
    const holds = SEEDS.flatMap((seed) =>
      shareEstimator(samplesOf(seed, 64), seed)
        .at([0])
        .flatMap(({ first, total }, group) =>
          [first, total].map(({ low, high }) => low <= SHARES[group] && SHARES[group] <= high),
        ),
    );
    expect(holds.filter(Boolean).length / holds.length).toBeGreaterThanOrEqual(0.9);
  });

  it('come closer with more samples, about as one over the root of their number', () => {
    const width = (samples: number) =>
      SEEDS.slice(0, 8).reduce((sum, seed) => {
        const { low, high } = shareEstimator(samplesOf(seed, samples), seed).at([0])[2].total;
        return sum + (high - low) / 8;
      }, 0);
    const ratio = width(64) / width(256);
    expect(ratio).toBeGreaterThan(1.5);
    expect(ratio).toBeLessThan(2.7);
  });

  it('over two places are weighed by their variances: of 169 + 25, 34 are from the first input', () => {
    const [first, second, third] = shareEstimator(samplesOf(2, 1024), 1).at([0, 1]);
    expect(first.total.value).toBeCloseTo(34 / 194, 2);
    expect(second.total.value).toBeCloseTo(16 / 194, 2);
    expect(third.first.value).toBeCloseTo(144 / 194, 2);
  });

  it('leave samples without a value out, and are nothing where nothing varies', () => {
    const still = { ...study, at: ([z1]: readonly number[]) => [z1 > 1 ? null : z1, 7] };
    const estimator = shareEstimator(sampleStudy(still, { seed: 1, from: 0, to: 64 }), 1);
    const [only] = estimator.at([0]);
    expect(only.total.value).toBeGreaterThan(0.9);
    expect(only.total.high).toBeLessThan(1.6);
    for (const { first, total } of estimator.at([1]))
      expect([first, total]).toEqual([
        { value: 0, low: 0, high: 0 },
        { value: 0, low: 0, high: 0 },
      ]);
  });

  it('are the same from the same seed', () => {
    const samples = samplesOf(3, 16);
    expect(shareEstimator(samples, 5).at([0])).toEqual(shareEstimator(samples, 5).at([0]));
    expect(shareEstimator(samples, 6).at([0])).not.toEqual(shareEstimator(samples, 5).at([0]));
  });
});
