import fc from 'fast-check';
import { EigenvalueDecomposition, Matrix, solve } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { factorBandedLdl, solveBandedLdl } from '../../../../src/solver/linalg/banded-ldl.ts';

/** Lower band of a full symmetric matrix. */
function bandOf(full: readonly (readonly number[])[], b: number): Float64Array {
  const band = new Float64Array(full.length * (b + 1));
  full.forEach((row, i) => {
    for (let j = Math.max(0, i - b); j <= i; j++) band[i * (b + 1) + b - (i - j)] = row[j];
  });
  return band;
}

/** G Gᵀ + shift I with G a random lower band: symmetric, and positive definite for a positive shift. */
const matrices = fc
  .record({
    n: fc.integer({ min: 1, max: 12 }),
    b: fc.integer({ min: 1, max: 4 }),
    seeds: fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 150, maxLength: 150 }),
  })
  .map(({ n, b, seeds }) => {
    const G = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => (j <= i && i - j <= b ? seeds[i * 12 + j] : 0)),
    );
    const full = G.map((row, i) =>
      G.map((other, j) => row.reduce((sum, v, k) => sum + v * other[k], i === j ? 0.1 : 0)),
    );
    return { n, b, full, rhs: seeds.slice(0, n) };
  });

describe('banded L D Lᵀ', () => {
  it('solves a system whose answer is plain: the second difference of a parabola', () => {
    const full = [
      [2, -1, 0],
      [-1, 2, -1],
      [0, -1, 2],
    ];
    const band = bandOf(full, 1);
    expect(factorBandedLdl(band, 3, 1)).toEqual({ status: 'factored', negativePivots: 0 });
    const x = Float64Array.of(2, 2, 2);
    solveBandedLdl(band, 3, 1, x);
    expect([...x].map((v) => Math.round(v * 1e12) / 1e12)).toEqual([3, 4, 3]);
  });

  it('gives an x with A x = rhs', () => {
    fc.assert(
      fc.property(matrices, ({ n, b, full, rhs }) => {
        const band = bandOf(full, b);
        expect(factorBandedLdl(band, n, b).status).toBe('factored');
        const x = Float64Array.from(rhs);
        solveBandedLdl(band, n, b, x);
        full.forEach((row, i) => {
          expect(row.reduce((sum, v, j) => sum + v * x[j], 0)).toBeCloseTo(rhs[i], 9);
        });
      }),
    );
  });

  it('gives the same with rows in blocks that begin at one column', () => {
    // Three nodes of two unknowns: every row of a node begins at the first unknown of the node before.
    const full = [
      [9, 1, 2, 1, 0, 0],
      [1, 8, 1, -2, 0, 0],
      [2, 1, -7, 1, 1, 2],
      [1, -2, 1, 9, 1, 1],
      [0, 0, 1, 1, 6, -1],
      [0, 0, 2, 1, -1, 8],
    ];
    const [banded, blocked] = [bandOf(full, 3), bandOf(full, 3)];
    expect(factorBandedLdl(blocked, 6, 3, 2)).toEqual(factorBandedLdl(banded, 6, 3));
    expect(blocked).toEqual(banded);
    const x = Float64Array.of(1, 2, 3, 4, 5, 6);
    solveBandedLdl(blocked, 6, 3, x, 0, 2);
    full.forEach((row, i) => {
      expect(row.reduce((sum, v, j) => sum + v * x[j], 0)).toBeCloseTo(i + 1, 12);
    });
  });

  it('may start at the first row whose right-hand side is not zero', () => {
    const full = [
      [4, 1, 0],
      [1, 4, 1],
      [0, 1, 4],
    ];
    const band = bandOf(full, 1);
    factorBandedLdl(band, 3, 1);
    const [whole, late] = [Float64Array.of(0, 0, 5), Float64Array.of(0, 0, 5)];
    solveBandedLdl(band, 3, 1, whole);
    solveBandedLdl(band, 3, 1, late, 2);
    expect(late).toEqual(whole);
  });

  it('counts the negative eigenvalues', () => {
    // Eigenvalues of [[1, 2], [2, 1]] are 3 and -1.
    const indefinite = [
      [1, 2],
      [2, 1],
    ];
    expect(factorBandedLdl(bandOf(indefinite, 1), 2, 1)).toEqual({ status: 'factored', negativePivots: 1 });
    const negative = indefinite.map((row, i) => row.map((v, j) => (i === j ? -5 : v)));
    expect(factorBandedLdl(bandOf(negative, 1), 2, 1).negativePivots).toBe(2);
  });

  it('reports a matrix without inverse, and one that is no number', () => {
    const singular = [
      [1, -1, 0],
      [-1, 2, -1],
      [0, -1, 1],
    ];
    expect(factorBandedLdl(bandOf(singular, 1), 3, 1).status).toBe('singular');
    expect(factorBandedLdl(Float64Array.of(Number.NaN), 1, 0).status).toBe('singular');
    expect(factorBandedLdl(Float64Array.of(0), 1, 0).status).toBe('singular');
  });

  it('gives the x that ml-matrix finds by LU', () => {
    fc.assert(
      fc.property(matrices, ({ n, b, full, rhs }) => {
        const band = bandOf(full, b);
        factorBandedLdl(band, n, b);
        const x = Float64Array.from(rhs);
        solveBandedLdl(band, n, b, x);
        const wanted = solve(new Matrix(full), Matrix.columnVector(rhs)).to1DArray();
        wanted.forEach((value, i) => {
          expect(x[i]).toBeCloseTo(value, 8);
        });
      }),
    );
  });

  it('has as many negative pivots as ml-matrix finds negative eigenvalues', () => {
    let indefinite = 0;
    fc.assert(
      fc.property(
        matrices,
        fc.integer({ min: 0, max: 100 }).map((cents) => cents / 50),
        ({ n, b, full }, shift) => {
          const shifted = full.map((row, i) => row.map((v, j) => (i === j ? v - shift : v)));
          const { realEigenvalues } = new EigenvalueDecomposition(new Matrix(shifted), { assumeSymmetric: true });
          fc.pre(Math.min(...realEigenvalues.map(Math.abs)) > 1e-6);
          const { status, negativePivots } = factorBandedLdl(bandOf(shifted, b), n, b);
          fc.pre(status === 'factored');
          expect(negativePivots).toBe(realEigenvalues.filter((value) => value < 0).length);
          if (negativePivots > 0) indefinite++;
        },
      ),
    );
    expect(indefinite).toBeGreaterThan(30);
  });

  it('does not mind rows of very different units', () => {
    fc.assert(
      fc.property(matrices, fc.integer({ min: -9, max: 9 }), ({ n, b, full }, power) => {
        const unit = (i: number) => (i % 2 === 0 ? 1 : 10 ** power);
        const scaled = full.map((row, i) => row.map((v, j) => v * unit(i) * unit(j)));
        expect(factorBandedLdl(bandOf(scaled, b), n, b).status).toBe('factored');
      }),
    );
  });
});
