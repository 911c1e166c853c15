/** Stacks drawn at random with everything a stack may hold: from sizes of the trade, and from sizes nobody would fit. */
import fc from 'fast-check';
import type { ShimInput, StackInput } from '../../src/solver/types.ts';

const MM = 1e-3;
/** Evenly spread, unlike `fc.double`, which favours odd numbers: what is drawn is counted here. */
const share = fc.integer({ min: 0, max: 10_000 }).map((n) => n / 10_000);
const between = (min: number, max: number) => share.map((s) => min + (max - min) * s);
/** `value` in so many of a hundred cases. */
const sometimes = <T>(percent: number, value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> =>
  fc.oneof({ weight: percent, arbitrary: value }, { weight: 100 - percent, arbitrary: fc.constant(undefined) });

interface Ranges {
  readonly clamp_mm: fc.Arbitrary<number>;
  readonly span_mm: fc.Arbitrary<number>;
  readonly mostShims: number;
  /** Rim of a shim, as a share of the way from clamp to the rim of the face shim. */
  readonly rimShare: fc.Arbitrary<number>;
  readonly thickness_mm: fc.Arbitrary<number>;
  readonly modulus_Pa: fc.Arbitrary<number>;
  readonly poissonsRatio: fc.Arbitrary<number>;
  /** Dish per radial length of the shim. */
  readonly cone: fc.Arbitrary<number>;
  readonly greatestPressure_Pa: number;
}

const REALISTIC: Ranges = {
  clamp_mm: between(4, 8),
  span_mm: between(5, 12),
  mostShims: 14,
  rimShare: between(3, 20).map((twentieths) => Math.round(twentieths) / 20),
  thickness_mm: fc.constantFrom(0.1, 0.15, 0.2, 0.25, 0.3),
  modulus_Pa: fc.constant(206e9),
  poissonsRatio: fc.constant(0.3),
  cone: between(-0.0125, 0.0125),
  greatestPressure_Pa: 3e6,
};

const ABSURD: Ranges = {
  clamp_mm: between(1, 10),
  span_mm: between(0.5, 40),
  mostShims: 25,
  rimShare: between(0.02, 1),
  thickness_mm: between(-2, 0.3).map((power) => 10 ** power),
  modulus_Pa: fc.constantFrom(206e9, 206e9, 70e9),
  poissonsRatio: fc.constantFrom(0.3, 0.3, 0.3, 0.35),
  cone: between(-0.0375, 0.0375),
  greatestPressure_Pa: 1e7,
};

/** Everything in it is a share of what there is room for; sizes follow from the clamp and the span. */
const shapesOf = (ranges: Ranges) =>
  fc.record({
    clamp_mm: ranges.clamp_mm,
    span_mm: ranges.span_mm,
    shims: fc.array(shimShape(ranges), { minLength: 1, maxLength: ranges.mostShims }),
    upsideDown: share.map((s) => s < 0.1),
    zone: fc.tuple(between(0.1, 0.4), between(0.6, 0.95)),
    seat_mm: sometimes(70, fc.oneof(fc.constant(0), between(-0.05, 0.2))),
    backing: sometimes(40, fc.record({ gap_mm: between(0, 0.6), edge: sometimes(50, between(0.1, 1)) })),
    float: sometimes(10, fc.record({ rate_N_m: between(1e3, 2e4), preload_N: between(0, 20) })),
    coil: sometimes(10, fc.record({ at: between(0.2, 1), rate_N_m: between(5e3, 1e5), preload_N: between(0, 60) })),
  });

const shimShape = (ranges: Ranges) =>
  fc.record({
    asBefore: share.map((s) => s < 0.4),
    rimShare: ranges.rimShare,
    thickness_mm: ranges.thickness_mm,
    modulus_Pa: ranges.modulus_Pa,
    poissonsRatio: ranges.poissonsRatio,
    bore: sometimes(8, between(0.2, 0.8)),
    cone: sometimes(10, ranges.cone),
  });

type Shape = ReturnType<typeof shapesOf> extends fc.Arbitrary<infer T> ? T : never;

function shimsOf({ clamp_mm, span_mm, shims, upsideDown }: Shape): ShimInput[] {
  let rim_mm = clamp_mm + span_mm;
  const rows = shims.map((shape, i): ShimInput => {
    if (i > 0 && !shape.asBefore) rim_mm = clamp_mm + shape.rimShare * span_mm;
    const bore = i > 0 ? shape.bore : undefined;
    const { thickness_mm, modulus_Pa, poissonsRatio, cone } = shape;
    const width_mm = rim_mm - clamp_mm;
    const size = {
      outerRadius_m: rim_mm * MM,
      thickness_m: thickness_mm * MM,
      youngsModulus_Pa: modulus_Pa,
      poissonsRatio,
    };
    if (bore !== undefined) return { ...size, innerRadius_m: (clamp_mm + bore * width_mm) * MM };
    return cone === undefined ? size : { ...size, dish_m: cone * width_mm * MM };
  });
  return upsideDown ? rows.reverse() : rows;
}

function stackFrom(shape: Shape): StackInput {
  const { clamp_mm, span_mm, zone, seat_mm, backing, float, coil } = shape;
  const shims = shimsOf(shape);
  const rim_mm = clamp_mm + span_mm;
  const at = (part: number) => (clamp_mm + part * span_mm) * MM;
  const land = { innerRadius_m: at(zone[1]), outerRadius_m: Math.min(rim_mm * MM, at(zone[1]) + 0.5 * MM) };
  const last = shims[shims.length - 1];
  const inner = Math.max(last.innerRadius_m ?? 0, clamp_mm * MM);
  const coilRadius = coil && inner + coil.at * (last.outerRadius_m - inner);
  return {
    clampRadius_m: clamp_mm * MM,
    shims,
    pressureZone: { innerRadius_m: at(zone[0]), outerRadius_m: at(zone[1]) },
    ...(seat_mm !== undefined && { seat: { ...land, height_m: seat_mm * MM } }),
    ...(backing && {
      backingPlate: {
        gap_m: backing.gap_mm * MM,
        ...(backing.edge !== undefined && { outerRadius_m: at(backing.edge) }),
      },
    }),
    ...(float && { float: { ...float, travel_m: 0.3 * MM } }),
    ...(coil && coilRadius && !float && { coilSpring: { ...coil, radius_m: coilRadius } }),
  };
}

export interface RandomStack {
  readonly stack: StackInput;
  readonly pressures_Pa: readonly number[];
}

const randomStacks = (ranges: Ranges): fc.Arbitrary<RandomStack> =>
  shapesOf(ranges).map((shape) => ({
    stack: stackFrom(shape),
    // From a thousandth of the greatest up, each four times the one before.
    pressures_Pa: Array.from({ length: 6 }, (_, i) => ranges.greatestPressure_Pa * 10 ** (-3 + (3 * i) / 5)),
  }));

export const realisticStacks = randomStacks(REALISTIC);
export const absurdStacks = randomStacks(ABSURD);
