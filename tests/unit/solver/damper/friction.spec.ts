import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  frictionForce,
  REGULARISATION_SPEED_M_S,
  smoothFrictionForce,
} from '../../../../src/solver/damper/friction.ts';
import type { FrictionInput } from '../../../../src/solver/damper/types.ts';

const FRICTION: FrictionInput = { sliding_N: 40, breakaway_N: 70, stribeckSpeed_m_s: 0.02, viscous_N_s_m: 50 };
const COULOMB: FrictionInput = { sliding_N: 40, breakaway_N: 40, stribeckSpeed_m_s: 0.02, viscous_N_s_m: 0 };

const speed = fc.double({ min: -5, max: 5, noNaN: true });

/** Work over one sine stroke x = X sin wt by the midpoint rule [J]. */
function energyPerCycle(force: (v: number) => number, X: number, w: number, steps: number): number {
  const dt = (2 * Math.PI) / (w * steps);
  let energy = 0;
  for (let i = 0; i < steps; i++) {
    const v = X * w * Math.cos((2 * Math.PI * (i + 0.5)) / steps);
    energy += force(v) * v * dt;
  }
  return energy;
}

const X = 0.02;
const W = 2 * Math.PI * 5;

describe('frictionForce', () => {
  it.each([
    // Own arithmetic: 40 + 30/e + 50 v at the Stribeck speed; breakaway close to rest; sliding and film far from it.
    [0.02, 40 + 30 / Math.E + 1],
    [-0.02, -(40 + 30 / Math.E + 1)],
    [1e-9, 70],
    [1, 90],
    [0, 0],
  ])('at %d m/s is %d N', (v, force) => {
    expect(frictionForce(FRICTION, v)).toBeCloseTo(force, 6);
  });

  it('takes 4 F X a cycle when it is dry and does not change with speed', () => {
    // Source: any vibration text, Coulomb friction.
    const energy = energyPerCycle((v) => frictionForce(COULOMB, v), X, W, 8192);
    expect(Math.abs(energy / (4 * 40 * X) - 1)).toBeLessThan(1e-6);
  });

  it('takes pi c w X^2 more by its film', () => {
    // Source: any vibration text, linear damping.
    const film = energyPerCycle((v) => frictionForce({ ...COULOMB, viscous_N_s_m: 50 }, v), X, W, 8192);
    const dry = energyPerCycle((v) => frictionForce(COULOMB, v), X, W, 8192);
    expect(Math.abs((film - dry) / (Math.PI * 50 * W * X ** 2) - 1)).toBeLessThan(1e-6);
  });

  it('works against the motion, alike in both directions, and lies between sliding and breakaway without its film', () => {
    fc.assert(
      fc.property(speed, (v) => {
        const force = frictionForce(FRICTION, v);
        expect(force * v).toBeGreaterThanOrEqual(0);
        expect(frictionForce(FRICTION, -v) + force).toBe(0);
        const dry = Math.abs(force - 50 * v);
        if (v !== 0) expect([dry >= 40 - 1e-9, dry <= 70 + 1e-9]).toEqual([true, true]);
      }),
    );
  });
});

describe('smoothFrictionForce', () => {
  it('passes through rest without a step, with the slope of breakaway over v_t', () => {
    const v = REGULARISATION_SPEED_M_S / 1000;
    expect(smoothFrictionForce(FRICTION, 0)).toBe(0);
    expect(smoothFrictionForce(FRICTION, v) / (70e-3 + 50 * v)).toBeCloseTo(1, 5);
  });

  it('goes over to the law with the step as v_t falls', () => {
    for (const v of [1e-3, 0.02, 0.5, -0.3]) {
      const misses = [1e-2, 1e-3, 1e-4].map((v_t) =>
        Math.abs(smoothFrictionForce(FRICTION, v, v_t) - frictionForce(FRICTION, v)),
      );
      expect(misses[1]).toBeLessThanOrEqual(misses[0]);
      expect(misses[2]).toBeLessThanOrEqual(misses[1]);
      expect(misses[2]).toBeLessThan(1e-6);
    }
  });

  it('takes less than 4 F X by the share (pi^2/24) (v_t/V)^2', () => {
    // Source: own; the integral of x (1 - tanh x) from 0 to infinity is pi^2/24, met four times a cycle.
    const v_t = 0.02 * X * W;
    const share = 1 - energyPerCycle((v) => smoothFrictionForce(COULOMB, v, v_t), X, W, 16384) / (4 * 40 * X);
    expect(Math.abs(share / ((Math.PI ** 2 / 24) * 0.02 ** 2) - 1)).toBeLessThan(0.01);
  });

  it('works against the motion, alike in both directions', () => {
    fc.assert(
      fc.property(speed, (v) => {
        const force = smoothFrictionForce(FRICTION, v);
        expect(force * v).toBeGreaterThanOrEqual(0);
        expect(smoothFrictionForce(FRICTION, -v) + force).toBe(0);
      }),
    );
  });

  it.each([0, -1, Number.NaN])('refuses a regularisation speed of %d', (v_t) => {
    expect(() => smoothFrictionForce(FRICTION, 1, v_t)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code: 'friction.regularisation.not-positive' }) }),
    );
  });
});
