/**
 * Root of one equation near a good guess by secant steps, the first with a slope that is given:
 *   x_1 = x_0 - s f_0,   x_n+1 = x_n - f_n (x_n - x_n-1)/(f_n - f_n-1)
 * Quick where f is smooth and the guess is near; it may fail anywhere else, or lead to another root than the one that is meant, so
 * the caller names the range that holds it and keeps a bracketed search behind it. Source: any text on numerical methods.
 *
 * symbol  unit        meaning
 * x, f    of x, of f  point and its value
 * s       of x / f    guess of dx/df
 */
import { exact, type Solved } from './solved.ts';

const MAX_STEPS = 8;

export interface RootGuess {
  readonly x: number;
  readonly slope: number;
}

/** Where the root that is meant lies: a function may have others outside, where it stands for nothing. */
export interface RootRange {
  readonly low: number;
  readonly high: number;
}

/** @returns a point of the range with |f| <= tolerance, or whatever `otherwise` finds when the steps leave it or do not lead to one */
export function secantRoot(
  f: (x: number) => number,
  guess: RootGuess,
  { low, high }: RootRange,
  tolerance: number,
  otherwise: () => Solved,
): Solved {
  let a = guess.x;
  let fa = f(a);
  let slope = guess.slope;
  for (let step = 0; step < MAX_STEPS; step++) {
    if (Math.abs(fa) <= tolerance) return exact(a);
    const x = a - slope * fa;
    if (!(x >= low && x <= high)) return otherwise();
    const fx = f(x);
    slope = (x - a) / (fx - fa);
    [a, fa] = [x, fx];
    if (!Number.isFinite(slope)) break;
  }
  return Math.abs(fa) <= tolerance ? exact(a) : otherwise();
}
