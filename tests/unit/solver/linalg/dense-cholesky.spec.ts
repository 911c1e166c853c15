import fc from 'fast-check';
import { CholeskyDecomposition, Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorCholesky, solveCholesky } from '../../../../src/solver/linalg/dense-cholesky.ts';

/** G Gᵀ + I with G random: symmetric and positive definite. */
const matrices = fc.integer({ min: 1, max: 8 }).chain((n) =>
  fc.array(fc.double({ min: -2, max: 2, noNaN: true }), { minLength: n * (n + 1), maxLength: n * (n + 1) }).map((v) => {
    const G = new Matrix(Array.from({ length: n }, (_, i) => v.slice(i * n, (i + 1) * n)));
    return { n, A: G.mmul(G.transpose()).add(Matrix.eye(n)), rhs: v.slice(n * n) };
  }),
);

describe('dense Cholesky', () => {
  it('factors and solves what a hand can: [[4, 2], [2, 5]] = G Gᵀ with G = [[2, 0], [1, 2]]', () => {
    const a = Float64Array.of(4, 2, 2, 5);
    expect(factorCholesky(a, 2)).toBe(true);
    expect([a[0], a[2], a[3]]).toEqual([2, 1, 2]);
    const x = Float64Array.of(8, 12);
    solveCholesky(a, 2, x);
    expect([...x]).toEqual([1, 2]);
  });

  it('reads the lower triangle only', () => {
    const a = Float64Array.of(4, Number.NaN, 2, 5);
    expect(factorCholesky(a, 2)).toBe(true);
    const x = Float64Array.of(8, 12);
    solveCholesky(a, 2, x);
    expect([...x]).toEqual([1, 2]);
  });

  it('refuses an indefinite, a singular and a nonsense matrix', () => {
    expect(factorCholesky(Float64Array.of(1, 2, 2, 1), 2)).toBe(false);
    expect(factorCholesky(Float64Array.of(1, 1, 1, 1), 2)).toBe(false);
    expect(factorCholesky(Float64Array.of(-1), 1)).toBe(false);
    expect(factorCholesky(Float64Array.of(Number.NaN), 1)).toBe(false);
  });

  it('factors as ml-matrix does and solves as its LU does', () => {
    fc.assert(
      fc.property(matrices, ({ n, A, rhs }) => {
        const a = Float64Array.from(A.to1DArray());
        expect(factorCholesky(a, n)).toBe(true);
        const L = new CholeskyDecomposition(A).lowerTriangularMatrix;
        for (let i = 0; i < n; i++) for (let j = 0; j <= i; j++) expect(a[i * n + j]).toBeCloseTo(L.get(i, j), 9);
        const x = Float64Array.from(rhs);
        solveCholesky(a, n, x);
        solve(A, Matrix.columnVector(rhs))
          .to1DArray()
          .forEach((value, i) => {
            expect(x[i]).toBeCloseTo(value, 9);
          });
      }),
    );
  });
});
