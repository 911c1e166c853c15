import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type NeedleGap, needleArea, needleGap } from '../../../../src/solver/restriction/needle.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, value } from './helpers.ts';

const GAP: NeedleGap = { holeDiameter_m: 3e-3, coneAngle_rad: Math.PI / 6, travel_m: 1e-3 };

/** Lateral area of a truncated cone by its two radii and its slant. Source: any table of solids. */
const frustum = (r1: number, r2: number, slant: number) => Math.PI * (r1 + r2) * slant;

describe('needleArea', () => {
  it('is the frustum from the edge of the hole at right angles to the cone', () => {
    // 30 degrees, 1 mm out: slant s = sin 15 = 0.258819 mm, inner radius 1.5 - s cos 15 = 1.25 mm; 2.236035 mm2.
    expect(relative(needleArea(GAP), frustum(1.5e-3, 1.25e-3, 0.2588190451e-3))).toBeLessThan(1e-9);
    expect(relative(needleArea(GAP), 2.236035e-6)).toBeLessThan(1e-5);
  });

  it('is that of a narrow slit near closed, and the hole from there on where it reaches it', () => {
    expect(
      relative(needleArea({ ...GAP, travel_m: 1e-9 }), Math.PI * 3e-3 * 1e-9 * Math.sin(Math.PI / 12)),
    ).toBeLessThan(1e-6);
    for (const travel_m of [6e-3, 10e-3, 1])
      expect(relative(needleArea({ ...GAP, travel_m }), 2.25e-6 * Math.PI)).toBeLessThan(1e-12);
  });

  it('grows with the travel until then', () => {
    const travel = fc.double({ min: 0, max: 10e-3, noNaN: true });
    fc.assert(
      fc.property(travel, travel, fc.double({ min: 0.1, max: 2, noNaN: true }), (x1, x2, coneAngle_rad) => {
        const [less, more] = [Math.min(x1, x2), Math.max(x1, x2)].map((travel_m) =>
          needleArea({ ...GAP, coneAngle_rad, travel_m }),
        );
        expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-12));
      }),
    );
  });
});

describe('needleGap', () => {
  it('is an orifice of that area where the jet decides', () => {
    // Source: orifice equation, 0.61 * 2.236035 mm2 * sqrt(2e6 / 860).
    const thin = { ...OIL, dynamicViscosity_Pa_s: 1e-12 };
    expect(
      relative(value(needleGap(GAP, thin, 0.61).flow(1e6)), 0.61 * 2.236035e-6 * Math.sqrt(2e6 / 860)),
    ).toBeLessThan(1e-5);
  });

  it('is the creeping slit of Wuest near closed: Q = pi s^2 w dp / (32 mu)', () => {
    const travel_m = 1e-6;
    const s = travel_m * Math.sin(Math.PI / 12);
    const flow = value(needleGap({ ...GAP, travel_m }, { ...OIL, density_kg_m3: 0 }, 0.61).flow(1e6));
    const slit = (Math.PI * s * s * Math.PI * 3e-3 * 1e6) / (32 * OIL.dynamicViscosity_Pa_s);
    expect(relative(flow, slit)).toBeLessThan(1e-3);
  });

  it('is closed at no travel', () => {
    expect(value(needleGap({ ...GAP, travel_m: 0 }, OIL, 0.61).flow(1e6))).toBe(0);
  });

  it('obeys the laws of a restriction', () => {
    expectRestrictionLaws(logUniform(1e-6, 10e-3).map((travel_m) => needleGap({ ...GAP, travel_m }, OIL, 0.61)));
  });
});
