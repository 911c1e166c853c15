import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COEFFICIENT_TABLE, DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { curtain } from '../../../../src/solver/restriction/curtain.ts';
import { expectRestrictionLaws, logUniform, OIL, relative, value } from './helpers.ts';

const opening = (gap_m: number, outerRadius_m = 14.2e-3) => ({ innerRadius_m: 13.8e-3, outerRadius_m, gap_m });
const CD = DEFAULT_COEFFICIENTS.jetDischarge;

describe('curtain', () => {
  it('is creeping radial flow between discs when the gap is small against the land', () => {
    // Source: Q = pi h^3 dp / (6 mu ln(r2/r1)), Bird, Stewart & Lightfoot.
    const [h, r1, r2] = [1e-6, 13.8e-3, 14.2e-3];
    const flow = value(curtain(opening(h), OIL, CD).flow(1e4));
    expect(relative(flow, (Math.PI * h ** 3 * 1e4) / (6 * 0.0129 * Math.log(r2 / r1)))).toBeLessThan(5e-3);
  });

  it('is the creeping flow of a slit when the land has no width', () => {
    // Source: Q = pi h^2 w dp / (32 mu), exact creeping flow through a slit (Wuest, in Merritt 1967, from memory; recomputed).
    const honey = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e3 };
    const flow = value(curtain(opening(1e-4, 13.8e-3), honey, CD).flow(1e5));
    const width = 2 * Math.PI * 13.8e-3;
    expect(relative(flow, (Math.PI * 1e-8 * width * 1e5) / (32 * 1e3))).toBeLessThan(1e-6);
  });

  it('has the low-Reynolds coefficient 0.1567 sqrt(Re) of a slit, and hands over to the jet at Re 15.2', () => {
    // Source: Merritt 1967 (from memory), Cd = delta sqrt(Re) with Re = rho u 2 h / mu, and the crossing with 0.61, (0.61 / delta)^2; recomputed.
    const h = 1e-4;
    const speedAt = (Re: number, mu: number) => (Re * mu) / (860 * 2 * h);
    const area = 2 * Math.PI * 13.8e-3 * h;
    const dropAt = (Re: number, mu: number) =>
      value(
        curtain(opening(h, 13.8e-3), { density_kg_m3: 860, dynamicViscosity_Pa_s: mu }, 0.61).drop(
          area * speedAt(Re, mu),
        ),
      );
    const u = speedAt(1e-6, 0.0129);
    expect(u / Math.sqrt((2 * dropAt(1e-6, 0.0129)) / 860) / Math.sqrt(1e-6)).toBeCloseTo(0.1567, 4);
    const jet = (860 / 2) * (speedAt(15.2, 0.0129) / 0.61) ** 2;
    expect(dropAt(15.2, 0.0129) / jet).toBeCloseTo(2, 2);
  });

  it('is the orifice equation over the inner edge of the land at high Reynolds number', () => {
    const thin = { density_kg_m3: 860, dynamicViscosity_Pa_s: 1e-9 };
    const flow = value(curtain(opening(2e-4), thin, CD).flow(1e6));
    expect(relative(flow, CD * 2 * Math.PI * 13.8e-3 * 2e-4 * Math.sqrt(2e6 / 860))).toBeLessThan(1e-5);
  });

  it('is closed at no gap, and then no drop can drive a flow', () => {
    expect(value(curtain(opening(0), OIL, CD).flow(1e6))).toBe(0);
    expect(curtain(opening(0), OIL, CD).drop(1e-6)).toMatchObject({ status: 'not-converged' });
    expect(value(curtain(opening(0), OIL, CD).drop(0))).toBe(0);
  });

  it('passes the covered share of the flow at the same drop', () => {
    for (const gap of [1e-6, 3e-4]) {
      const whole = value(curtain(opening(gap), OIL, CD).flow(1e5));
      expect(
        relative(value(curtain({ ...opening(gap), coveredFraction: 0.4 }, OIL, CD).flow(1e5)), 0.4 * whole),
      ).toBeLessThan(1e-12);
    }
  });

  it('obeys the laws of a restriction', () => {
    expectRestrictionLaws(logUniform(1e-7, 2e-3).map((h) => curtain(opening(h), OIL, CD)));
  });

  it('lets more through at every larger gap', () => {
    fc.assert(
      fc.property(logUniform(1e-7, 1e-3), logUniform(1.0001, 5), logUniform(10, 3e7), (h, factor, drop) => {
        const [small, large] = [h, h * factor].map((gap) => value(curtain(opening(gap), OIL, CD).flow(drop)));
        expect(large).toBeGreaterThan(small);
      }),
    );
  });
});

describe('COEFFICIENT_TABLE', () => {
  it('keeps every default inside its band and names a source', () => {
    for (const { value: v, low, high, source } of Object.values(COEFFICIENT_TABLE)) {
      expect(v).toBeGreaterThanOrEqual(low);
      expect(v).toBeLessThanOrEqual(high);
      expect(source).toMatch(/\w{4}/);
    }
    expect(Object.keys(DEFAULT_COEFFICIENTS)).toEqual(Object.keys(COEFFICIENT_TABLE));
  });

  it('takes 0.6 to 0.8 for the jet under a shim', () => {
    // Source: ranges of hydraulics books and disc-valve measurements (textbook ranges, from memory).
    expect(COEFFICIENT_TABLE.jetDischarge).toMatchObject({ low: 0.6, high: 0.8 });
  });

  it('takes the free-streamline contraction for a sharp edge', () => {
    // Source: von Mises, pi/(pi+2) = 0.61102.
    expect(DEFAULT_COEFFICIENTS.sharpEdgeDischarge).toBeCloseTo(0.61102, 5);
  });
});
