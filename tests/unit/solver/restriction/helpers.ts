import fc from 'fast-check';
import { expect } from 'vitest';
import type { Solved } from '../../../../src/solver/numeric/solved.ts';
import type { SpringLoaded } from '../../../../src/solver/restriction/spring-loaded.ts';
import type { FluidState, Restriction } from '../../../../src/solver/restriction/types.ts';

/** The thin damper oil of the worked numbers: 15 mm2/s at 860 kg/m3. */
export const OIL: FluidState = { density_kg_m3: 860, dynamicViscosity_Pa_s: 0.0129 };

export const value = (solved: Solved): number => {
  expect(solved.status).toBe('converged');
  return (solved as { value: number }).value;
};

export const relative = (got: number, wanted: number): number => Math.abs(got / wanted - 1);

export const roundHoles = (diameter_m: number, length_m: number, count = 1) => ({
  count,
  area_m2: (Math.PI * diameter_m ** 2) / 4,
  hydraulicDiameter_m: diameter_m,
  length_m,
});

/** Pressures and factors over the whole range of a damper, evenly in logarithm. */
export const logUniform = (low: number, high: number) =>
  fc.double({ min: Math.log(low), max: Math.log(high), noNaN: true }).map(Math.exp);

/** Laws of every restriction: nothing flows at no drop, flow rises with drop, and the two directions undo each other. */
export function expectRestrictionLaws(make: fc.Arbitrary<Restriction>): void {
  fc.assert(
    fc.property(make, logUniform(1, 3e7), logUniform(1.001, 10), (restriction, drop, factor) => {
      expect(value(restriction.flow(0))).toBe(0);
      expect(value(restriction.drop(0))).toBe(0);
      const flow = value(restriction.flow(drop));
      expect(flow).toBeGreaterThan(0);
      expect(value(restriction.flow(drop * factor))).toBeGreaterThan(flow);
      expect(relative(value(restriction.drop(flow)), drop)).toBeLessThan(1e-9);
    }),
  );
}

/** The same for what opens by itself: nothing flows up to its opening drop. The drop is never so near to it that digits are lost. */
export function expectLawsBeyondOpening(make: fc.Arbitrary<SpringLoaded>): void {
  fc.assert(
    fc.property(make, logUniform(1e-3, 100), logUniform(1.001, 10), (body, beyond, factor) => {
      const opening = body.openingDrop_Pa;
      expect(value(body.flow(opening))).toBe(0);
      expect(value(body.drop(0))).toBe(0);
      const drop = opening > 0 ? opening * (1 + beyond) : beyond * 1e5;
      const flow = value(body.flow(drop));
      expect(flow).toBeGreaterThan(0);
      expect(value(body.flow(drop * factor))).toBeGreaterThan(flow);
      expect(relative(value(body.drop(flow)), drop)).toBeLessThan(1e-8);
      expect(value(body.drop(flow * factor))).toBeGreaterThan(drop * (1 - 1e-9));
      expect(value(body.lift(flow * factor))).toBeGreaterThanOrEqual(value(body.lift(flow)));
    }),
  );
}
