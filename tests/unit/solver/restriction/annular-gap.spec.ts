import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AnnularGap, annularGap, wallDrivenArea } from '../../../../src/solver/restriction/annular-gap.ts';
import { frictionFactor } from '../../../../src/solver/restriction/passage-friction.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, value } from './helpers.ts';

const GAP: AnnularGap = { outerDiameter_m: 40e-3, clearance_m: 0.05e-3, length_m: 10e-3, eccentricity: 0 };
const CREEPING = { ...OIL, density_kg_m3: 0 };

const flow = (gap: Partial<AnnularGap>, drop: number, oil = CREEPING): number =>
  value(annularGap({ ...GAP, ...gap }, oil).flow(drop));

/** Exact flow along a concentric annulus. Source: Bird, Stewart & Lightfoot, Transport Phenomena, annulus in axial flow. */
function exactAnnulus(outer: number, inner: number, length: number, mu: number, drop: number): number {
  const bracket = outer ** 4 - inner ** 4 - (outer ** 2 - inner ** 2) ** 2 / Math.log(outer / inner);
  return ((Math.PI * drop) / (8 * mu * length)) * bracket;
}

describe('annularGap', () => {
  it('is the flow between plates on the mean diameter', () => {
    // Source: Merritt 1967 (from memory), Q = pi D c^3 dp / (12 mu L); own arithmetic: pi 0.03995 (5e-5)^3 1e6 / (12 0.0129 0.01).
    expect(relative(flow({}, 1e6), 1.0134579e-5)).toBeLessThan(1e-6);
  });

  it.each([
    // Source: computed independently, exact over plates 1.0000017 at c/r 0.01 and 1.00015 at 0.1.
    [0.01, 1.0000017, 1e-7],
    [0.1, 1.00015, 1e-5],
  ])('misses the exact annulus at c/r = %f by a factor of %f', (share, factor, tolerance) => {
    const inner = 20e-3;
    const outer = inner * (1 + share);
    const gap = { outerDiameter_m: 2 * outer, clearance_m: share * inner };
    const exact = exactAnnulus(outer, inner, GAP.length_m, OIL.dynamicViscosity_Pa_s, 1e6);
    expect(Math.abs(exact / flow(gap, 1e6) - factor)).toBeLessThan(tolerance);
  });

  it.each([
    // Source: computed independently, exact over plates rolled up on the inner diameter: 1.0050 at c/r 0.01, 1.0502 at 0.1.
    [0.01, 1.005],
    [0.1, 1.0502],
  ])('stands on the mean diameter: at c/r = %f the inner one would be off by a factor of %f', (share, factor) => {
    const inner = 20e-3;
    const gap = { outerDiameter_m: 2 * inner * (1 + share), clearance_m: share * inner };
    const onInner = (flow(gap, 1e6) * 2 * inner) / (gap.outerDiameter_m - gap.clearance_m);
    const { length_m } = GAP;
    const exact = exactAnnulus(inner * (1 + share), inner, length_m, OIL.dynamicViscosity_Pa_s, 1e6);
    expect(exact / onInner).toBeCloseTo(factor, 4);
  });

  it('passes 1.375 times as much at half eccentricity and 2.5 times as much touching', () => {
    // Source: Merritt 1967 (from memory), 1 + 1.5 e^2; and the mean of (1 + e cos)^3 over the circle, summed here.
    for (const [eccentricity, factor] of [
      [0.5, 1.375],
      [1, 2.5],
    ]) {
      const steps = 360;
      const heights = Array.from(
        { length: steps },
        (_, i) => (1 + eccentricity * Math.cos((2 * Math.PI * i) / steps)) ** 3,
      );
      expect(relative(heights.reduce((sum, h) => sum + h, 0) / steps, factor)).toBeLessThan(1e-12);
      expect(relative(flow({ eccentricity }, 1e6) / flow({}, 1e6), factor)).toBeLessThan(1e-12);
    }
  });

  it('loses the kinetic energy of a parabolic profile where friction is small', () => {
    // Source: own; mean of (1.5 (1 - y^2))^3 over y from 0 to 1, by Simpson's rule, is 54/35.
    const steps = 1000;
    const profile = (i: number) => (1.5 * (1 - (i / steps) ** 2)) ** 3;
    const weight = (i: number) => (i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2);
    const sum = Array.from({ length: steps + 1 }, (_, i) => weight(i) * profile(i)).reduce((a, b) => a + b, 0);
    const factor = sum / (3 * steps);
    const area = Math.PI * 39.95e-3 * 0.05e-3;
    const inviscid = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e-12 };
    const speed = flow({}, 1e6, inviscid) / area;
    expect(relative((factor * 860 * speed ** 2) / 2, 1e6)).toBeLessThan(1e-6);
  });

  it.each([10, 20, 50])(
    'keeps within about a quarter of turbulent flow beyond its range, in a gap %d times 2c long',
    (ratio) => {
      // Source: own arithmetic, f L/(2c) and the kinetic energy of a flat profile, 1.06 heads; f by Churchill 1977.
      const c = 1e-3;
      const gap = { ...GAP, clearance_m: c, length_m: ratio * 2 * c };
      for (const Re of [4e3, 1e4, 3e4, 1e5]) {
        const u = (Re * OIL.dynamicViscosity_Pa_s) / (OIL.density_kg_m3 * 2 * c);
        const area = Math.PI * (gap.outerDiameter_m - c) * c;
        const turbulent = ((frictionFactor(Re) * ratio + 1.06) * OIL.density_kg_m3 * u * u) / 2;
        expect(relative(value(annularGap(gap, OIL).drop(area * u)), turbulent)).toBeLessThan(0.27);
      }
    },
  );

  it('drags along half the speed of the wall over the area of the gap', () => {
    // Source: plane Couette flow, mean speed V/2; own arithmetic: pi 39.95 mm 0.05 mm / 2.
    expect(relative(wallDrivenArea(GAP), 3.137666e-6)).toBeLessThan(1e-6);
  });

  it('obeys the laws of a restriction', () => {
    const anyGap = fc.record({
      clearance_m: logUniform(1e-5, 1e-3),
      eccentricity: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    expectRestrictionLaws(anyGap.map((gap) => annularGap({ ...GAP, ...gap }, OIL)));
  });
});
