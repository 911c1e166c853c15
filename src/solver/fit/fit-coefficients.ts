/**
 * What a fit may change in a damper: the coefficients of the hydraulics, and what is measured or assumed of its parts too roughly to
 * be believed more than the force. Each has its physical value, a range that it is known to, bounds that it cannot leave, and a source.
 */

import type { BleedInput, DamperInput, ValveInput } from '../damper/types.ts';
import {
  COEFFICIENT_TABLE,
  type CoefficientName,
  type Coefficients,
  DEFAULT_COEFFICIENTS,
} from '../restriction/coefficients.ts';

export interface FitEntry {
  readonly physical: number;
  /** What it is known to: half its width counts as one standard deviation of what is known before. */
  readonly low: number;
  readonly high: number;
  /** What it cannot leave. */
  readonly least: number;
  readonly most: number;
  readonly unit: string;
  readonly meaning: string;
  readonly source: string;
}

const ofTable = (name: CoefficientName, least: number, most: number): FitEntry => {
  const { value, low, high, unit, meaning, source } = COEFFICIENT_TABLE[name];
  return { physical: value, low, high, least, most, unit, meaning, source };
};

const seatShift = (which: string): FitEntry => ({
  physical: 0,
  low: -3e-5,
  high: 3e-5,
  least: -2e-4,
  most: 2e-4,
  unit: 'm',
  meaning: `height of the ${which} seat over the hub plane beyond what is entered, which preloads the face shim`,
  source: 'a depth gauge tells a seat to 0.02 or 0.03 mm (common practice, from memory)',
});

const TABLE = {
  jetDischarge: ofTable('jetDischarge', 0.3, 1),
  sharpEdgeDischarge: ofTable('sharpEdgeDischarge', 0.4, 1),
  longOrificeFactor: ofTable('longOrificeFactor', 0.6, 1.2),
  portMomentum: ofTable('portMomentum', 0, 1),
  bleedAreaFactor: {
    physical: 1,
    low: 0.9,
    high: 1.1,
    least: 0.2,
    most: 3,
    unit: '-',
    meaning: 'factor on the area of the bleeds',
    source: 'a small drill is out by up to 5 % of its diameter, so 10 % of its area (common practice, from memory)',
  },
  viscosityFactor: {
    physical: 1,
    low: 0.8,
    high: 1.2,
    least: 0.25,
    most: 4,
    unit: '-',
    meaning: 'factor on the viscosity of the oil',
    source:
      'a lot within 10 % of its grade (ISO 3448) and 3 K of unknown temperature, thinner after use (own estimate)',
  },
  frictionFactor: {
    physical: 1,
    low: 0.5,
    high: 1.5,
    least: 0,
    most: 8,
    unit: '-',
    meaning: 'factor on the friction of seals and guides',
    source: 'seal friction differs by half between parts of one drawing (common practice, from memory)',
  },
  forceOffset_N: {
    physical: 0,
    low: -20,
    high: 20,
    least: -1000,
    most: 1000,
    unit: 'N',
    meaning: 'force that the load cell tells at no load, or that the gas is off by',
    source: 'load cells of test benches are set to zero within some 10 N (common practice, from memory)',
  },
  compressionSeatShift_m: seatShift('compression'),
  reboundSeatShift_m: seatShift('rebound'),
  baseSeatShift_m: seatShift('base valve'),
};
export type FitName = keyof typeof TABLE;
export type FitValues = Readonly<Partial<Record<FitName, number>>>;

export const FIT_TABLE: Readonly<Record<FitName, FitEntry>> = TABLE;
export const FIT_NAMES = Object.keys(TABLE) as FitName[];

/** Those that a damper can have an answer to. */
export function fitNamesOf({ bleed, base, friction }: DamperInput): FitName[] {
  const hasBleed = bleed.count > 0 || (base?.bleed?.count ?? 0) > 0;
  const left: Readonly<Partial<Record<FitName, boolean>>> = {
    bleedAreaFactor: hasBleed,
    baseSeatShift_m: base !== undefined,
    frictionFactor: friction.sliding_N > 0 || friction.breakaway_N > 0 || friction.viscous_N_s_m > 0,
  };
  return FIT_NAMES.filter((name) => left[name] ?? true);
}

/** A fit changes these unless told otherwise: the seats move the stacks themselves, which takes many times as long. */
export const usualFitNames = (damper: DamperInput): FitName[] =>
  fitNamesOf(damper).filter((name) => !name.endsWith('SeatShift_m'));

export const fitValueOf = (values: FitValues, name: FitName): number => values[name] ?? FIT_TABLE[name].physical;

/** The coefficients of the hydraulics among them. */
export const coefficientsWith = (values: FitValues): Coefficients => ({
  ...DEFAULT_COEFFICIENTS,
  jetDischarge: fitValueOf(values, 'jetDischarge'),
  sharpEdgeDischarge: fitValueOf(values, 'sharpEdgeDischarge'),
  longOrificeFactor: fitValueOf(values, 'longOrificeFactor'),
  portMomentum: fitValueOf(values, 'portMomentum'),
});

/** The area of a hole goes with the square of its diameter. */
const withArea = (bleed: BleedInput, factor: number): BleedInput => ({
  ...bleed,
  diameter_m: bleed.diameter_m * Math.sqrt(factor),
});

function withSeat(valve: ValveInput, shift_m: number): ValveInput {
  if (shift_m === 0) return valve;
  const { seat } = valve.stack;
  return { ...valve, stack: { ...valve.stack, seat: { ...seat, height_m: seat.height_m + shift_m } } };
}

/** The damper with everything of the values that is no coefficient of the hydraulics and no offset. */
export function damperWith(damper: DamperInput, values: FitValues): DamperInput {
  const of = (name: FitName): number => fitValueOf(values, name);
  const { fluid, friction, base } = damper;
  const bleedFactor = of('bleedAreaFactor');
  const rub = of('frictionFactor');
  return {
    ...damper,
    bleed: withArea(damper.bleed, bleedFactor),
    fluid: { ...fluid, dynamicViscosity_Pa_s: fluid.dynamicViscosity_Pa_s * of('viscosityFactor') },
    friction: {
      ...friction,
      sliding_N: friction.sliding_N * rub,
      breakaway_N: friction.breakaway_N * rub,
      viscous_N_s_m: friction.viscous_N_s_m * rub,
    },
    compression: withSeat(damper.compression, of('compressionSeatShift_m')),
    rebound: withSeat(damper.rebound, of('reboundSeatShift_m')),
    ...(base && {
      base: {
        ...base,
        compression: withSeat(base.compression, of('baseSeatShift_m')),
        ...(base.bleed && { bleed: withArea(base.bleed, bleedFactor) }),
      },
    }),
  };
}
