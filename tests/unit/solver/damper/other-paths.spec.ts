/** Where oil passes beside the ports: under a needle in the bleed, and past the piston. */
import { describe, expect, it } from 'vitest';
import { forceCurveWith } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { type LinearStack, linearStacks } from '../../../helpers/linear-stack.ts';
import { MONOTUBE } from '../../../helpers/monotube.ts';

const STACK: LinearStack = { compliance_m_Pa: 0.5e-9, crackingPressure_Pa: 100e3 };

const curve = (speeds: number[], damper: Partial<DamperInput> = {}, stack: Partial<LinearStack> = {}) =>
  forceCurveWith(linearStacks({ ...STACK, ...stack }), { ...MONOTUBE, ...damper }, speeds, {
    theory: 'small-deflection',
  });

const pointAt = (speed: number, ...rest: [Partial<DamperInput>?, Partial<LinearStack>?]): ForcePoint => {
  const [point] = curve([speed], ...rest).points;
  expect(point.status).toBe('converged');
  return point as ForcePoint;
};

const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

describe('the paths beside the ports', () => {
  const pistonBand = { clearance_m: 0.05e-3, length_m: 10e-3, eccentricity: 0.5 };

  it('leaks past the piston with the pressure and with the drag of the moving wall', () => {
    // Source: own arithmetic, no shims that open and no bleed, so all the oil goes through the gap; D = 43.95 mm on bore 44:
    // A_gap = 6.90365 mm2, Q = 1366.593 mm2 * 0.01 m/s = 13.66593 mL/s, dragged along 0.03452 mL/s, pressed 13.63141 mL/s;
    // dp = 12 mu L Q / (A c^2 1.375) + 54/35 844/2 (Q/A)^2 = 875 395 + 2 538 Pa.
    const bleed = { count: 0, diameter_m: 0, length_m: 0 };
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 1e8 };
    const { pistonDrop_Pa, flows } = pointAt(0.01, { bleed, gas, pistonBand }, { crackingPressure_Pa: 1e12 });
    expect(relative(pistonDrop_Pa, 877_933.848)).toBeLessThan(1e-5);
    expect(flows.ports_m3_s + flows.bleed_m3_s).toBe(0);
    expect(relative(flows.leakage_m3_s, 1366.5927e-8)).toBeLessThan(1e-6);
  });

  it('pushes back less where the piston leaks, in both directions, and not at all differently where its band seals', () => {
    const sealed = curve([-0.1, 0.1]).points as ForcePoint[];
    const leaking = curve([-0.1, 0.1], { pistonBand: { ...pistonBand, clearance_m: 0.1e-3 } }).points as ForcePoint[];
    for (const [i, { dampingForce_N, flows }] of leaking.entries()) {
      expect(Math.abs(dampingForce_N)).toBeLessThan(0.97 * Math.abs(sealed[i].dampingForce_N));
      expect(flows.leakage_m3_s).toBeGreaterThan(0);
      expect(sealed[i].flows.leakage_m3_s).toBe(0);
    }
  });

  const withNeedle = (travel_m: number, count = 1, coneAngle_rad = Math.PI / 6) => ({
    bleed: { ...MONOTUBE.bleed, count, needle: { coneAngle_rad, travel_m } },
  });

  it('bleeds less the further in the needle is: from the whole hole to nothing', () => {
    const open = pointAt(0.1).flows.bleed_m3_s;
    const shares = [0, 0.05e-3, 0.2e-3, 1e-3, 4e-3].map((x) => pointAt(0.1, withNeedle(x)).flows.bleed_m3_s / open);
    expect(shares[0]).toBe(0);
    expect([...shares].sort((a, b) => a - b)).toEqual(shares);
    expect(new Set(shares).size).toBe(5);
    expect(shares[4]).toBeLessThan(1);
  });

  it('puts the edge under the needle and the hole behind it in series', () => {
    // Source: own arithmetic, no viscosity and no shims: dp = rho/2 Q^2 [1/(Cd A_n)^2 + 1/(0.8015 A)^2] with the frustum
    // A_n = pi s (d - s cos 15), s = 0.2 mm sin 15, and the long orifice at l/d = 3, Cdu = 0.827 - 0.0085 * 3, less its bump.
    const fluid = { density_kg_m3: 844, dynamicViscosity_Pa_s: 1e-9 };
    const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 1e9 };
    const { pistonDrop_Pa, flows } = pointAt(
      0.005,
      { ...withNeedle(0.2e-3), fluid, gas },
      { crackingPressure_Pa: 1e12 },
    );
    const s = 0.2e-3 * Math.sin(Math.PI / 12);
    const edge = (Math.PI / (Math.PI + 2)) * Math.PI * s * (1.6e-3 - s * Math.cos(Math.PI / 12));
    const hole = 0.8015 * Math.PI * 0.64e-6;
    const wanted = (844 / 2) * flows.bleed_m3_s ** 2 * (1 / edge ** 2 + 1 / hole ** 2);
    expect(relative(pistonDrop_Pa, wanted)).toBeLessThan(1e-3);
  });

  it('says where the bleed cavitates: in rebound above 1.5 times the gas pressure for a coefficient near 0.8', () => {
    // Source: Nurick 1976 (from memory), K_crit = (Cd / 0.62)^2. The long orifice at l/d = 3 has Cdu = 0.8015: K = 1.671 and
    // dp / p2 = 1 / (K - 1) = 1.49; no shims that open, little viscosity, gas 1.1 MPa: from 1.64 MPa on.
    const thin = { density_kg_m3: 844, dynamicViscosity_Pa_s: 1e-6 };
    const at = (drop_Pa: number, sign: number, gas_Pa = 1.1e6) => {
      const flow = 0.8015 * Math.PI * 0.64e-6 * Math.sqrt((2 * drop_Pa) / 844);
      const gas = { ...MONOTUBE.gas, absolutePressure_Pa: gas_Pa };
      return pointAt((sign * flow) / 1366.5928e-6, { fluid: thin, gas }, { crackingPressure_Pa: 1e12 }).bleedCavitates;
    };
    expect([at(1.55e6, -1), at(1.75e6, -1)]).toEqual([false, true]);
    // In compression p2 = gas - dp: K = gas / dp, so from 0.598 of the gas pressure on.
    expect([at(0.58 * 3e6, 1, 3e6), at(0.62 * 3e6, 1, 3e6)]).toEqual([false, true]);
    expect(pointAt(0)).not.toHaveProperty('bleedCavitates');
  });

  it.each<[string, string, Partial<DamperInput>]>([
    ['bleed.needle.one-hole', 'bleed.count', withNeedle(1e-3, 2)],
    ['damper.negative', 'bleed.needle.travel_m', withNeedle(-1e-3)],
    ['bleed.needle.cone', 'bleed.needle.coneAngle_rad', withNeedle(1e-3, 1, 0)],
    ['damper.not-positive', 'pistonBand.clearance_m', { pistonBand: { ...pistonBand, clearance_m: 0 } }],
    ['damper.not-positive', 'pistonBand.length_m', { pistonBand: { ...pistonBand, length_m: -1 } }],
    ['damper.piston-band.too-loose', 'pistonBand.clearance_m', { pistonBand: { ...pistonBand, clearance_m: 2.3e-3 } }],
    [
      'damper.piston-band.eccentricity',
      'pistonBand.eccentricity',
      { pistonBand: { ...pistonBand, eccentricity: 1.1 } },
    ],
  ])('refuses with %s at %s', (code, path, damper) => {
    expect(() => curve([0.1], damper)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code, path }) }),
    );
  });
});
