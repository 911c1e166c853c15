/**
 * Opening of one stack at its seat against the pressure across its shims: a table of at most 16 lift solves, dense where
 * the opening bends, and a monotone cubic through it.
 *
 * First rising pressures until the wanted flow would pass; when one of them does not solve, steps halve towards it. Then the
 * kinks of a float and the cracking pressure. Then midpoints (in log p) where the cubic and the chord differ most.
 */

import type { StackTable } from '../damper/types.ts';
import { kinkedCurve } from '../numeric/kinked-curve.ts';
import type { Interpolant } from '../numeric/pchip.ts';
import type { ConvergedLift, FailureStatus, LiftResult, StackInput, Theory } from '../types.ts';
import { findCracking } from './cracking-pressure.ts';
import { findFloatKinks } from './float-kinks.ts';
import { pressureInWords } from './in-words.ts';
import { isClosed, type LiftSolver, noSamples, type StackSamples, withPressures } from './stack-samples.ts';

/** Pressures tried first, and how they go on [Pa]. */
const FIRST_PRESSURES = [0, 1e5, 3e5, 1e6];
const NEXT_PRESSURES = [3e6, 1e7, 3e7];
/** A failed pressure is approached by this many halvings (in log p). */
const MAX_APPROACHES = 3;
const MAX_POINTS = 16;
const MIN_OPEN_POINTS = 5;
/** Chord and cubic may differ by this share of the opening before a point is put between. */
const BEND_TOLERANCE = 0.005;
/** ... and openings below this share of the largest one need not be that exact. */
const NEGLIGIBLE_OPENING = 0.02;
/** Plates that bend by more than this share of their free width are no longer thin plates of moderate rotation. */
const LARGEST_LIFT_RATIO = 0.3;

/** Why the table ends where it does. */
export interface TableEnd {
  readonly status: 'reached' | 'beyond-table' | FailureStatus;
  readonly reason: string;
}

export interface OpeningTable {
  readonly table: StackTable;
  /** Opening [m] at a pressure across the shims [Pa], within the table. */
  readonly opening: Interpolant;
  readonly crackingPressure_Pa: number;
  /** Where the opening has a kink, because a float leaves its stop or comes to its end: rising, points of the table [Pa]. */
  readonly kinks_Pa: readonly number[];
  readonly end: TableEnd;
}

/**
 * @param enough  tells whether the flow that is wanted passes at this point
 * @returns a table that reaches the wanted flow, or ends before: at a failed solve, at 30 MPa, or at excessive lift
 */
export function openingTable(
  solveLift: LiftSolver,
  stack: StackInput,
  theory: Theory,
  enough: (point: ConvergedLift) => boolean,
): OpeningTable {
  const solve = (pressures: readonly number[]) => solveLift(stack, pressures, theory);
  const isEnd = (point: ConvergedLift) => enough(point) || isExcessive(stack, point);
  const scouted = upTo(approachFailure(scout(solve, isEnd), solve, isEnd), isEnd);
  const { samples: bent, kinks_Pa } = findFloatKinks(scouted, stack.float, solve);
  const cracking = findCracking(bent, solve);
  const curveOf = ({ points }: StackSamples) => openingCurve(points, cracking.pressure_Pa, kinks_Pa);
  const samples = fill(cracking.samples, curveOf, solve);
  const { points, failures } = samples;
  return {
    table: { theory, pressure_Pa: points.map(({ pressure_Pa }) => pressure_Pa), points, failures },
    opening: curveOf(samples).opening,
    crackingPressure_Pa: cracking.pressure_Pa,
    kinks_Pa,
    end: endOf(stack, samples, enough),
  };
}

function scout(solve: (p: readonly number[]) => LiftResult, isEnd: (point: ConvergedLift) => boolean): StackSamples {
  let samples = withPressures(noSamples, solve, FIRST_PRESSURES);
  for (const pressure of NEXT_PRESSURES) {
    if (samples.failures.length > 0 || samples.points.some(isEnd)) return samples;
    samples = withPressures(samples, solve, [pressure]);
  }
  return samples;
}

function approachFailure(
  start: StackSamples,
  solve: (p: readonly number[]) => LiftResult,
  isEnd: (point: ConvergedLift) => boolean,
): StackSamples {
  let samples = start;
  for (let approach = 0; approach < MAX_APPROACHES; approach++) {
    const { points, failures } = samples;
    if (failures.length === 0 || points.length === 0 || points.some(isEnd)) return samples;
    samples = withPressures(samples, solve, [between(points[points.length - 1].pressure_Pa, failures[0].pressure_Pa)]);
  }
  return samples;
}

