/**
 * Cholesky factor and solve of a small dense symmetric positive definite matrix, A = G Gᵀ, in place.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | order |
 * | a | any | rows of A, A[i][j] at a[i n + j]; only the lower triangle is read |
 *
 * Kept apart from ml-matrix because it runs in the hot loop of contact and must not allocate.
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, algorithm 4.2.1.
 */

/**
 * @param a length n², lower triangle overwritten by G
 * @returns false when a pivot is not positive (A is not positive definite); `a` is then not usable
 */
export function factorCholesky(a: Float64Array, n: number): boolean {
  for (let j = 0; j < n; j++) {
    const rj = j * n;
    let d = a[rj + j];
    for (let k = 0; k < j; k++) d -= a[rj + k] * a[rj + k];
    if (!(d > 0)) return false;
    const g = Math.sqrt(d);
    a[rj + j] = g;
    for (let i = j + 1; i < n; i++) {
      const ri = i * n;
      let v = a[ri + j];
      for (let k = 0; k < j; k++) v -= a[ri + k] * a[rj + k];
      a[ri + j] = v / g;
    }
  }
  return true;
}

/** Solves G Gᵀ x = rhs. @param x right-hand side, length n, overwritten by the solution */
export function solveCholesky(a: Float64Array, n: number, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let v = x[i];
    for (let k = 0; k < i; k++) v -= a[i * n + k] * x[k];
    x[i] = v / a[i * n + i];
  }
  for (let i = n - 1; i >= 0; i--) {
    let v = x[i];
    for (let k = i + 1; k < n; k++) v -= a[k * n + i] * x[k];
    x[i] = v / a[i * n + i];
  }
}
