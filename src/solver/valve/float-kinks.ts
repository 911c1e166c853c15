/**
 * Where the opening of a floating stack bends sharply: at the pressure that lifts the hub off its stop, and at the one that brings it to the
 * end of its travel. There the force of the shims on the hub, which rises nearly in a straight line with the pressure, comes up to its check
 * spring; each guess along that line is solved and replaces one end of the bracket.
 *
 * symbol  unit  meaning
 * F       N     force of the shims on the hub
 * s       N     check spring: preload + rate z, z the rise of the hub
 */
import type { ConvergedLift, FloatInput, LiftResult } from '../types.ts';
import { type StackSamples, withPressures } from './stack-samples.ts';

/** A kink is found when a point meets its force to this share of the most that the spring bears, and its rise to this share of the travel. */
const RELATIVE_FORCE = 1e-4;
const RELATIVE_RISE = 1e-3;
const MAX_SOLVES = 2;
/** Guesses keep this share of the bracket away from its ends. */
const MARGIN = 1e-3;

export interface FloatKinks {
  /** With a point at, or next to, each kink. */
  readonly samples: StackSamples;
  /** Rising; each is the pressure of a point [Pa]. */
  readonly kinks_Pa: readonly number[];
}

/** Adds the points that pin the kinks down: none without a float, and none for a kink beyond the samples. */
export function findFloatKinks(
  start: StackSamples,
  float: FloatInput | undefined,
  solve: (pressures_Pa: readonly number[]) => LiftResult,
): FloatKinks {
  if (!float) return { samples: start, kinks_Pa: [] };
  const leaves = kinkAt(start, float, { rise_m: 0, isBeyond: ({ hubRise_m }) => hubRise_m > 0 }, solve);
  const end: Kink = { rise_m: float.travel_m, isBeyond: ({ hubRise_m }) => hubRise_m >= float.travel_m };
  const arrives = kinkAt(leaves.samples, float, end, solve);
  const kinks = new Set([...leaves.kinks_Pa, ...arrives.kinks_Pa]);
  return { samples: arrives.samples, kinks_Pa: [...kinks].sort((p, q) => p - q) };
}

interface Kink {
  /** Of the hub, at the kink [m]. */
  readonly rise_m: number;
  readonly isBeyond: (point: ConvergedLift) => boolean;
}

/** Until a point is at the kink; else the last before it and the first beyond hold it between them. */
function kinkAt(
  start: StackSamples,
  { preload_N, rate_N_m, travel_m }: FloatInput,
  { rise_m, isBeyond }: Kink,
  solve: (pressures_Pa: readonly number[]) => LiftResult,
): FloatKinks {
  const spring_N = preload_N + rate_N_m * rise_m;
  const isAt = ({ clampForce_N, hubRise_m }: ConvergedLift) =>
    Math.abs(clampForce_N - spring_N) <= RELATIVE_FORCE * (preload_N + rate_N_m * travel_m) &&
    Math.abs(hubRise_m - rise_m) <= RELATIVE_RISE * travel_m;
  let samples = start;
  for (let solves = 0; ; solves++) {
    const bracket = bracketOf(samples, isBeyond);
    if (!bracket) return { samples, kinks_Pa: [] };
    const found = bracket.filter(isAt).slice(0, 1);
    const ends = found.length > 0 || solves === MAX_SOLVES;
    if (ends) return { samples, kinks_Pa: (found.length > 0 ? found : bracket).map(({ pressure_Pa }) => pressure_Pa) };
    samples = withPressures(samples, solve, [guess(bracket, spring_N)]);
  }
}

type Bracket = readonly [ConvergedLift, ConvergedLift];

function bracketOf({ points }: StackSamples, isBeyond: (point: ConvergedLift) => boolean): Bracket | undefined {
  const beyond = points.findIndex(isBeyond);
  return beyond < 1 ? undefined : [points[beyond - 1], points[beyond]];
}

/** The load on the shims goes with the pressure, and all that it gains goes to the hub where nothing else bears the shims. */
function guess([low, high]: Bracket, spring_N: number): number {
  const area = high.appliedForce_N / high.pressure_Pa;
  const margin = MARGIN * (high.pressure_Pa - low.pressure_Pa);
  const free = low.seatForce_N > 0 ? high : low;
  const straight = free.pressure_Pa + (spring_N - free.clampForce_N) / area;
  return Math.min(Math.max(straight, low.pressure_Pa + margin), high.pressure_Pa - margin);
}
