import { describe, expect, it } from 'vitest';
import { kinkedCurve } from '../../../../src/solver/numeric/kinked-curve.ts';
import { pchip } from '../../../../src/solver/numeric/pchip.ts';

describe('kinkedCurve', () => {
  /** Straight on both sides of 1 and 2, steep between. */
  const law = (x: number) => (x < 1 ? 0.1 * x : x < 2 ? 0.1 + 5 * (x - 1) : 5.1 + 0.2 * (x - 2));
  const X = [0, 0.5, 1, 2, 4, 7];
  const Y = X.map(law);

  it('follows straight lines that meet in kinks, which one cubic does not', () => {
    const curve = kinkedCurve(X, Y, [1, 2]);
    for (let x = 0; x <= 7; x += 0.05) expect(curve(x)).toBeCloseTo(law(x), 12);
    expect(Math.abs(pchip(X, Y)(1.2) - law(1.2))).toBeGreaterThan(0.3);
  });

  it('stays at its end values outside', () => {
    const curve = kinkedCurve(X, Y, [1, 2]);
    expect([curve(-1), curve(9)]).toEqual([0, law(7)]);
  });

  it('is one cubic where no inner point is a kink', () => {
    const [curve, smooth] = [kinkedCurve(X, Y, [-1, 0, 0.7, 7, 8]), pchip(X, Y)];
    for (let x = 0; x <= 7; x += 0.05) expect(curve(x)).toBe(smooth(x));
    expect(kinkedCurve([3], [5], [3])(4)).toBe(5);
  });
});
