import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  engagedLength,
  hydraulicStopForce,
  hydraulicStopPressure,
} from '../../../../src/solver/damper/hydraulic-stop.ts';
import type { HydraulicStopInput } from '../../../../src/solver/damper/types.ts';
import { OIL, relative } from '../restriction/helpers.ts';

const TRAVEL = 0.1;
const STOP: HydraulicStopInput = {
  end: 'compression',
  length_m: 0.02,
  plungerDiameter_m: 20e-3,
  clearance_m: 0.25e-3,
};
const REBOUND: HydraulicStopInput = { ...STOP, end: 'rebound' };
const CREEPING = { ...OIL, density_kg_m3: 0 };

const damper = (stroke_m: number, hydraulicStop?: HydraulicStopInput, fluid = OIL) => ({
  rodDiameter_m: 12e-3,
  travel_m: TRAVEL,
  stroke_m,
  fluid,
  hydraulicStop,
});
const pressure = (stroke_m: number, v: number, stop = STOP, oil = OIL): number =>
  hydraulicStopPressure(damper(stroke_m, stop, oil), v);
const force = (stroke_m: number, v: number, stop = STOP, oil = OIL): number =>
  hydraulicStopForce(damper(stroke_m, stop, oil), v);

describe('engagedLength', () => {
  it('counts from where the plunger enters, at either end of the stroke', () => {
    for (const [stroke_m, compression, rebound] of [
      [0, 0, 0.02],
      [0.015, 0, 0.005],
      [0.05, 0, 0],
      [0.09, 0.01, 0],
      [0.1, 0.02, 0],
    ]) {
      expect(engagedLength(STOP, TRAVEL, stroke_m)).toBeCloseTo(compression, 12);
      expect(engagedLength(REBOUND, TRAVEL, stroke_m)).toBeCloseTo(rebound, 12);
    }
  });
});

describe('hydraulicStopPressure', () => {
  it('is that of the annular gap for what the plunger displaces and drags along', () => {
    // Source: Merritt 1967 (from memory), 12 mu L Q/(pi D c^3), and (54/35) rho/2 (Q/(pi D c))^2. Own arithmetic at d 20, c 0.25,
    // L 10 mm, 0.5 m/s: Q 0.161056 L/s, 250 814 Pa of friction and 68 033 Pa of exit; 100.169 N on the plunger.
    expect(relative(pressure(0.09, 0.5), 318846.75)).toBeLessThan(1e-6);
    expect(relative(force(0.09, 0.5), 100.16867)).toBeLessThan(1e-6);
  });

  it('is the dashpot of the vibration texts in creeping flow, to the thickness of its film', () => {
    // Source: F = 3 pi mu L d^3/(4 c^3) (1 + 2 c/d) v (vibration texts, from memory), with the perimeter of the plunger; ours
    // has that of the mean diameter, (1 + c/d) longer.
    const [d, c, L] = [20e-3, 0.25e-3, 10e-3];
    const dashpot = ((3 * Math.PI * OIL.dynamicViscosity_Pa_s * L * d ** 3) / (4 * c ** 3)) * (1 + (2 * c) / d) * 0.1;
    expect(relative(force(0.09, 0.1, STOP, CREEPING) * (1 + c / d), dashpot)).toBeLessThan(4e-4);
  });

  it('is 0 outside the cup, at rest and on the way out', () => {
    expect([pressure(0.05, 1), pressure(0.08, 1), pressure(0.09, 0), pressure(0.09, -1)]).toEqual([0, 0, 0, 0]);
    expect([pressure(0.05, -1, REBOUND), pressure(0.01, 1, REBOUND)]).toEqual([0, 0]);
  });

  it('comes in without a step, and the whole loss counts four clearances deep', () => {
    const entry_m = 0.08;
    const whole = (L: number): number => pressure(0.1, 1, { ...STOP, length_m: L });
    expect(pressure(entry_m + 1e-9, 1) / pressure(entry_m + 1e-3, 1)).toBeLessThan(1e-10);
    // A stop as long as the depth is past its entry at full stroke.
    for (const L of [1e-3, 1.5e-3, 5e-3]) expect(relative(pressure(entry_m + L, 1), whole(L))).toBeLessThan(1e-9);
    // Half way through the entry half of the loss counts: 54/35 of the exit and the friction over two clearances.
    const [D, c, Q] = [20.25e-3, 0.25e-3, (Math.PI / 4) * 4e-4 + (Math.PI * 20.25e-3 * 0.25e-3) / 2];
    const friction = (12 * OIL.dynamicViscosity_Pa_s * 0.5e-3 * Q) / (Math.PI * D * c ** 3);
    const exit = (54 / 35) * 430 * (Q / (Math.PI * D * c)) ** 2;
    expect(relative(pressure(entry_m + 0.5e-3, 1), (friction + exit) / 2)).toBeLessThan(1e-9);
  });

  it('rises with depth and with speed', () => {
    const stroke = fc.double({ min: 0, max: 0.1, noNaN: true });
    const speed = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(stroke, stroke, speed, speed, (x1, x2, v1, v2) => {
        const [x, deeper] = [Math.min(x1, x2), Math.max(x1, x2)];
        const [v, faster] = [Math.min(v1, v2), Math.max(v1, v2)];
        expect(pressure(deeper, v)).toBeGreaterThanOrEqual(pressure(x, v));
        expect(pressure(x, faster)).toBeGreaterThanOrEqual(pressure(x, v));
      }),
    );
  });
});

describe('hydraulicStopForce', () => {
  it('pushes against the motion at both ends, and harder the deeper it is in', () => {
    const depth = fc.integer({ min: 1, max: 20 }).map((mm) => mm / 1e3);
    const speed = fc.integer({ min: 1, max: 500 }).map((cm) => cm / 100);
    fc.assert(
      fc.property(depth, speed, (L, v) => {
        const [into, backInto] = [force(TRAVEL - 0.02 + L, v), force(0.02 - L, -v, REBOUND)];
        expect(into).toBeGreaterThan(force(TRAVEL - 0.02 + 0.9 * L, v));
        expect(-backInto).toBeGreaterThan(-force(0.02 - 0.9 * L, -v, REBOUND));
        expect(-backInto).toBeLessThan(into);
        expect([force(TRAVEL - 0.02 + L, -v), force(0.02 - L, v, REBOUND)].map(Math.abs)).toEqual([0, 0]);
      }),
    );
  });

  it('acts on the plunger less the rod where the rod passes through', () => {
    // Source: own arithmetic as above with A = pi (20^2 - 12^2)/4 = 201.062 mm2, L 10 mm, 0.5 m/s: Q 0.104507 L/s.
    expect(relative(-force(0.01, -0.5, REBOUND), 38.482381)).toBeLessThan(1e-6);
  });

  it('is none without a stop', () => {
    expect([hydraulicStopForce(damper(0.1), 1), hydraulicStopPressure(damper(0.1), 1)]).toEqual([0, 0]);
  });
});
