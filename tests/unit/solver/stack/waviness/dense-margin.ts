/**
 * The margin of a wave problem by dense algebra alone: U and V condensed out, the ties met by a basis of their null
 * space, and the eigenvalues of what is left against bending. Another road than the counts and shifts of the solver.
 */
import { CholeskyDecomposition, EigenvalueDecomposition, inverse, Matrix, SingularValueDecomposition } from 'ml-matrix';
import { WAVE_BANDWIDTH, WAVE_UNKNOWNS } from '../../../../../src/solver/plate/waviness/wave-plate.ts';
import type { WaveProblem } from '../../../../../src/solver/stack/waviness/wave-problem.ts';

/** All eigenvalues, rising. */
export function denseMargins(problem: WaveProblem): number[] {
  const { orders, waves, sides, ties } = problem;
  const offsets = waves.map((_, k) => waves.slice(0, k).reduce((sum, { size }) => sum + size, 0));
  const order = waves.reduce((sum, { size }) => sum + size, 0);
  const [bending, stretching] = [Matrix.zeros(order, order), Matrix.zeros(order, order)];
  for (const [k, matrices] of orders.entries()) {
    addBand(bending, matrices.bending, waves[k].size, offsets[k]);
    addBand(stretching, matrices.stretching, waves[k].size, offsets[k]);
  }
  const lifts: number[] = [];
  const inPlane: number[] = [];
  for (const [k, { size, fixed }] of waves.entries()) {
    for (let i = 0; i < size; i++) {
      if (fixed.includes(i)) continue;
      (i % WAVE_UNKNOWNS < 2 ? lifts : inPlane).push(offsets[k] + i);
    }
  }
  const coupling = stretching.selection(lifts, inPlane);
  const plane = stretching.selection(inPlane, inPlane);
  const condensed = Matrix.add(bending, stretching)
    .selection(lifts, lifts)
    .sub(coupling.mmul(inverse(plane)).mmul(coupling.transpose()));
  const rows = Matrix.zeros(Math.max(ties.length, 1), order);
  for (const [k, side] of sides.entries()) {
    for (const { tie, sign, node } of side.ties) {
      const at = node * WAVE_UNKNOWNS;
      rows.set(tie, offsets[k] + at, sign * orders[k].scale[at]);
    }
  }
  const basis = nullSpace(rows.selection(range(rows.rows), lifts), ties.length);
  const within = (m: Matrix) => symmetric(basis.transpose().mmul(m).mmul(basis));
  const root = new CholeskyDecomposition(within(bending.selection(lifts, lifts))).lowerTriangularMatrix;
  const unroot = inverse(root);
  const reduced = symmetric(unroot.mmul(within(condensed)).mmul(unroot.transpose()));
  return new EigenvalueDecomposition(reduced, { assumeSymmetric: true }).realEigenvalues.sort((p, q) => p - q);
}

/** Rid of what rounding leaves. */
const symmetric = (m: Matrix): Matrix => Matrix.add(m, m.transpose()).div(2);

const range = (n: number): number[] => Array.from({ length: n }, (_, i) => i);

function addBand(target: Matrix, band: Float64Array, size: number, offset: number): void {
  for (let i = 0; i < size; i++) {
    for (let j = Math.max(0, i - WAVE_BANDWIDTH); j <= i; j++) {
      const value = band[i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH - (i - j)];
      target.set(offset + i, offset + j, value);
      target.set(offset + j, offset + i, value);
    }
  }
}

/** Columns that span the null space of independent rows. */
function nullSpace(rows: Matrix, rank: number): Matrix {
  const size = rows.columns;
  if (rank === 0) return Matrix.eye(size, size);
  const square = Matrix.zeros(size, size);
  square.setSubMatrix(rows, 0, 0);
  const { rightSingularVectors, diagonal } = new SingularValueDecomposition(square, { autoTranspose: true });
  const smallest = range(size)
    .sort((p, q) => diagonal[p] - diagonal[q])
    .slice(0, size - rank);
  return rightSingularVectors.selection(range(size), smallest);
}
