/**
 * What measurements cannot tell: directions in the space of the coefficients along which they say less than was known before.
 *   J_s = J diag(d) / s = U W V',   the measurements alone leave 1/w_k standard deviations of previous knowledge along column k of V
 * Directions with w_k < 1 are told, each with the coefficients that have most part in it.
 * Source: singular values of the scaled Jacobian, Belsley, Kuh & Welsch, Regression Diagnostics (1980) ch. 3 (from memory).
 *
 * symbol  unit  meaning
 * J       r/b   Jacobian of the residuals
 * d       b     standard deviation of what was known before
 * s       r     scatter of the residuals
 * w, V    -     singular values and right singular vectors of J_s
 */
import { Matrix, SingularValueDecomposition } from 'ml-matrix';

export interface Direction {
  /** Standard deviation that the measurements alone leave along it, over that of previous knowledge; 1e6 where they say nothing. */
  readonly leftOpen: number;
  /** Share of each coefficient in it, largest first, in previous standard deviations: signs tell what moves with and against. */
  readonly parts: readonly { readonly index: number; readonly share: number }[];
}

/** Beyond that rounding speaks. */
const NOTHING_TOLD = 1e6;
/** Smaller shares are left out of the words about a direction. */
const LEAST_SHARE = 0.3;

/** @param jacobian  n x p     @param deviations  length p */
export function undetermined(jacobian: Matrix, deviations: readonly number[], scatter: number): Direction[] {
  const scaled = jacobian.clone();
  for (const [i, d] of deviations.entries()) scaled.mulColumn(i, d / scatter);
  // Rows of nothing make room for directions that fewer rows than columns cannot span.
  const padded = new Matrix(Math.max(scaled.rows, deviations.length), deviations.length);
  padded.setSubMatrix(scaled, 0, 0);
  const { diagonal, rightSingularVectors: V } = new SingularValueDecomposition(padded);
  return diagonal
    .map((w, k) => ({ w, parts: partsOf(V.getColumn(k)) }))
    .filter(({ w }) => w < 1)
    .map(({ w, parts }) => ({ leftOpen: Math.min(1 / w, NOTHING_TOLD), parts }))
    .sort((a, b) => b.leftOpen - a.leftOpen);
}

function partsOf(vector: readonly number[]): Direction['parts'] {
  const parts = vector
    .map((share, index) => ({ index, share }))
    .filter(({ share }) => Math.abs(share) >= LEAST_SHARE)
    .sort((a, b) => Math.abs(b.share) - Math.abs(a.share));
  const sign = Math.sign(parts[0].share);
  return parts.map(({ index, share }) => ({ index, share: share * sign }));
}
