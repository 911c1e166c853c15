/**
 * Products of a symmetric banded matrix, stored as in banded-ldl.ts, with a vector.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | order of the matrix |
 * | b | - | half bandwidth |
 * | a | any | lower band by rows, A[i][j] at a[i (b + 1) + b - (i - j)] |
 *
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, section 1.2 (banded storage).
 */

/** out = A x. @param x length n @param out length n, overwritten */
export function multiplyBanded(a: Float64Array, n: number, b: number, x: Float64Array, out: Float64Array): void {
  const s = b + 1;
  for (let i = 0; i < n; i++) {
    const ri = i * s + b - i;
    const xi = x[i];
    let v = a[ri + i] * xi;
    for (let j = i > b ? i - b : 0; j < i; j++) {
      v += a[ri + j] * x[j];
      out[j] += a[ri + j] * xi;
    }
    out[i] = v;
  }
}

/** @returns xᵀ A x */
export function bandedQuadraticForm(a: Float64Array, n: number, b: number, x: Float64Array): number {
  const s = b + 1;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    const ri = i * s + b - i;
    let v = 0;
    for (let j = i > b ? i - b : 0; j < i; j++) v += a[ri + j] * x[j];
    sum += x[i] * (2 * v + a[ri + i] * x[i]);
  }
  return sum;
}
