import { describe, expect, it } from 'vitest';
import { slopesOf } from '../../../../src/solver/sensitivity/slopes.ts';

const slopeAt = (f: (x: number) => number, x: number, h: number) => slopesOf((step) => [f(x + step)], h)[0];

describe('slopes', () => {
  it('are exact for a polynomial of fourth order: the error of Richardson’s central form goes with the fifth derivative', () => {
    const slope = slopeAt((x) => x ** 4 - 2 * x ** 3 + x, 1.5, 0.25);
    expect(slope?.value).toBeCloseTo(4 * 1.5 ** 3 - 6 * 1.5 ** 2 + 1, 12);
  });

  it('tell an error that covers the true one on a smooth curve', () => {
    const slope = slopeAt(Math.exp, 1, 0.1);
    const off = Math.abs((slope?.value ?? Number.NaN) - Math.E);
    expect(off).toBeGreaterThan(0);
    expect(off).toBeLessThan(slope?.error ?? 0);
  });

  it('tell by how much the steps disagree where one of them straddles a kink', () => {
    const slope = slopeAt((x) => Math.max(0, x), -0.15, 0.1);
    expect(slope?.error).toBeCloseTo((0.05 / 0.4 - 0) / 3, 12);
  });

  it('are one-sided where a side is refused, and exact for a parabola there', () => {
    const [slope] = slopesOf((step) => (step < 0 ? undefined : [(2 + step) ** 2]), 0.1);
    expect(slope?.value).toBeCloseTo(4, 12);
    const [other] = slopesOf((step) => (step > 0 ? undefined : [(2 + step) ** 2]), 0.1);
    expect(other?.value).toBeCloseTo(4, 12);
  });

  it('are null where neither side has two values', () => {
    expect(slopesOf((step) => [Math.abs(step) > 0.15 ? null : step], 0.1)).toEqual([null]);
  });
});
