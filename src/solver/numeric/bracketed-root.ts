/**
 * Root of one equation f(x) = 0 between two ends where f changes sign, by Chandrupatla's mixture of bisection and
 * inverse quadratic interpolation. It never leaves the bracket, so it ends for every continuous f. Why it failed is told without
 * numbers: what x and f are, and in which unit, is known to the caller.
 * Source: T. R. Chandrupatla, Advances in Engineering Software 28 (1997) 145-149 (from memory).
 *
 * symbol  unit  meaning
 * a, b    of x  ends of the bracket; a is the newest point
 * c       of x  the point before
 * t       -     next point as a fraction of the way from a to b
 * xi, phi -     position and value ratio that decide whether interpolation is safe
 */
import type { NotConverged, Solved } from './solved.ts';

const MAX_ITERATIONS = 120;
const MAX_DOUBLINGS = 400;

/** Width of the bracket at which the root counts as found, relative to the root. */
const RELATIVE_WIDTH = 4e-14;

/**
 * Finds x with f(x) = 0 in [low, high].
 * @returns residual |f(x)|; `not-converged` when f has one sign at both ends, is not a number somewhere, or the steps run out.
 */
export function bracketedRoot(f: (x: number) => number, low: number, high: number): Solved {
  let [a, b, fa, fb] = [high, low, f(high), f(low)];
  if (fb === 0) return found(b, fb, 0);
  if (fa === 0) return found(a, fa, 0);
  if (!(fa * fb < 0)) return failed(0, fa, 'the balance has one sign at both ends');
  let t = 0.5;
  for (let iteration = 1; iteration <= MAX_ITERATIONS; iteration++) {
    const x = a + t * (b - a);
    const fx = f(x);
    if (!Number.isFinite(fx)) return failed(iteration, fx, `the balance is ${fx} on the way`);
    let [c, fc] = [a, fa];
    if (fx > 0 !== fa > 0) [c, fc, b, fb] = [b, fb, a, fa];
    [a, fa] = [x, fx];
    const [best, fBest] = Math.abs(fa) < Math.abs(fb) ? [a, fa] : [b, fb];
    const limit = (RELATIVE_WIDTH * Math.abs(best) + Number.MIN_VALUE) / Math.abs(b - a);
    if (fBest === 0 || !(limit < 0.5)) return found(best, fBest, iteration);
    t = Math.min(Math.max(nextFraction(a, b, c, fa, fb, fc), limit), 1 - limit);
  }
  return failed(MAX_ITERATIONS, fa, `the ends do not close after ${MAX_ITERATIONS} steps`);
}

/** Root of a rising f above `start` (> 0): doubles the upper end until f changes sign, then closes the bracket. */
export function risingRoot(f: (x: number) => number, start: number): Solved {
  let [low, high] = [0, start];
  for (let doubling = 0; doubling < MAX_DOUBLINGS; doubling++) {
    const value = f(high);
    if (Number.isNaN(value)) return failed(doubling, value, `the balance is ${value} on the way`);
    if (value >= 0) return bracketedRoot(f, low, high);
    [low, high] = [high, high * 2];
  }
  return failed(MAX_DOUBLINGS, f(high), 'the balance never changes its sign');
}

function nextFraction(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const xi = (a - b) / (c - b);
  const phi = (fa - fb) / (fc - fb);
  const interpolate = phi ** 2 < xi && (1 - phi) ** 2 < 1 - xi;
  if (!interpolate) return 0.5;
  return (fa / (fb - fa)) * (fc / (fb - fc)) + ((c - a) / (b - a)) * (fa / (fc - fa)) * (fb / (fc - fb));
}

const found = (value: number, residual: number, iterations: number): Solved => ({
  status: 'converged',
  value,
  iterations,
  residual: Math.abs(residual),
});

const failed = (iterations: number, residual: number, reason: string): NotConverged => ({
  status: 'not-converged',
  iterations,
  residual: Math.abs(residual),
  reason,
});
