/**
 * Ends of the confidence interval of one coefficient. Along the line on which the others follow it (column i of the covariance), the sum
 * of squares rises by t^2 at both ends; for a model that is straight in its coefficients that is at b_i +- t sqrt(C_ii). Where it is bent
 * the ends lie where the sum has in truth risen that far, or on a bound.
 * Source: Bates & Watts, Nonlinear Regression Analysis (1988) 6.1, with the line in place of the full profile (from memory).
 *
 * symbol  unit  meaning
 * t       -     quantile of Student's t
 * C       b^2   covariance
 * u       -     way along the line, in standard errors of b_i
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import type { Fitted, Unknown } from './least-squares.ts';

export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** The straight end serves where the sum of squares there has risen as it should, within this share. */
const STRAIGHT = 0.05;
/** How far the ends are looked for, in straight half-widths. */
const FARTHEST = 8;

export function intervalOf(fitted: Fitted, unknowns: readonly Unknown[], i: number, t: number): Interval {
  const { values, covariance, sum, sumAt } = fitted;
  const error = Math.sqrt(covariance.get(i, i));
  const { low, high } = unknowns[i];
  if (!(error > 0)) return { low: values[i], high: values[i] };
  const at = (u: number): number[] =>
    values.map((value, j) => {
      const moved = value + (u * covariance.get(j, i)) / error;
      return Math.min(Math.max(moved, unknowns[j].low), unknowns[j].high);
    });
  const lacking = (u: number): number => (sumAt(at(u)) - sum) / t ** 2 - 1;
  const end = (sign: 1 | -1): number => {
    const toBound = (sign === 1 ? high - values[i] : values[i] - low) / error;
    const straight = Math.min(t, toBound);
    const missed = lacking(sign * straight);
    if (Math.abs(missed) < STRAIGHT || (straight === toBound && missed < 0)) return sign * straight;
    if (missed > 0) return sign * rootBetween((u) => lacking(sign * u), 0, straight);
    const far = Math.min(FARTHEST * t, toBound);
    return sign * (lacking(sign * far) < 0 ? far : rootBetween((u) => lacking(sign * u), straight, far));
  };
  return { low: values[i] + end(-1) * error, high: values[i] + end(1) * error };
}

/** Where the model has no state the sum is endless, which a root finder cannot use: it counts as far beyond. */
function rootBetween(f: (u: number) => number, low: number, high: number): number {
  const finite = (u: number): number => {
    const value = f(u);
    return Number.isFinite(value) ? value : 1e6;
  };
  const root = bracketedRoot(finite, low, high);
  return root.status === 'converged' ? root.value : high;
}
