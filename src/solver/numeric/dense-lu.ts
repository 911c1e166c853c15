/**
 * LU factors of a small dense matrix with partial pivoting, in place.
 * Source: G. H. Golub & C. F. Van Loan, Matrix Computations, section 3.4 (from memory).
 *
 * symbol  unit  meaning
 * M, n    -     the matrix, its order
 * P, L, U -     exchanges of rows, lower and upper triangle
 * b       -     right-hand side; where rows are exchanged, a and b are two of them
 */

/**
 * Factors P M = L U.
 * @param matrix  n x n, row by row; overwritten with L (below the diagonal, ones left out) and U
 * @param order  length n, overwritten: the row exchanged with row k at step k
 * @returns `singular` when a column has no pivot other than 0, or holds no numbers
 */
export function factorLu(matrix: Float64Array, n: number, order: Int32Array): 'factored' | 'singular' {
  for (let k = 0; k < n; k++) {
    const pivotRow = rowOfLargest(matrix, n, k);
    order[k] = pivotRow;
    exchangeRows(matrix, n, k, pivotRow);
    const pivot = matrix[k * n + k];
    if (!(Math.abs(pivot) > 0 && Number.isFinite(pivot))) return 'singular';
    for (let i = k + 1; i < n; i++) {
      const factor = matrix[i * n + k] / pivot;
      matrix[i * n + k] = factor;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) matrix[i * n + j] -= factor * matrix[k * n + j];
    }
  }
  return 'factored';
}

/** Solves M x = b with the factors. @param b  length n, overwritten with x */
export function solveLu(factors: Float64Array, n: number, order: Int32Array, b: Float64Array): void {
  for (let k = 0; k < n; k++) {
    const swap = b[order[k]];
    b[order[k]] = b[k];
    b[k] = swap;
  }
  for (let i = 1; i < n; i++) {
    let sum = b[i];
    for (let j = 0; j < i; j++) sum -= factors[i * n + j] * b[j];
    b[i] = sum;
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i];
    for (let j = i + 1; j < n; j++) sum -= factors[i * n + j] * b[j];
    b[i] = sum / factors[i * n + i];
  }
}

function rowOfLargest(matrix: Float64Array, n: number, k: number): number {
  let best = k;
  for (let i = k + 1; i < n; i++) {
    if (Math.abs(matrix[i * n + k]) > Math.abs(matrix[best * n + k])) best = i;
  }
  return best;
}

/** Whole rows, so that the exchanges of L are those of the right-hand side. */
function exchangeRows(matrix: Float64Array, n: number, a: number, b: number): void {
  if (a === b) return;
  for (let j = 0; j < n; j++) {
    const swap = matrix[a * n + j];
    matrix[a * n + j] = matrix[b * n + j];
    matrix[b * n + j] = swap;
  }
}
