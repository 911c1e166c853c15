/**
 * Symmetric banded factorisation A = L D Lᵀ without pivoting, and its solves, in place.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | order of the matrix |
 * | b | - | half bandwidth: A[i][j] = 0 for |i - j| > b |
 * | m | - | rows come in blocks of m whose bands begin at one column, as those of the unknowns of a node; 1 where they do not |
 * | a | any | lower band by rows, A[i][j] at a[i (b + 1) + b - (i - j)], so that the diagonal is last |
 *
 * No pivoting: the sign of each pivot counts the negative eigenvalues (Sylvester's law of inertia), which the
 * stability checks need; a pivot of no size is reported, never divided by.
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, section 4.3 (banded factorisation).
 */

/**
 * A pivot below this share of its own diagonal entry counts as nothing. Its own, since rows of one matrix differ in
 * unit (forces and moments), and a small plate must not look singular for that.
 */
const PIVOT_FLOOR = 1e-14;

export interface BandedFactor {
  /** `singular` when a pivot is negligible; the factor must then not be used. */
  readonly status: 'factored' | 'singular';
  /** Number of negative pivots = number of negative eigenvalues of A. */
  readonly negativePivots: number;
}

/**
 * Factors the band in place: `a` becomes unit L (below the diagonal) and D (on it).
 * @param a lower band, length n (b + 1), overwritten
 * @param m entries left of a block's first column, b + 1 - m before the block, must be nothing
 * @returns status, and the count of negative pivots; 'singular' when |pivot| < 1e-14 |diagonal| of its row
 */
export function factorBandedLdl(a: Float64Array, n: number, b: number, m = 1): BandedFactor {
  const s = b + 1;
  let negativePivots = 0;
  for (let i = 0; i < n; i++) {
    const ri = i * s + b - i;
    const start = i - (i % m) - s + m;
    const first = start > 0 ? start : 0;
    let d = a[ri + i];
    const floor = PIVOT_FLOOR * Math.abs(d);
    for (let j = first; j < i; j++) {
      const rj = j * s + b - j;
      const startJ = j - (j % m) - s + m;
      const low = startJ > first ? startJ : first;
      let v = a[ri + j];
      for (let k = low; k < j; k++) v -= a[ri + k] * a[rj + k];
      a[ri + j] = v;
    }
    for (let j = first; j < i; j++) {
      const v = a[ri + j];
      const l = v / a[j * s + b];
      d -= v * l;
      a[ri + j] = l;
    }
    if (!(Math.abs(d) > floor)) return { status: 'singular', negativePivots };
    if (d < 0) negativePivots++;
    a[ri + i] = d;
  }
  return { status: 'factored', negativePivots };
}

/**
 * Solves A x = rhs with a factor of `factorBandedLdl` for the same b and m.
 * @param x right-hand side, length n, overwritten by the solution
 * @param from rows before this one are known to be zero in the right-hand side (saves work)
 */
export function solveBandedLdl(a: Float64Array, n: number, b: number, x: Float64Array, from = 0, m = 1): void {
  const s = b + 1;
  for (let i = from; i < n; i++) {
    const ri = i * s + b - i;
    const start = i - (i % m) - s + m;
    const first = start > from ? start : from;
    let v = x[i];
    for (let k = first; k < i; k++) v -= a[ri + k] * x[k];
    x[i] = v;
  }
  for (let i = from; i < n; i++) x[i] /= a[i * s + b];
  for (let i = n - 1; i >= 0; i--) {
    const v = x[i];
    if (v === 0) continue;
    const ri = i * s + b - i;
    const start = i - (i % m) - s + m;
    for (let k = start > 0 ? start : 0; k < i; k++) x[k] -= a[ri + k] * v;
  }
}
