/**
 * Points of an opening table where its curve needs them. How far the curve through all other points is off at one of them tells how
 * far it may be off beside it: where that is more than the tolerance, the intervals on both sides are halved. So a kink that nothing else
 * tells of (a second stage that is reached, waves that begin) is closed in from both sides until it hides no more. Stacks that wave
 * have kinks so near to each other that one interval may hide two, which tell of themselves on neither side: there none rises by more
 * than a share of the largest opening, nor to more than twice its pressure.
 *
 * symbol  unit  meaning
 * p       Pa    mean pressure on the pressure zone
 * h       m     opening
 */
import { kinkedCurve } from '../numeric/kinked-curve.ts';
import type { Interpolant } from '../numeric/pchip.ts';
import type { ConvergedLift, LiftResult, Theory } from '../types.ts';
import { isClosed, type StackSamples, withPressures } from './stack-samples.ts';

const MAX_POINTS = 28;
const MIN_OPEN_POINTS = 5;
/** Error, as a share of the pressure that drives a flow, at which an interval is left as it is [-]. */
const TOLERANCE = 0.002;
/** Openings below this share of the largest one need not be that exact. */
const NEGLIGIBLE_OPENING = 0.02;
/** Error in an interval, as a share of the one that its ends would have without them: a smooth curve has less, a kink more. */
const LEFT_BESIDE = 0.35;
/** Of the largest opening, between two points of a stack that may wave, and of the pressure [-]. */
const GREATEST_RISE = 0.2;
const GREATEST_RATIO = 2;

type Solve = (pressures_Pa: readonly number[]) => LiftResult;

/** Where the opening is known to bend sharply [Pa]. */
export interface Bends {
  /** 0 below it; infinite when the stack stays on its seat. */
  readonly crackingPressure_Pa: number;
  /** Rising; the ends of a float. */
  readonly kinks_Pa: readonly number[];
}

export function refineSamples(start: StackSamples, bends: Bends, solve: Solve, theory: Theory): StackSamples {
  const mayWave = theory === 'port-periodic';
  let samples = start;
  while (samples.points.length < MAX_POINTS) {
    const next = nextPressures(samples, bends, mayWave).slice(0, MAX_POINTS - samples.points.length);
    const before = samples.points.length;
    if (next.length > 0) samples = withPressures(samples, solve, next);
    if (samples.points.length <= before) return samples;
  }
  return samples;
}

/** While open points are few: all midpoints. Later: those of the two intervals with the largest error, or else of those that rise too far. */
function nextPressures({ points }: StackSamples, bends: Bends, mayWave: boolean): number[] {
  const { p, h } = knotsOf(points, bends);
  const middles = p.slice(1).map((high, i) => between(p[i], high));
  if (middles.length < MIN_OPEN_POINTS) return middles;
  const errors = errorsWithout(p, h, bends.kinks_Pa);
  const wrong = middles
    .map((middle, i) => ({ middle, error: LEFT_BESIDE * Math.max(errors[i], errors[i + 1]) }))
    .filter(({ error }) => error > TOLERANCE)
    .sort((a, b) => b.error - a.error)
    .slice(0, 2)
    .map(({ middle }) => middle);
  if (wrong.length > 0 || !mayWave) return wrong;
  const largest = h[h.length - 1];
  const isWide = (i: number): boolean =>
    h[i + 1] - h[i] > GREATEST_RISE * largest ||
    (p[i + 1] > GREATEST_RATIO * p[i] && h[i + 1] > NEGLIGIBLE_OPENING * largest);
  return middles.filter((_, i) => isWide(i));
}

/**
 * Share of the pressure by which a flow would be off at each knot on the curve through all others: a jet goes with h √p. 0 at ends and
 * known kinks, which nothing tells of.
 */
function errorsWithout(p: readonly number[], h: readonly number[], kinks_Pa: readonly number[]): number[] {
  const largest = h[h.length - 1];
  return p.map((at, i) => {
    if (i === 0 || i === p.length - 1 || kinks_Pa.includes(at)) return 0;
    const opening = h[i] + NEGLIGIBLE_OPENING * largest;
    const e = Math.abs(kinkedCurve(p.toSpliced(i, 1), h.toSpliced(i, 1), kinks_Pa)(at) - h[i]) / opening;
    const slope = (h[i + 1] - h[i - 1]) / (p[i + 1] - p[i - 1]);
    return e / (0.5 + Math.max(0, slope) * (at / opening));
  });
}

/** Where the curve is known: where it leaves the seat, and every open point. */
function knotsOf(
  points: readonly ConvergedLift[],
  { crackingPressure_Pa: cracking_Pa }: Bends,
): { p: number[]; h: number[] } {
  const open = points.filter((point) => !isClosed(point));
  const p = open.map(({ pressure_Pa }) => pressure_Pa);
  const h = open.map(({ seatOpening_m }) => seatOpening_m);
  return p[0] === 0 || !Number.isFinite(cracking_Pa) ? { p, h } : { p: [cracking_Pa, ...p], h: [0, ...h] };
}

export function openingCurve(points: readonly ConvergedLift[], bends: Bends): Interpolant {
  if (points.every(isClosed)) return () => 0;
  const { p, h } = knotsOf(points, bends);
  return kinkedCurve(p, h, bends.kinks_Pa);
}

export const between = (low: number, high: number): number => (low > 0 ? Math.sqrt(low * high) : high / 2);
