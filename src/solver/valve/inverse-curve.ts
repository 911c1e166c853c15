/**
 * Inverse of a quantity that rises with a parameter and is sampled along it: y(x) = wanted for x. A monotone cubic through the
 * samples, taken the other way round, gives a guess so near that a few secant steps on y itself end at rounding; the samples on
 * both sides hold the root for a bracketed search where they do not.
 *
 * symbol  unit     meaning
 * x, y    of x, y  parameter and quantity
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { pchip } from '../numeric/pchip.ts';
import { secantRoot } from '../numeric/secant-root.ts';
import { exact, type Solved } from '../numeric/solved.ts';

/** Left over of y at the root, relative to what is wanted. */
const TOLERANCE = 1e-13;
/** Relative step over which the slope of the guess is taken. */
const STEP = 1e-3;

/** The parameter of a value from 0 up to the last sample. */
export type InverseCurve = (wanted: number) => Solved;

/**
 * @param x  strictly rising, length n >= 1
 * @param y  the quantity there, from 0: it may stay at 0 over some samples, then rises strictly
 * @param quantity  y at any x
 */
export function inverseCurve(
  x: readonly number[],
  y: readonly number[],
  quantity: (x: number) => number,
): InverseCurve {
  const start = y.lastIndexOf(0);
  const [from, values] = [x.slice(start), y.slice(start)];
  const guessAt = pchip(values, from);
  return (wanted) => {
    if (wanted === 0) return exact(x[0]);
    const guess = guessAt(wanted);
    const slope = (guess - guessAt(wanted * (1 - STEP))) / (wanted * STEP);
    const excess = (at: number) => quantity(at) - wanted;
    const above = Math.max(
      values.findIndex((value) => value >= wanted),
      1,
    );
    const range = { low: from[above - 1], high: from[above] };
    return secantRoot(excess, { x: guess, slope }, range, TOLERANCE * wanted, () =>
      bracketedRoot(excess, range.low, range.high),
    );
  };
}
