import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CheckInput } from '../../../../src/solver/damper/types.ts';
import { checkPlate } from '../../../../src/solver/restriction/check-plate.ts';
import { DEFAULT_COEFFICIENTS } from '../../../../src/solver/restriction/coefficients.ts';
import { curtain } from '../../../../src/solver/restriction/curtain.ts';
import { drilledHole } from '../../../../src/solver/restriction/drilled-hole.ts';
import { expectLawsBeyondOpening, logUniform, OIL, relative, value } from './helpers.ts';

const CHECK: CheckInput = {
  ports: { count: 6, area_m2: 10e-6, hydraulicDiameter_m: 3.5e-3, length_m: 6e-3 },
  seat: { innerRadius_m: 8e-3, outerRadius_m: 12e-3 },
  rate_N_m: 2000,
  preload_N: 3,
  travel_m: 0.8e-3,
};

const check = (change: Partial<CheckInput> = {}) => checkPlate({ ...CHECK, ...change }, OIL, DEFAULT_COEFFICIENTS);

/** Ports, then the curtain at a fixed lift, at one flow. */
const openAt = (lift_m: number, Q: number, coveredFraction = 1) =>
  value(drilledHole(CHECK.ports, OIL, DEFAULT_COEFFICIENTS).drop(Q)) +
  value(curtain({ ...CHECK.seat, gap_m: lift_m, coveredFraction }, OIL, DEFAULT_COEFFICIENTS.jetDischarge).drop(Q));

describe('a check plate', () => {
  it('opens where the pressure on seat and land bears its preload', () => {
    // Source: radial flow between discs (Bird, Stewart & Lightfoot), land from 8 to 12 mm: 309.9248 N at 1 MPa.
    expect(relative(check({ preload_N: 309.9248 }).openingDrop_Pa, 1e6)).toBeLessThan(1e-6);
    const { flow, openingDrop_Pa } = check();
    expect(value(flow(openingDrop_Pa))).toBe(0);
    expect(value(flow(openingDrop_Pa * 1.001))).toBeGreaterThan(0);
  });

  it('lifts by the force above the preload over the rate', () => {
    // Source: own arithmetic. 4 N on 309.9248 mm2 is 12 906.4 Pa; of it 1 N above the preload is 0.5 mm at 2 N/mm.
    const plate = check();
    const p = 4 / 309.9248e-6;
    const opening = { ...CHECK.seat, gap_m: 0.5e-3 };
    const Q = value(curtain(opening, OIL, DEFAULT_COEFFICIENTS.jetDischarge).flow(p));
    expect(relative(value(plate.lift(Q)), 0.5e-3)).toBeLessThan(1e-6);
    expect(relative(value(plate.drop(Q)), openAt(0.5e-3, Q))).toBeLessThan(1e-6);
  });

  it('is its ports and a fixed opening once it stands at its stop', () => {
    const plate = check();
    for (const Q of [5e-4, 1e-3]) {
      expect(value(plate.lift(Q))).toBe(0.8e-3);
      expect(relative(value(plate.drop(Q)), openAt(0.8e-3, Q))).toBeLessThan(1e-12);
    }
  });

  it('without spring is open whenever something flows', () => {
    const plate = check({ rate_N_m: 0, preload_N: 0 });
    expect(plate.openingDrop_Pa).toBe(0);
    for (const Q of [1e-9, 1e-6, 1e-3]) {
      expect(relative(value(plate.drop(Q)), openAt(0.8e-3, Q))).toBeLessThan(1e-12);
      expect(relative(value(plate.flow(openAt(0.8e-3, Q))), Q)).toBeLessThan(1e-9);
    }
    expect(value(plate.flow(0))).toBe(0);
    expect(value(plate.lift(0))).toBe(0);
  });

  it('without rate holds its preload pressure until it is at its stop', () => {
    const plate = check({ rate_N_m: 0 });
    const held = 3 / 309.9248e-6;
    for (const Q of [1e-7, 1e-6, 1e-5]) {
      const ports = value(drilledHole(CHECK.ports, OIL, DEFAULT_COEFFICIENTS).drop(Q));
      expect(relative(value(plate.drop(Q)), held + ports)).toBeLessThan(1e-6);
      expect(value(plate.lift(Q))).toBeLessThan(0.8e-3);
    }
    expect(value(plate.lift(1e-3))).toBe(0.8e-3);
  });

  it('never opens on an ever stiffer spring', () => {
    const lifts = [1e3, 1e6, 1e9, 1e12].map((rate_N_m) => {
      const plate = check({ rate_N_m, preload_N: 0 });
      return value(plate.lift(value(plate.flow(1e6))));
    });
    expect(lifts).toEqual([...lifts].sort((a, b) => b - a));
    expect(lifts[3]).toBeLessThan(1e-9);
    expect(value(check({ rate_N_m: 1e12, preload_N: 0 }).flow(1e6))).toBeLessThan(1e-15);
  });

  it('is pressed on and leaks out by the share of the circumference that its ports open', () => {
    const ports = { ...CHECK.ports, coveredFraction: 0.5 };
    expect(relative(check({ ports }).openingDrop_Pa, 2 * check().openingDrop_Pa)).toBeLessThan(1e-12);
    const Q = 8e-4;
    expect(relative(value(check({ ports }).drop(Q)), openAt(0.8e-3, Q, 0.5))).toBeLessThan(1e-12);
  });

  it('rises in both directions, and each undoes the other, whatever the spring', () => {
    const rate = fc.oneof(fc.constant(0), logUniform(10, 1e6));
    const preload = fc.oneof(fc.constant(0), logUniform(0.01, 300));
    const plates = fc
      .tuple(rate, preload, logUniform(1e-5, 3e-3), fc.double({ min: 0.1, max: 1, noNaN: true }))
      .map(([rate_N_m, preload_N, travel_m, coveredFraction]) =>
        check({ rate_N_m, preload_N, travel_m, ports: { ...CHECK.ports, coveredFraction } }),
      );
    expectLawsBeyondOpening(plates);
  });

  it('names flow, drop and narrowest jet of every lift', () => {
    const plate = check();
    for (const lift of [0.1e-3, 0.4e-3, plate.largestLift_m]) {
      const { flow, drop } = plate.atLift(lift);
      expect(relative(value(plate.lift(flow)), lift)).toBeLessThan(1e-9);
      expect(relative(value(plate.drop(flow)), drop)).toBeLessThan(1e-9);
      // Source: own arithmetic, a cylinder of 16 mm diameter; the ports have 60 mm2.
      expect(relative(plate.throatAtLift_m2(lift), Math.PI * 16e-3 * lift)).toBeLessThan(1e-12);
      expect(relative(plate.throat_m2?.(flow) ?? 0, Math.PI * 16e-3 * lift)).toBeLessThan(1e-9);
    }
    expect(check({ travel_m: 2e-3 }).throatAtLift_m2(2e-3)).toBeCloseTo(60e-6, 12);
    expect(plate.atLift(0)).toEqual({ flow: 0, drop: plate.openingDrop_Pa });
  });

  it('says so when its ports give no number', () => {
    const ports = { ...CHECK.ports, area_m2: Number.NaN };
    expect(check({ ports }).drop(1e-4)).toMatchObject({ status: 'not-converged' });
    expect(check({ ports }).flow(1e5)).toMatchObject({ status: 'not-converged' });
  });
});
