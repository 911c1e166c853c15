/**
 * Factor and solve of a small dense symmetric matrix that need not be definite, A = L D Lᵀ without pivoting, in place.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | order |
 * | a | any | rows of A, A[i][j] at a[i n + j]; only the lower triangle is read |
 *
 * The signs of D are those of the eigenvalues (Sylvester's law of inertia).
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, section 4.1.
 */

/** A pivot below this share of its own diagonal entry counts as nothing. */
const PIVOT_FLOOR = 1e-14;

/**
 * @param a length n², lower triangle overwritten by unit L and, on the diagonal, D
 * @returns the number of negative eigenvalues, or undefined when a pivot is negligible; `a` is then not usable
 */
export function factorDenseLdl(a: Float64Array, n: number): number | undefined {
  let negative = 0;
  for (let i = 0; i < n; i++) {
    const ri = i * n;
    let d = a[ri + i];
    const floor = PIVOT_FLOOR * Math.abs(d);
    for (let j = 0; j < i; j++) {
      const rj = j * n;
      let v = a[ri + j];
      for (let k = 0; k < j; k++) v -= a[ri + k] * a[rj + k];
      a[ri + j] = v;
    }
    for (let j = 0; j < i; j++) {
      const v = a[ri + j];
      const l = v / a[j * n + j];
      d -= v * l;
      a[ri + j] = l;
    }
    if (!(Math.abs(d) > floor)) return undefined;
    if (d < 0) negative++;
    a[ri + i] = d;
  }
  return negative;
}

/** Solves L D Lᵀ x = rhs. @param x right-hand side, length n, overwritten by the solution */
export function solveDenseLdl(a: Float64Array, n: number, x: Float64Array): void {
  for (let i = 0; i < n; i++) {
    let v = x[i];
    for (let k = 0; k < i; k++) v -= a[i * n + k] * x[k];
    x[i] = v;
  }
  for (let i = 0; i < n; i++) x[i] /= a[i * n + i];
  for (let i = n - 1; i >= 0; i--) {
    let v = x[i];
    for (let k = i + 1; k < n; k++) v -= a[k * n + i] * x[k];
    x[i] = v;
  }
}
