/**
 * Pressure at which the axisymmetric state of a stack stops being stable against waves round the circle.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | μ | - | margin of waviness at p, see stack-waviness.ts; the onset is its first fall to 0 |
 *
 * A ladder of pressures, each twice the one before, brackets the onset, and a root finder closes the bracket. A stack
 * that ruffles and calms down again between two rungs is not noticed.
 */
import { bracketedRoot } from '../../numeric/bracketed-root.ts';
import type { ConvergedLift, FailedLift, LandPressure, LiftPoint, StackInput, Waviness } from '../../types.ts';
import { solveLift } from '../solve-lift.ts';

/** Rungs of the ladder up to the greatest pressure. */
const RUNGS = 8;
/** A margin this near to 0 is the onset. */
const ONSET_MARGIN = 1e-6;

export interface OnsetOptions {
  readonly landPressure?: LandPressure;
  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
}

export type WavinessOnset =
  | {
      readonly status: 'found';
      readonly pressure_Pa: number;
      readonly waves: number;
      readonly faceEdgeLift_m: number;
      /** Lift of the face shim's rim over the thickness of that one shim [-]. */
      readonly liftOverThickness: number;
    }
  /** No onset up to the greatest pressure asked for. */
  | { readonly status: 'stable'; readonly margin: number }
  | FailedLift;

/**
 * @param greatestPressure_Pa pressure up to which the onset is sought, > 0 [Pa]
 * @returns the onset to a margin of 1e-6; 'stable' with the margin at the greatest pressure; or the first failed solve
 * @throws InputError `stack.*`, `pressure.*` as solveLift
 */
export function findWavinessOnset(
  stack: StackInput,
  greatestPressure_Pa: number,
  options: OnsetOptions = {},
): WavinessOnset {
  const solve = (pressures_Pa: readonly number[]): readonly LiftPoint[] =>
    solveLift(stack, pressures_Pa, { ...options, theory: 'large-deflection', waviness: true }).points;
  const rungs = Array.from({ length: RUNGS }, (_, i) => (i === 0 ? 0 : greatestPressure_Pa / 2 ** (RUNGS - 1 - i)));
  const ladder = solve(rungs);
  const end = ladder.findIndex((point) => point.status !== 'converged' || wavinessOf(point).margin <= 0);
  if (end === -1) return { status: 'stable', margin: wavinessOf(ladder[RUNGS - 1] as ConvergedLift).margin };
  let last = ladder[end];
  if (last.status !== 'converged') return last;
  if (end === 0) return onsetAt(stack, last);
  const margin = (p: number): number => {
    last = solve([p])[0];
    if (last.status !== 'converged') return Number.NaN;
    const { margin: value } = wavinessOf(last);
    return Math.abs(value) <= ONSET_MARGIN ? 0 : value;
  };
  const root = bracketedRoot(margin, rungs[end - 1], rungs[end]);
  if (last.status !== 'converged') return last;
  if (root.status !== 'converged') {
    return { ...root, pressure_Pa: last.pressure_Pa };
  }
  const [point] = solve([root.value]);
  return point.status === 'converged' ? onsetAt(stack, point) : point;
}

function onsetAt({ shims }: StackInput, point: ConvergedLift): WavinessOnset {
  const { pressure_Pa, faceEdgeLift_m } = point;
  const { waves } = wavinessOf(point);
  const liftOverThickness = faceEdgeLift_m / shims[0].thickness_m;
  return { status: 'found', pressure_Pa, waves, faceEdgeLift_m, liftOverThickness };
}

function wavinessOf(point: ConvergedLift): Waviness {
  if (!point.waviness) throw new Error('waviness was asked for');
  return point.waviness;
}
