import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorLu, solveLu } from '../../../../src/solver/numeric/dense-lu.ts';

const solve = (matrix: number[], b: number[]) => {
  const [factors, order, x] = [Float64Array.from(matrix), new Int32Array(b.length), Float64Array.from(b)];
  const status = factorLu(factors, b.length, order);
  if (status === 'factored') solveLu(factors, b.length, order, x);
  return { status, x: Array.from(x) };
};

describe('LU factors', () => {
  it('solve a system whose first pivot is 0', () => {
    // By hand: 2y = 4, x + y + z = 6, 3x - z = 0 has x 1, y 2, z 3.
    const { status, x } = solve([0, 2, 0, 1, 1, 1, 3, 0, -1], [4, 6, 0]);
    expect(status).toBe('factored');
    expect(x.map((value) => value.toFixed(12))).toEqual(['1.000000000000', '2.000000000000', '3.000000000000']);
  });

  it.each([
    ['dependent rows', [1, 2, 2, 4]],
    ['no numbers', [Number.NaN, 1, 1, 1]],
  ])('call %s singular', (_, matrix) => {
    expect(solve(matrix, [1, 1]).status).toBe('singular');
  });

  it('undo the product for any well-conditioned matrix', () => {
    const entry = fc.double({ min: -1, max: 1, noNaN: true });
    const system = fc.integer({ min: 1, max: 6 }).chain((n) =>
      fc.record({
        matrix: fc.array(entry, { minLength: n * n, maxLength: n * n }),
        x: fc.array(entry, { minLength: n, maxLength: n }),
        rotation: fc.integer({ min: 0, max: n - 1 }),
      }),
    );
    fc.assert(
      fc.property(system, ({ matrix, x, rotation }) => {
        const n = x.length;
        const dominant = matrix.map((a, k) => (k % n === (Math.floor(k / n) + rotation) % n ? 2 * n + a : a));
        const b = x.map((_, i) => x.reduce((sum, xj, j) => sum + dominant[i * n + j] * xj, 0));
        const solved = solve(dominant, b);
        expect(solved.status).toBe('factored');
        for (const [i, value] of solved.x.entries()) expect(value).toBeCloseTo(x[i], 12);
      }),
    );
  });
});
