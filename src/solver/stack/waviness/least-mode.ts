/**
 * Least eigenvalue μ of K(state) x = μ Kb x under the ties, with a count that proves it to be the least.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | μ | - | stiffness of a mode, its motion in the plane free, over its bending stiffness |
 * | σ | - | shift at which K(state) - σ Kb is factored |
 * | low, high | - | no mode lies below low; at least one lies at or below high |
 *
 * Each factor gives a count, which moves low or high, and two inverse iterations, whose Rayleigh quotient moves high. The
 * first shift lies far below the guess: there the inverse iteration keeps the W of the start and lets U and V follow it. The
 * next shift is just below that quotient: a count of none there ends the search. Where it is not none, the shift steps
 * down from the upper bound, further each time, but never past the middle between the bounds.
 * Source: Parlett, The Symmetric Eigenvalue Problem, 1998, chapters 3 (counts) and 4 (inverse iteration).
 */
import { factorShifted, multiplyBending, rayleighQuotient, solveShifted, type WaveProblem } from './wave-problem.ts';

/** The margin is proved to this, as a share of the larger of 1 and its size. */
export const MARGIN_TOLERANCE = 1e-4;
const FACTOR_LIMIT = 100;
const INVERSE_ITERATIONS = 2;
/** How far below the guess the search starts. */
const START_BELOW = 8;
/** First step down from the upper bound, as a multiple of the tolerance, and how much longer each next one is. */
const FIRST_DROP = 10;
const DROP_GROWTH = 4;

export type LeastMode =
  | { readonly status: 'converged'; readonly margin: number; readonly factors: number }
  | { readonly status: 'not-converged'; readonly factors: number };

/** Allowed distance between the bounds at a margin of this size. */
export function marginTolerance(margin: number): number {
  return MARGIN_TOLERANCE * Math.max(1, Math.abs(margin));
}

/**
 * @param guess of the margin [-]
 * @param x start of the inverse iteration, one array a plate, overwritten by the mode found
 * @returns 'not-converged' when the factors run out or the numbers are not finite
 */
export function leastMode(problem: WaveProblem, guess: number, x: readonly Float64Array[]): LeastMode {
  let low = Number.NEGATIVE_INFINITY;
  let high = Number.POSITIVE_INFINITY;
  let drop = FIRST_DROP * marginTolerance(guess);
  let sigma = guess - START_BELOW;
  let justBelow = false;
  for (let factors = 1; factors <= FACTOR_LIMIT; factors++) {
    const factor = factorShifted(problem, sigma);
    if (factor.status === 'singular') return { status: 'not-converged', factors };
    if (factor.negativeModes === 0) low = Math.max(low, factor.shift);
    else high = Math.min(high, factor.shift);
    const quotient = inverseIteration(problem, x);
    if (Number.isNaN(quotient)) return { status: 'not-converged', factors };
    high = Math.min(high, quotient);
    const tolerance = marginTolerance(high);
    if (high - low <= tolerance) return { status: 'converged', margin: high, factors };
    const below = quotient - tolerance / 2;
    justBelow = !justBelow && below > low && below < high;
    if (justBelow) sigma = below;
    else {
      sigma = Math.max((low + high) / 2, high - drop);
      drop *= DROP_GROWTH;
    }
  }
  return { status: 'not-converged', factors: FACTOR_LIMIT };
}

/** Turns x towards the mode nearest to the shift of the factor at hand. @returns its Rayleigh quotient, an upper bound of μ */
export function inverseIteration(problem: WaveProblem, x: readonly Float64Array[]): number {
  let quotient = Number.NaN;
  for (let i = 0; i < INVERSE_ITERATIONS; i++) {
    multiplyBending(problem, x);
    solveShifted(problem, x);
    quotient = rayleighQuotient(problem, x);
  }
  return quotient;
}
