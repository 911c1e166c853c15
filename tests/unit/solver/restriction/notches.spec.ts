import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { notchPath } from '../../../../src/solver/restriction/notches.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, value } from './helpers.ts';

/** Four notches of 2 x 0.1 mm: 0.8 mm2 in all, hydraulic diameter 2 * 2 * 0.1 / 2.1 = 0.190476 mm. */
const FOUR = { count: 4, width_m: 2e-3 };
const HYDRAULIC_M = 0.4e-3 / 2.1;

const path = (width_m: number, land_m: number, thickness_m = 1e-4) =>
  notchPath(
    { ...FOUR, width_m },
    thickness_m,
    { innerRadius_m: 14e-3, outerRadius_m: 14e-3 + land_m },
    OIL,
    DEFAULT_COEFFICIENTS,
  );

describe('notchPath', () => {
  it('is the sharp-edged orifice over a narrow land', () => {
    // Source: own arithmetic with dp = 6 pi mu Q / (A d) + rho/2 (Q / (Cd A))^2, Cd = pi / (pi + 2): creeping limit
    // of Sampson, contraction of von Mises. 600 mL/min through the four notches.
    expect(relative(value(path(2e-3, 0.05e-3).drop(1e-5)), 195_920.68)).toBeLessThan(1e-5);
  });

  it('is the long orifice over a wide land', () => {
    // Source: Lichtarowicz, Duggins & Markland 1965, eq. 12 (recomputed): Cd = 0.7446 at l/d = 2, Re = 1000.
    const velocity = (1000 * OIL.dynamicViscosity_Pa_s) / (OIL.density_kg_m3 * HYDRAULIC_M);
    const flow = value(path(2e-3, 2 * HYDRAULIC_M).flow((OIL.density_kg_m3 * velocity ** 2) / 2));
    expect(relative(flow, 0.8e-6 * velocity * 0.7446)).toBeLessThan(1e-4);
  });

  it('is closed without notches', () => {
    const land = { innerRadius_m: 14e-3, outerRadius_m: 14.4e-3 };
    expect(value(notchPath(undefined, 1e-4, land, OIL, DEFAULT_COEFFICIENTS).flow(1e6))).toBe(0);
  });

  it('passes more the wider its notches and the thicker its shim (property)', () => {
    const growth = fc.double({ min: 1.01, max: 3, noNaN: true });
    fc.assert(
      fc.property(logUniform(1e3, 1e7), growth, (drop, k) => {
        const flow = value(path(1e-3, 0.4e-3).flow(drop));
        expect(value(path(k * 1e-3, 0.4e-3).flow(drop))).toBeGreaterThan(flow);
        expect(value(path(1e-3, 0.4e-3, k * 1e-4).flow(drop))).toBeGreaterThan(flow);
      }),
    );
  });

  it('obeys the laws of a restriction', () => {
    expectRestrictionLaws(fc.tuple(logUniform(1e-4, 5e-3), logUniform(1e-5, 2e-3)).map(([w, land]) => path(w, land)));
  });
});
