/**
 * How much firmer a build is than the baseline at one speed: above 0 where it resists the motion more, in either direction.
 *   difference = R - R0          share = (R - R0) / R0
 * R and R0 are what build and baseline resist with. A share wants a baseline that has a force to speak of: it is left out
 * where R0 is next to nothing beside its own largest, and where its parts (the gas pushes one way, the oil the other) cancel
 * to a small rest. Both limits are choices of ours: they hold what a change of some newtons can do to a share.
 */
import type { Direction } from '../app/places.ts';
import type { FailedForce, ForceCurve, ForcePoint } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { resistance } from './shown-force.ts';

/** Of the largest resistance of the baseline in that direction; less counts as none [-]. */
const LEAST_OF_LARGEST = 0.01;
/** Of what the parts of the force come to without their signs; less counts as cancelled [-]. */
const LEAST_OF_PARTS = 0.1;

/** What the force of a build is measured from. */
export interface Comparison {
  readonly as: 'difference' | 'share';
  readonly baseline: ForceCurve;
}

/** The largest resistance of a curve in one direction; 0 where it resists at no speed [N]. */
export const largestResistance = (curve: ForceCurve, direction: Direction, withoutGas: boolean): number =>
  Math.max(0, ...pointsOf(curve, direction).map((point) => (isSolved(point) ? resistance(point, withoutGas) : 0)));

function sizeOfParts(point: ForcePoint, withoutGas: boolean): number {
  const { dampingForce_N, frictionForce_N, stopForce_N, gasForce_N } = point;
  const parts = [dampingForce_N, frictionForce_N, stopForce_N, withoutGas ? 0 : gasForce_N];
  return parts.reduce((sum, part) => sum + Math.abs(part), 0);
}

/** Whether a share of this resistance of the baseline means anything. */
function hasShare(baseline: ForcePoint, largest_N: number, withoutGas: boolean): boolean {
  const least_N = Math.max(LEAST_OF_LARGEST * largest_N, LEAST_OF_PARTS * sizeOfParts(baseline, withoutGas));
  const own_N = resistance(baseline, withoutGas);
  return own_N > 0 && own_N >= least_N;
}

export const differenceOf = (point: ForcePoint, baseline: ForcePoint, withoutGas: boolean): number =>
  resistance(point, withoutGas) - resistance(baseline, withoutGas);

/** @param largest_N of the baseline in that direction. @returns undefined where a share would mean nothing */
export function shareOf(
  point: ForcePoint,
  baseline: ForcePoint,
  largest_N: number,
  withoutGas: boolean,
): number | undefined {
  if (!hasShare(baseline, largest_N, withoutGas)) return undefined;
  return differenceOf(point, baseline, withoutGas) / resistance(baseline, withoutGas);
}

type Read = (point: ForcePoint) => number | undefined;

/** Reads the points of one direction against the baseline at the very speed of each; nothing where that did not solve. */
export function comparedWith({ as, baseline }: Comparison, direction: Direction, withoutGas: boolean): Read {
  const points = new Map(pointsOf(baseline, direction).map((point) => [point.shaftSpeed_m_s, point]));
  const largest_N = largestResistance(baseline, direction, withoutGas);
  return (point) => {
    const other = points.get(point.shaftSpeed_m_s);
    if (!other || !isSolved(other)) return undefined;
    return as === 'share' ? shareOf(point, other, largest_N, withoutGas) : differenceOf(point, other, withoutGas);
  };
}

export interface Span {
  readonly from_m_s: number;
  readonly to_m_s: number;
}

/** Runs of neighbouring speeds, without sign, at which the baseline solved and a share of it would mean nothing. */
export function speedsWithoutShare(baseline: ForceCurve, direction: Direction, withoutGas: boolean): Span[] {
  const largest_N = largestResistance(baseline, direction, withoutGas);
  const lacks = (point: ForcePoint | FailedForce): boolean =>
    isSolved(point) && !hasShare(point, largest_N, withoutGas);
  const spans: Span[] = [];
  let open = false;
  for (const point of pointsOf(baseline, direction)) {
    const speed_m_s = Math.abs(point.shaftSpeed_m_s);
    if (!lacks(point)) open = false;
    else if (open) spans.push({ ...(spans.pop() as Span), to_m_s: speed_m_s });
    else {
      spans.push({ from_m_s: speed_m_s, to_m_s: speed_m_s });
      open = true;
    }
  }
  return spans;
}
