/**
 * Jacobian of f(t, y) by forward differences: df_i/dy_j = (f_i(y + d e_j) - f_i(y)) / d, with d half the digits of y_j, or a
 * thousandth of its tolerance where that is more: what y_j stands for may carry more rounding than y_j itself.
 *
 * symbol  unit  meaning
 * d       of y  step aside
 * w       1/y   1 over the tolerance of each component
 */
import type { Rates } from './radau-step.ts';

const ASIDE = Math.sqrt(Number.EPSILON);
const TOLERANCE_SHARE = 1e-3;

/**
 * @param y  length n; moved aside and put back
 * @param f  f(t, y), length n
 * @param out  n x n, row by row, overwritten
 */
export function differenceJacobian(
  rates: Rates,
  t: number,
  y: Float64Array,
  f: Float64Array,
  w: Float64Array,
  out: Float64Array,
): void {
  const n = y.length;
  const moved = new Float64Array(n);
  for (let j = 0; j < n; j++) {
    const at = y[j];
    y[j] = at + Math.max(ASIDE * Math.abs(at), TOLERANCE_SHARE / w[j]);
    const d = y[j] - at;
    rates(t, y, moved);
    y[j] = at;
    for (let i = 0; i < n; i++) out[i * n + j] = (moved[i] - f[i]) / d;
  }
}
