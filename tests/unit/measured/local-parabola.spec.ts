import { describe, expect, it } from 'vitest';
import { localParabolas, slopeKept } from '../../../src/measured/local-parabola.ts';

const steps = (count: number, spacing: number): number[] => Array.from({ length: count }, (_, i) => i * spacing);

describe('the local parabola', () => {
  // Savitzky & Golay 1964, tables I and III, five points, quadratic: (-3 12 17 12 -3)/35 and (-2 -1 0 1 2)/10 (from memory).
  it('weighs five even samples as the published filters do', () => {
    const time = steps(9, 1);
    const weights = [2, 3, 4, 5, 6].map((at) => {
      const impulse = time.map((_, i) => (i === at ? 1 : 0));
      const { value, slope } = localParabolas(time, impulse, 4);
      return [value[4], slope[4]];
    });
    for (const [i, weight] of [-3, 12, 17, 12, -3].entries()) expect(weights[i][0]).toBeCloseTo(weight / 35, 12);
    for (const [i, weight] of [-2, -1, 0, 1, 2].entries()) expect(weights[i][1]).toBeCloseTo(weight / 10, 12);
  });

  it('has the slope of a parabola exactly, on uneven samples, at the ends and far from zero too', () => {
    const time = [1000, 1000.1, 1000.15, 1000.3, 1000.32, 1000.5, 1000.7];
    const { slope } = localParabolas(
      time,
      time.map((t) => 3 * (t - 1000) ** 2 - 2 * (t - 1000) + 5),
      0.35,
    );
    for (const [i, t] of time.entries()) expect(slope[i]).toBeCloseTo(6 * (t - 1000) - 2, 8);
  });

  it('widens where the window holds too few', () => {
    const time = steps(5, 1);
    expect(
      localParabolas(
        time,
        time.map((t) => 2 * t),
        0.1,
      ).slope,
    ).toEqual([2, 2, 2, 2, 2].map((v) => expect.closeTo(v, 12)));
  });

  // A dense sine through the filter against the formula, which was derived for endless density.
  it.each([0.2, 0.6, 1.2, 2])('takes off a sine what is said, at w T = %s', (x) => {
    const w = 10;
    const time = steps(4001, 2e-4);
    const { slope } = localParabolas(
      time,
      time.map((t) => Math.sin(w * t)),
      (2 * x) / w,
    );
    const middle = slope.slice(1500, 2500).map((v, i) => v / (w * Math.cos(w * time[1500 + i])));
    expect(middle[0]).toBeCloseTo(slopeKept(x), 3);
  });

  it('takes nothing off without a window', () => {
    expect(slopeKept(0)).toBe(1);
    expect(slopeKept(1e-3)).toBeCloseTo(1 - 1e-7, 12);
  });
});