/** Points beyond the first that ends the search would only spend solves on pressures nobody asked for. */
function upTo({ points, failures }: StackSamples, isEnd: (point: ConvergedLift) => boolean): StackSamples {
  const end = points.findIndex(isEnd);
  return end < 0 ? { points, failures } : { points: points.slice(0, end + 1), failures: [] };
}

function fill(
  start: StackSamples,
  curveOf: (samples: StackSamples) => OpeningCurve,
  solve: (p: readonly number[]) => LiftResult,
): StackSamples {
  let samples = start;
  while (samples.points.length < MAX_POINTS) {
    const next = nextPressures(curveOf(samples)).slice(0, MAX_POINTS - samples.points.length);
    if (next.length === 0) return samples;
    const before = samples.points.length;
    samples = withPressures(samples, solve, next);
    if (samples.points.length <= before) return samples;
  }
  return samples;
}

/** While open points are few: all midpoints. Later: the midpoints of the two intervals that bend most. */
function nextPressures({ knots: x, opening: curve }: OpeningCurve): number[] {
  const intervals = x.slice(1).map((high, i) => ({ low: x[i], high }));
  if (intervals.length === 0) return [];
  const middles = intervals.map(({ low, high }) => between(low, high));
  if (x.length - 1 < MIN_OPEN_POINTS) return middles;
  const bends = intervals.map((interval, i) => ({
    pressure: middles[i],
    bend: bendOf(curve, interval, curve(x[x.length - 1])),
  }));
  const worst = bends.filter(({ bend }) => bend > BEND_TOLERANCE).sort((a, b) => b.bend - a.bend);
  return worst.slice(0, 2).map(({ pressure }) => pressure);
}

/** Distance of the cubic from the chord, against the opening there; a tiny opening counts as some of the largest one. */
function bendOf(curve: Interpolant, { low, high }: { low: number; high: number }, largest: number): number {
  const chord = (curve(low) + curve(high)) / 2;
  return Math.abs(curve((low + high) / 2) - chord) / (chord + NEGLIGIBLE_OPENING * largest);
}

interface OpeningCurve {
  /** Pressures at which the curve is known: where it leaves the seat, and every open point. */
  readonly knots: readonly number[];
  readonly opening: Interpolant;
}

function openingCurve(points: readonly ConvergedLift[], cracking: number, kinks: readonly number[]): OpeningCurve {
  const open = points.filter((point) => !isClosed(point));
  const pressures = open.map(({ pressure_Pa }) => pressure_Pa);
  const openings = open.map(({ seatOpening_m }) => seatOpening_m);
  const atOnce = pressures[0] === 0 || !Number.isFinite(cracking);
  const knots = atOnce ? pressures : [cracking, ...pressures];
  if (open.length === 0) return { knots, opening: () => 0 };
  return { knots, opening: kinkedCurve(knots, atOnce ? openings : [0, ...openings], kinks) };
}

const between = (low: number, high: number): number => (low > 0 ? Math.sqrt(low * high) : high / 2);

/** A hub that rises on its float takes the face shim along without bending it. */
function isExcessive({ shims, clampRadius_m }: StackInput, { faceEdgeLift_m, hubRise_m }: ConvergedLift): boolean {
  return faceEdgeLift_m - hubRise_m > LARGEST_LIFT_RATIO * (shims[0].outerRadius_m - clampRadius_m);
}

function endOf(stack: StackInput, { points, failures }: StackSamples, enough: (p: ConvergedLift) => boolean): TableEnd {
  const last = points.at(-1);
  if (last && enough(last)) return { status: 'reached', reason: 'the wanted flow passes' };
  const failure = failures.at(0);
  if (failure) {
    const { status, pressure_Pa, reason } = failure;
    return {
      status,
      reason: `the stack did not solve at ${pressureInWords(pressure_Pa)} across its shims: ${reason}`,
    };
  }
  const at = `${pressureInWords(last?.pressure_Pa ?? 0)} across the shims`;
  const lifts = last !== undefined && isExcessive(stack, last);
  const why = lifts
    ? `the face shim lifts by more than ${LARGEST_LIFT_RATIO} of its free width`
    : 'the flow still does not pass';
  return { status: 'beyond-table', reason: `${why} at ${at}` };
}
