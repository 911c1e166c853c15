import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pchip } from '../../../../src/solver/numeric/pchip.ts';

describe('pchip', () => {
  // Source: scipy.interpolate.PchipInterpolator 1.17.1 on the same points.
  it.each([
    [[0, 1, 2.5, 4, 7], [0, 0.5, 3, 3.2, 10], 0.3, 0.06611782178217822],
    [[0, 1, 2.5, 4, 7], [0, 0.5, 3, 3.2, 10], 1.7, 1.7300221380162706],
    [[0, 1, 2.5, 4, 7], [0, 0.5, 3, 3.2, 10], 3.1, 3.0907265917602995],
    [[0, 1, 2.5, 4, 7], [0, 0.5, 3, 3.2, 10], 5, 4.2450825357192405],
    [[0, 1, 2.5, 4, 7], [0, 0.5, 3, 3.2, 10], 6.5, 8.231349701761687],
    [[0, 1, 2, 3.5], [0, 0, 2, 1], 0.5, 0],
    [[0, 1, 2, 3.5], [0, 0, 2, 1], 1.5, 1],
    [[0, 1, 2, 3.5], [0, 0, 2, 1], 2.2, 1.9976296296296296],
    [[0, 1, 2, 3.5], [0, 0, 2, 1], 3, 1.7037037037037037],
  ])('x %j, y %j at %d gives %d', (x, y, at, value) => {
    expect(pchip(x, y)(at)).toBeCloseTo(value, 12);
  });

  it('holds the end values outside, and one point everywhere', () => {
    const curve = pchip([1, 2, 3], [5, 7, 8]);
    expect([curve(0), curve(4)]).toEqual([5, 8]);
    expect(pchip([1], [5])(9)).toBe(5);
    expect(pchip([1, 3], [5, 9])(2)).toBe(7);
  });

  it('passes through its points and never turns back where they rise', () => {
    const step = fc.double({ min: 1e-3, max: 10, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(step, step), { minLength: 3, maxLength: 10 }), (steps) => {
        const x = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, [dx]) => sum + dx, 0));
        const y = steps.map((_, i) => steps.slice(0, i + 1).reduce((sum, [, dy]) => sum + dy, 0));
        const curve = pchip(x, y);
        for (const [i, at] of x.entries()) expect(curve(at)).toBeCloseTo(y[i], 9);
        const fine = Array.from({ length: 200 }, (_, i) => curve(x[0] + ((x[x.length - 1] - x[0]) * i) / 199));
        for (let i = 1; i < 200; i++) expect(fine[i] - fine[i - 1]).toBeGreaterThan(-1e-9);
      }),
    );
  });
});
