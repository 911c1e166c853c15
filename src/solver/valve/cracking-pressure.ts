/**
 * Pressure across the shims at which the face shim leaves its seat. The force on the seat falls to nothing there, nearly
 * in a straight line, so the next guess is the zero of the line through the last two seated points; where that lies outside the bracket,
 * because the line bends, the zero of the line through the first two open points, or else the middle. Each guess is solved and replaces
 * one end of the bracket. A shim that waves opens at its crests while its troughs still press, so its seat force tells nothing of where;
 * its opening does, and each guess stands a little to the side of the zero on which the bracket is wider, so that both ends close in.
 */
import type { ConvergedLift, LiftResult } from '../types.ts';
import { isClosed, type StackSamples, withPressures } from './stack-samples.ts';

/** Width of the bracket at which the search ends, relative to the pressure. */
const RELATIVE_WIDTH = 2e-3;
/** That of a waved shim, which opens by next to nothing at its crests first: what follows needs the points of the table more. */
const WAVED_WIDTH = 6e-3;
const MAX_SOLVES = 12;
/** Share of the preload left on the seat at which the search ends. */
const LAST_SHARE = 5e-3;
/** Guesses keep this share of the bracket away from its ends. */
const MARGIN = 1e-3;
/** The same of a waved shim, whose opening at its crests bends away from its line. */
const WAVED_MARGIN = 0.05;
/** A guess stands aside of the zero by this share of the width that ends the search. */
const ASIDE = 0.4;
/** Seat force [N] that a stack lying on its seat without preload may show from rounding. */
const NO_PRELOAD_N = 1e-6;

export interface Cracking {
  readonly samples: StackSamples;
  /** Opening is 0 up to here [Pa]; infinite when the stack stays on its seat over the whole table. */
  readonly pressure_Pa: number;
}

/** Adds the few points that pin the cracking pressure down. */
export function findCracking(start: StackSamples, solve: (pressures_Pa: readonly number[]) => LiftResult): Cracking {
  let samples = start;
  for (let solves = 0; solves < MAX_SOLVES; solves++) {
    const bracket = bracketOf(samples);
    if (!bracket || isNarrow(bracket, samples.points[0].seatForce_N)) break;
    samples = withPressures(samples, solve, [guess(samples, bracket)]);
  }
  const bracket = bracketOf(samples);
  return { samples, pressure_Pa: bracket ? crackingIn(samples, bracket) : withoutBracket(samples) };
}

/** The estimate, still below the first open point. */
function crackingIn(samples: StackSamples, bracket: Bracket): number {
  return Math.min(estimate(samples, bracket), bracket.high.pressure_Pa - marginOf(bracket));
}

interface Bracket {
  readonly low: ConvergedLift;
  readonly high: ConvergedLift;
}

/** Narrow enough in pressure, or so little seat force is left that the straight line hits the zero. */
function isNarrow({ low, high }: Bracket, preload_N: number): boolean {
  const width = high.pressure_Pa - low.pressure_Pa;
  if (isWaved({ low, high })) return width <= WAVED_WIDTH * high.pressure_Pa;
  return width <= RELATIVE_WIDTH * high.pressure_Pa || low.seatForce_N <= LAST_SHARE * preload_N;
}

/** Last seated and first open point, when the stack cracks between two of them and not at once. */
function bracketOf({ points }: StackSamples): Bracket | undefined {
  const open = points.findIndex((point) => !isClosed(point));
  if (open < 1 || cracksAtOnce(points[0], open)) return undefined;
  return { low: points[open - 1], high: points[open] };
}

const cracksAtOnce = (first: ConvergedLift, open: number): boolean => open === 1 && first.seatForce_N <= NO_PRELOAD_N;

const withoutBracket = ({ points }: StackSamples): number => (points.every(isClosed) ? Number.POSITIVE_INFINITY : 0);

/** A point to solve next: the estimate, kept off the ends of the bracket so that every solve narrows it. */
function guess(samples: StackSamples, bracket: Bracket): number {
  const [low, high] = [bracket.low.pressure_Pa, bracket.high.pressure_Pa];
  const margin = isWaved(bracket) ? WAVED_MARGIN * (high - low) : marginOf(bracket);
  const zero = estimate(samples, bracket);
  const aside = isWaved(bracket) ? ASIDE * WAVED_WIDTH * high : 0;
  return clamp(zero - low > high - zero ? zero - aside : zero + aside, low + margin, high - margin);
}

/** It opens at its crests while its troughs still press. */
const isWaved = ({ high }: Bracket): boolean => high.seatForce_N > NO_PRELOAD_N;

const marginOf = ({ low, high }: Bracket): number => MARGIN * (high.pressure_Pa - low.pressure_Pa);

/** Zero of the seat force, else of the opening, where it lies in the bracket; else its middle. */
function estimate({ points }: StackSamples, { low, high }: Bracket): number {
  const middle = (low.pressure_Pa + high.pressure_Pa) / 2;
  const before = points.at(points.indexOf(low) - 1);
  const falls = before && before.pressure_Pa < low.pressure_Pa && !isWaved({ low, high });
  const zeros = [
    falls ? zeroOfSeatForce(before, low) : Number.NaN,
    zeroOfOpening(high, points.at(points.indexOf(high) + 1)),
  ];
  return zeros.find((zero) => zero >= low.pressure_Pa && zero < high.pressure_Pa) ?? middle;
}

const clamp = (x: number, from: number, to: number): number => Math.min(Math.max(x, from), to);

function zeroOfSeatForce(a: ConvergedLift, b: ConvergedLift): number {
  return b.pressure_Pa + (b.seatForce_N * (b.pressure_Pa - a.pressure_Pa)) / (a.seatForce_N - b.seatForce_N);
}

function zeroOfOpening(first: ConvergedLift, second: ConvergedLift | undefined): number {
  if (!second) return Number.NaN;
  const slope = (second.seatOpening_m - first.seatOpening_m) / (second.pressure_Pa - first.pressure_Pa);
  return first.pressure_Pa - first.seatOpening_m / slope;
}
