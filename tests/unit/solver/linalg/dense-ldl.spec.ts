import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorDenseLdl, solveDenseLdl } from '../../../../src/solver/linalg/dense-ldl.ts';

const entries = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 36, maxLength: 36 });

describe('dense L D Lᵀ', () => {
  it('solves an indefinite matrix by hand: [[1, 2], [2, 1]] x = [5, 4] gives [1, 2]', () => {
    const a = Float64Array.of(1, 0, 2, 1);
    expect(factorDenseLdl(a, 2)).toBe(1);
    const x = Float64Array.of(5, 4);
    solveDenseLdl(a, 2, x);
    expect([...x]).toEqual([1, 2]);
  });

  it('has no factor where a pivot is nothing', () => {
    expect(factorDenseLdl(Float64Array.of(0, 0, 1, 0), 2)).toBeUndefined();
  });

  it('counts the negative eigenvalues and solves, as a library does', () => {
    fc.assert(
      fc.property(entries, (numbers) => {
        const A = Matrix.zeros(6, 6);
        for (let i = 0; i < 6; i++)
          for (let j = 0; j <= i; j++)
            for (const [p, q] of [
              [i, j],
              [j, i],
            ])
              A.set(p, q, numbers[i * 6 + j] + (i === j ? 7.3 : 0));
        const values = new EigenvalueDecomposition(A).realEigenvalues;
        const a = Float64Array.from(A.to1DArray());
        const negative = factorDenseLdl(a, 6);
        if (negative === undefined || values.some((v) => Math.abs(v) < 1e-6)) return;
        expect(negative).toBe(values.filter((v) => v < 0).length);
        const wanted = [1, -2, 3, -4, 5, -6];
        const x = Float64Array.from(A.mmul(Matrix.columnVector(wanted)).to1DArray());
        solveDenseLdl(a, 6, x);
        // Without pivoting small pivots cost digits.
        for (const [i, value] of x.entries()) expect(value).toBeCloseTo(wanted[i], 4);
      }),
    );
  });
});
