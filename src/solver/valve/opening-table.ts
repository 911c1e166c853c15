/**
 * Opening of one stack at its seat against the pressure across its shims: a table of lift solves, dense where the opening needs it, and
 * monotone cubics through it.
 *
 * First rising pressures until the wanted flow would pass, and between the last two of them for where it begins to; when one of them does
 * not solve, steps halve towards it. Then the kinks of a float and the cracking pressure. Then what the curve needs (refine-samples.ts).
 */

import type { StackTable } from '../damper/types.ts';
import { pressureInWords } from '../in-words.ts';
import type { Interpolant } from '../numeric/pchip.ts';
import type { ConvergedLift, FailureStatus, LiftResult, StackInput, Theory } from '../types.ts';
import { findCracking } from './cracking-pressure.ts';
import { findFloatKinks } from './float-kinks.ts';
import { between, openingCurve, refineSamples } from './refine-samples.ts';
import { type LiftSolver, noSamples, type StackSamples, withPressures } from './stack-samples.ts';

/** Pressures tried first, and how they go on [Pa]. */
const FIRST_PRESSURES = [0, 1e5, 3e5, 1e6];
const NEXT_PRESSURES = [3e6, 1e7, 3e7];
/** A failed pressure, and the least that passes the wanted flow, are approached by this many halvings (in log p). */
const MAX_APPROACHES = 3;
const END_HALVINGS = 2;
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
  const scouted = approachEnd(upTo(approachFailure(scout(solve, isEnd), solve, isEnd), isEnd), solve, isEnd);
  const { samples: bent, kinks_Pa } = findFloatKinks(scouted, stack.float, solve);
  const cracking = findCracking(bent, solve);
  const bends = { crackingPressure_Pa: cracking.pressure_Pa, kinks_Pa };
  const samples = refineSamples(cracking.samples, bends, solve, theory);
  const { points, failures } = samples;
  return {
    table: { theory, pressure_Pa: points.map(({ pressure_Pa }) => pressure_Pa), points, failures },
    opening: openingCurve(points, bends),
    ...bends,
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

/** Nobody asks for what lies far beyond the end. */
function approachEnd(
  start: StackSamples,
  solve: (p: readonly number[]) => LiftResult,
  isEnd: (point: ConvergedLift) => boolean,
): StackSamples {
  let samples = start;
  for (let halving = 0; halving < END_HALVINGS; halving++) {
    const [low, high] = samples.points.slice(-2);
    if (!high || !isEnd(high) || low.pressure_Pa === 0) return samples;
    samples = upTo(withPressures(samples, solve, [between(low.pressure_Pa, high.pressure_Pa)]), isEnd);
  }
  return samples;
}

/** Points beyond the first that ends the search would only spend solves on pressures nobody asked for. */
function upTo({ points, failures }: StackSamples, isEnd: (point: ConvergedLift) => boolean): StackSamples {
  const end = points.findIndex(isEnd);
  return end < 0 ? { points, failures } : { points: points.slice(0, end + 1), failures: [] };
}

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
