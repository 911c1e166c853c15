import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PoppetInput } from '../../../../src/solver/damper/types.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { needleArea, needleGap } from '../../../../src/solver/restriction/needle.ts';
import { jetForceFactor, poppet } from '../../../../src/solver/restriction/poppet.ts';
import { expectLawsBeyondOpening, logUniform, OIL, relative, value } from './helpers.ts';

const degrees = (angle: number) => (angle * Math.PI) / 180;
const POPPET: PoppetInput = {
  seatDiameter_m: 6e-3,
  coneAngle_rad: degrees(90),
  rate_N_m: 20e3,
  preload_N: 20,
  travel_m: 1.5e-3,
};
const CD = DEFAULT_COEFFICIENTS.sharpEdgeDischarge;
const make = (change: Partial<PoppetInput> = {}, oil = OIL) =>
  poppet({ ...POPPET, ...change }, oil, DEFAULT_COEFFICIENTS);
const gapAt = (travel_m: number, coneAngle_rad = POPPET.coneAngle_rad) => ({
  holeDiameter_m: 6e-3,
  coneAngle_rad,
  travel_m,
});

describe('jetForceFactor', () => {
  it('is 0.4285 for the jet of a spool, and nothing for a jet across the axis', () => {
    // Source: Merritt 1967 (from memory), "0.43 w x dp": 2 * 0.61 * 0.98 * cos 69 degrees.
    expect(jetForceFactor(0.61, degrees(69))).toBeCloseTo(0.4285, 4);
    expect(Math.abs(jetForceFactor(0.61, degrees(90)))).toBeLessThan(1e-15);
  });
});

describe('a spring-loaded poppet', () => {
  it('opens at its preload over the area of its seat', () => {
    // Source: own arithmetic. 20 N on 28.27433 mm2 is 0.7073553 MPa.
    expect(relative(make().openingDrop_Pa, 0.7073553e6)).toBeLessThan(1e-6);
    expect(value(make().flow(0.7073553e6 * 0.9999))).toBe(0);
    expect(value(make().flow(0.7073553e6 * 1.001))).toBeGreaterThan(0);
    expect(value(make({ preload_N: 0 }).flow(1))).toBeGreaterThan(0);
  });

  it('carries pressure, spring and jet in balance', () => {
    // Source: own arithmetic, momentum of the jet rho Q u cos a with Q and u from the orifice equation; oil so thin that nothing creeps.
    const thin = { ...OIL, dynamicViscosity_Pa_s: 1e-12 };
    const body = make({}, thin);
    for (const Q of [2e-5, 1e-4, 2e-4]) {
      const p = value(body.drop(Q));
      const x = value(body.lift(Q));
      expect(x).toBeLessThan(1.5e-3);
      const jet = OIL.density_kg_m3 * Q * 0.98 * Math.sqrt((2 * p) / OIL.density_kg_m3) * Math.cos(degrees(45));
      expect(relative(p * (Math.PI / 4) * 36e-6 - jet, 20 + 20e3 * x)).toBeLessThan(1e-6);
      expect(relative(Q, CD * needleArea(gapAt(x)) * Math.sqrt((2 * p) / OIL.density_kg_m3))).toBeLessThan(1e-6);
    }
  });

  it('feels no flow force when its jet leaves across the axis', () => {
    // Source: own arithmetic. Nearly flat: p A_s = F_0 + k x, so 30 N and 0.5 mm at 1.061033 MPa.
    const flat = make({ coneAngle_rad: Math.PI - 1e-9 });
    const Q = value(needleGap(gapAt(0.5e-3, Math.PI - 1e-9), OIL, CD).flow(1.061033e6));
    expect(relative(value(flat.lift(Q)), 0.5e-3)).toBeLessThan(1e-5);
    expect(relative(value(flat.drop(Q)), 1.061033e6)).toBeLessThan(1e-5);
  });

  it('is a fixed needle once it stands at its stop', () => {
    const body = make({ travel_m: 0.3e-3 });
    expect(value(body.lift(1e-3))).toBe(0.3e-3);
    expect(value(body.drop(1e-3))).toBe(value(needleGap(gapAt(0.3e-3), OIL, CD).drop(1e-3)));
  });

  it('without spring is a fixed needle at its stop from the first drop of oil', () => {
    const body = make({ rate_N_m: 0, preload_N: 0 });
    expect(value(body.drop(1e-7))).toBe(value(needleGap(gapAt(1.5e-3), OIL, CD).drop(1e-7)));
  });

  it('does not open on an ever stiffer spring', () => {
    const flows = [1e3, 1e6, 1e9, 1e12].map((rate_N_m) => value(make({ rate_N_m }).flow(2e6)));
    expect(flows).toEqual([...flows].sort((a, b) => b - a));
    expect(flows[3]).toBeLessThan(1e-12);
  });

  it('is held by its own jet before a sharp cone is out of the hole', () => {
    // Source: own arithmetic. p A_s = 2 Cd Cv A p cos a at A = A_s / (2 Cd Cv cos a) = 28.27433 / (1.197590 cos 15) = 24.4422 mm2.
    const sharp = make({ coneAngle_rad: degrees(30), travel_m: 20e-3 });
    const x = value(sharp.lift(1));
    expect(relative(needleArea(gapAt(x, degrees(30))), 24.4422e-6)).toBeLessThan(1e-5);
    expect(relative(value(sharp.drop(1)), 0.5 * 860 * (1 / (CD * 24.4422e-6)) ** 2)).toBeLessThan(1e-2);
  });

  it('rises in both directions, and each undoes the other, whatever cone and spring', () => {
    const rate = fc.oneof(fc.constant(0), logUniform(100, 1e6));
    const preload = fc.oneof(fc.constant(0), logUniform(0.1, 300));
    const bodies = fc
      .tuple(rate, preload, logUniform(1e-5, 5e-3), fc.double({ min: 0.2, max: 3, noNaN: true }))
      .map(([rate_N_m, preload_N, travel_m, coneAngle_rad]) => make({ rate_N_m, preload_N, travel_m, coneAngle_rad }));
    expectLawsBeyondOpening(bodies);
  });
});
