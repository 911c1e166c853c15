import { describe, expect, it } from 'vitest';
import { pchip } from '../../src/solver/numeric/pchip.ts';
import { observedOrder } from '../helpers/convergence.ts';

/** Largest error on 400 points of [0, 1] for a curve through `n` + 1 even points of the exponential function. */
function worstError(n: number): number {
  const x = Array.from({ length: n + 1 }, (_, i) => i / n);
  const curve = pchip(x, x.map(Math.exp));
  return Math.max(...Array.from({ length: 401 }, (_, i) => Math.abs(curve(i / 400) - Math.exp(i / 400))));
}

/**
 * The slopes are right to the second order, so the curve is right to the third.
 * Source: Fritsch & Butland 1984 for smooth rising data (from memory).
 */
describe('a monotone cubic through points of a smooth rising curve', () => {
  it('comes closer with the third power of the spacing', () => {
    const meshes = [10, 20, 40, 80];
    expect(Math.abs(observedOrder(meshes, meshes.map(worstError)) - 3)).toBeLessThan(0.2);
  });
});
