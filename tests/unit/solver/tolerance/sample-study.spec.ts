import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../../src/solver/tolerance/normal-quantile.ts';
import { joinSamples, sampleStudy } from '../../../../src/solver/tolerance/sample-study.ts';
import { varianceShare } from '../../../../src/solver/tolerance/sobol-indices.ts';
import { shiftedSobol } from '../../../../src/solver/tolerance/sobol-sequence.ts';
import { summarise } from '../../../../src/solver/tolerance/summarise.ts';

/** T. Ishigami & T. Homma (1990) with a = 7, b = 0.1: S = 0.3139, 0.4424, 0; T = 0.5576, 0.4424, 0.2437 (Saltelli's books; from memory). */
const ishigami = ([x1, x2, x3]: readonly number[]) =>
  Math.sin(x1) + 7 * Math.sin(x2) ** 2 + 0.1 * x3 ** 4 * Math.sin(x1);
const PUBLISHED = [
  { first: 0.3139, total: 0.5576 },
  { first: 0.4424, total: 0.4424 },
  { first: 0, total: 0.2437 },
];

describe('the shares of the variance', () => {
  it('of Ishigami’s function are those published, to two digits from 4096 samples', () => {
    const points = shiftedSobol(1, 6);
    const x = (n: number) => points(n).map((u) => (2 * u - 1) * Math.PI);
    const samples = Array.from({ length: 4096 }, (_, n) => ({ A: x(n).slice(0, 3), B: x(n).slice(3) }));
    PUBLISHED.forEach((published, group) => {
      const share = varianceShare(
        samples.map(({ A }) => ishigami(A)),
        samples.map(({ B }) => ishigami(B)),
        samples.map(({ A, B }) => ishigami(A.map((a, i) => (i === group ? B[i] : a)))),
      );
      expect(Math.abs(share.first - published.first)).toBeLessThan(0.01);
      expect(Math.abs(share.total - published.total)).toBeLessThan(0.01);
    });
  });
});

describe('a study of samples', () => {
  /** f = 3 z1 + 4 z2 + 12 z3: deviation 13, shares 9, 16 and 144 of 169. */
  const study = {
    groupOf: [0, 0, 1],
    groups: 2,
    at: ([z1, z2, z3]: readonly number[]) => [100 + 3 * z1 + 4 * z2 + 12 * z3, 5],
  };

  it('of a sum of normal inputs has its deviation, its 90 of 100 band and the shares of its groups', () => {
    const [spread, still] = summarise(sampleStudy(study, { seed: 2, from: 0, to: 1024 }));
    expect(spread?.deviation).toBeCloseTo(13, 0);
    // Two standard errors of such a quantile of 2048 values, sqrt(p (1 - p) / n) over its density, are 1.2.
    expect(Math.abs((spread?.p95 ?? NaN) - 100 - 13 * normalQuantile(0.95))).toBeLessThan(1.2);
    expect(Math.abs((spread?.p5 ?? NaN) - 100 + 13 * normalQuantile(0.95))).toBeLessThan(1.2);
    expect(spread?.shares[0].first).toBeCloseTo(25 / 169, 1);
    expect(spread?.shares[1].total).toBeCloseTo(144 / 169, 1);
    expect(still).toMatchObject({
      p5: 5,
      p95: 5,
      deviation: 0,
      shares: [
        { first: 0, total: 0 },
        { first: 0, total: 0 },
      ],
    });
  });

  it('grows in parts to what it is at once, and is another from another seed', () => {
    const whole = sampleStudy(study, { seed: 5, from: 0, to: 12 });
    const [first, rest] = [
      { seed: 5, from: 0, to: 5 },
      { seed: 5, from: 5, to: 12 },
    ].map((r) => sampleStudy(study, r));
    expect(joinSamples(first, rest)).toEqual(whole);
    expect(sampleStudy(study, { seed: 6, from: 0, to: 12 })).not.toEqual(whole);
  });

  it('leaves samples without a value out, counts them, and has no band of too few', () => {
    const at = (z: readonly number[]) => [z[0] > 0 ? null : z[0], null];
    const [half, none] = summarise(sampleStudy({ groupOf: [0], groups: 1, at }, { seed: 1, from: 0, to: 64 }));
    expect(half?.without).toBe(64);
    expect(half?.p95).toBeLessThan(0);
    expect(none).toBeNull();
  });

  it('stops when it is asked to', () => {
    const shouldStop = () => true;
    expect(() => sampleStudy(study, { seed: 1, from: 0, to: 2 }, { shouldStop })).toThrow('stopped');
  });
});
