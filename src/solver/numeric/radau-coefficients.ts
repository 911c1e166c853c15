/**
 * Coefficients of the three-stage Radau IIA method of order 5: collocation at the Radau points, L-stable, and its last stage is the
 * end of the step. All are closed forms; the tests hold them to the conditions of order, and to those that define collocation.
 *   Y_i = y0 + h sum_j A_ij f(t0 + c_j h, Y_j),   y1 = Y_3
 *   err = g h f(t0, y0) + sum_i e_i (Y_i - y0),   the difference to an embedded formula of order 3
 * Source: E. Hairer & G. Wanner, Solving Ordinary Differential Equations II, sections IV.5 and IV.8 (from memory).
 *
 * symbol   unit  meaning
 * c        -     stage times as shares of the step
 * A        -     weights of the stages; the last row serves as b
 * g        -     1 over the real eigenvalue of the inverse of A
 * e        -     weights of the stages in the error
 */

const R6 = Math.sqrt(6);

export const STAGES = 3;

export const RADAU_C: readonly number[] = [(4 - R6) / 10, (4 + R6) / 10, 1];

export const RADAU_A: readonly (readonly number[])[] = [
  [(88 - 7 * R6) / 360, (296 - 169 * R6) / 1800, (-2 + 3 * R6) / 225],
  [(296 + 169 * R6) / 1800, (88 + 7 * R6) / 360, (-2 - 3 * R6) / 225],
  [(16 - R6) / 36, (16 + R6) / 36, 1 / 9],
];

/** Weights of the stages in an integral over the step. */
export const RADAU_B: readonly number[] = RADAU_A[2];

export const ERROR_G = (6 + Math.cbrt(81) - Math.cbrt(9)) / 30;

export const ERROR_E: readonly number[] = [-13 - 7 * R6, -13 + 7 * R6, -1].map((weight) => (ERROR_G / 3) * weight);

/**
 * Weights of the three stages in the collocation polynomial at a share `x` of the step (0 start, 1 end); it is 0 at the start.
 * @param out  length 3, overwritten
 */
export function collocationWeights(x: number, out: Float64Array): void {
  const [c1, c2] = RADAU_C;
  out[0] = (x * (x - c2) * (x - 1)) / (c1 * (c1 - c2) * (c1 - 1));
  out[1] = (x * (x - c1) * (x - 1)) / (c2 * (c2 - c1) * (c2 - 1));
  out[2] = (x * (x - c1) * (x - c2)) / ((1 - c1) * (1 - c2));
}
