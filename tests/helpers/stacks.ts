/** Stacks drawn at random from realistic sizes, and the gaps of a solved one read from its shape alone. */
import fc from 'fast-check';
import type { ConvergedLift, LiftPoint, ShimInput, StackInput } from '../../src/solver/types.ts';

const E_PA = 206e9;
const MM = 1e-3;

export const shim = (outerRadius_mm: number, thickness_mm: number, modulus_Pa = E_PA): ShimInput => ({
  outerRadius_m: outerRadius_mm * MM,
  thickness_m: thickness_mm * MM,
  youngsModulus_Pa: modulus_Pa,
  poissonsRatio: 0.3,
});

const halfMillimetres = (min: number, max: number) =>
  fc.integer({ min: 2 * min, max: 2 * max }).map((halves) => halves / 2);
const micrometres = (min: number, max: number) => fc.integer({ min, max }).map((length) => length * 1e-6);
const thickness_mm = fc.constantFrom(0.1, 0.15, 0.2, 0.25, 0.3);

/** A stack whose face shim covers the pressure zone; the others are of any size, so that crossovers and tapers occur. */
export const stacks: fc.Arbitrary<StackInput> = fc
  .record({
    clamp_mm: halfMillimetres(4, 7),
    faceSpan_mm: halfMillimetres(5, 12),
    faceThickness_mm: thickness_mm,
    others: fc.array(fc.record({ span_mm: halfMillimetres(1, 12), thickness_mm }), { maxLength: 6 }),
    zone: fc.tuple(fc.double({ min: 0.1, max: 0.5, noNaN: true }), fc.double({ min: 0.6, max: 0.95, noNaN: true })),
  })
  .map(({ clamp_mm, faceSpan_mm, faceThickness_mm, others, zone: [inner, outer] }) => ({
    clampRadius_m: clamp_mm * MM,
    shims: [
      shim(clamp_mm + faceSpan_mm, faceThickness_mm),
      ...others.map((other) => shim(clamp_mm + other.span_mm, other.thickness_mm)),
    ],
    pressureZone: {
      innerRadius_m: (clamp_mm + inner * faceSpan_mm) * MM,
      outerRadius_m: (clamp_mm + outer * faceSpan_mm) * MM,
    },
  }));

/**
 * The same with a seat under the edge of the face shim and a backing plate, each now and then. The plate stands over
 * the height of the seat: a shim cannot be in both at once.
 */
export const seatedStacks: fc.Arbitrary<StackInput> = fc
  .record({
    stack: stacks,
    height_m: fc.option(micrometres(-100, 200), { nil: undefined }),
    room_m: fc.option(micrometres(5, 150), { nil: undefined }),
  })
  .map(({ stack, height_m, room_m }) => {
    const inner = stack.pressureZone.outerRadius_m;
    const seat = { innerRadius_m: inner, outerRadius_m: (inner + stack.shims[0].outerRadius_m) / 2 };
    return {
      ...stack,
      ...(height_m !== undefined && { seat: { ...seat, height_m } }),
      ...(room_m !== undefined && { backingPlate: { gap_m: room_m + Math.max(0, height_m ?? 0) } }),
    };
  });

/** Pressure that lifts the face shim by about `lifts` of its thickness if it were alone [Pa]. */
export function pressureFor({ shims: [face], clampRadius_m: b }: StackInput, lifts: number): number {
  const a = face.outerRadius_m;
  const span = (1 - b / a) ** 3;
  return (lifts * face.youngsModulus_Pa * (face.thickness_m / a) ** 4) / (0.8 * span);
}

/** The point, when it converged. @throws Error with its status and reason when it did not */
export function converged(point: LiftPoint): ConvergedLift {
  if (point.status === 'converged') return point;
  throw new Error(`${point.status} at ${point.pressure_Pa} Pa: ${point.reason}`);
}

export interface Gap {
  readonly between: 'shims' | 'seat' | 'backing plate';
  readonly radius_m: number;
  readonly gap_m: number;
}

/**
 * Every gap of a solved stack of shims on one clamp. Two shims that follow one another at a radius stand apart by the
 * shorter shims between; so do the face shim and the seat, the last shim and the backing plate.
 */
export function gapsOf({ shims, seat, backingPlate }: StackInput, { shape }: ConvergedLift): Gap[] {
  const gaps: Gap[] = [];
  const { radius_m, lift_m } = shape;
  const between = (from: number, to: number) =>
    shims.slice(from, to).reduce((sum, { thickness_m }) => sum + thickness_m, 0);
  for (let node = 1; node < radius_m.length; node++) {
    const r = radius_m[node];
    const reaching = shims.map((_, s) => s).filter((s) => lift_m[s].length > node);
    if (reaching.length === 0) continue;
    const [first, last] = [reaching[0], reaching[reaching.length - 1]];
    for (let i = 1; i < reaching.length; i++) {
      const [below, above] = [reaching[i - 1], reaching[i]];
      const gap_m = between(below + 1, above) + lift_m[above][node] - lift_m[below][node];
      gaps.push({ between: 'shims', radius_m: r, gap_m });
    }
    const onLand = seat && r >= seat.innerRadius_m * (1 - 1e-9) && r <= seat.outerRadius_m * (1 + 1e-9);
    if (onLand) {
      gaps.push({ between: 'seat', radius_m: r, gap_m: between(0, first) + lift_m[first][node] - seat.height_m });
    }
    if (backingPlate) {
      const gap_m = backingPlate.gap_m + between(last + 1, shims.length) - lift_m[last][node];
      gaps.push({ between: 'backing plate', radius_m: r, gap_m });
    }
  }
  return gaps;
}
