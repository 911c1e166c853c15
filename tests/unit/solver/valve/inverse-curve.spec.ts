import { describe, expect, it } from 'vitest';
import { inverseCurve } from '../../../../src/solver/valve/inverse-curve.ts';

const value = (solved: { status: string }) => (solved as unknown as { value: number }).value;

describe('inverseCurve', () => {
  const x = [0, 1, 2, 4, 8];

  it('finds where a curve has a value, to rounding, between and on the samples', () => {
    const cube = (at: number) => at ** 3;
    const inverse = inverseCurve(x, x.map(cube), cube);
    for (const at of [1e-6, 0.3, 1, 1.7, 3.99, 8]) {
      expect(Math.abs(value(inverse(at ** 3)) / at - 1)).toBeLessThan(1e-12);
    }
  });

  it('needs a few values of a smooth curve only', () => {
    let asked = 0;
    const smooth = (at: number) => {
      asked++;
      return at + 0.1 * at * at;
    };
    const inverse = inverseCurve(x, x.map(smooth), smooth);
    asked = 0;
    inverse(3);
    expect(asked).toBeLessThan(6);
  });

  it('needs no more where nothing happens over the first samples', () => {
    let asked = 0;
    const late = (at: number) => {
      asked++;
      return at < 2 ? 0 : at - 2;
    };
    const inverse = inverseCurve(x, x.map(late), late);
    asked = 0;
    expect(value(inverse(3))).toBeCloseTo(5, 12);
    expect(asked).toBeLessThan(6);
  });

  it('finds its way on a curve with a corner and a steep flank', () => {
    const corner = (at: number) => (at < 3 ? 1e-3 * at : 3e-3 + (at - 3) * 1e3);
    const inverse = inverseCurve(x, x.map(corner), corner);
    for (const at of [2.5, 2.9999, 3.0001, 3.5, 7]) {
      expect(Math.abs(value(inverse(corner(at))) / at - 1)).toBeLessThan(1e-9);
    }
  });

  it('stays at rest at 0 and begins where the curve leaves 0', () => {
    const late = (at: number) => Math.max(0, at - 2);
    const inverse = inverseCurve(x, x.map(late), late);
    expect(value(inverse(0))).toBe(0);
    expect(value(inverse(1e-9))).toBeCloseTo(2, 8);
    expect(value(inverse(1))).toBeCloseTo(3, 12);
  });

  it('says when the curve is no number between its samples', () => {
    const holed = (at: number) => (at > 2 && at < 4 ? Number.NaN : at);
    expect(inverseCurve(x, x.map(holed), holed)(3)).toMatchObject({ status: 'not-converged' });
  });

  it('finds the value between its samples, though the curve comes back to it beyond them', () => {
    // Beyond the last sample the curve has fallen to the wanted value and stays there; a corner throws the secant out to it.
    const corner = (at: number) => (at < 7 ? 1e-3 * at : 7e-3 + (at - 7) * 1e3);
    for (const at of [4.5, 6.9, 6.9999, 7.0001]) {
      const hump = (x: number) => (x < 0 || x > 8 ? corner(at) : corner(x));
      expect(Math.abs(value(inverseCurve(x, x.map(hump), hump)(corner(at))) / at - 1)).toBeLessThan(1e-9);
    }
  });
});
