/** Laws that hold for every monotube, whatever its sizes. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { forceCurveWith } from '../../src/solver/damper/force-curve.ts';
import { totalFlow } from '../../src/solver/damper/path-flows.ts';
import { pistonAreas } from '../../src/solver/damper/piston-areas.ts';
import type { DamperInput, ForcePoint } from '../../src/solver/damper/types.ts';
import { anyDamper, anyMonotube, anyStack, between } from '../helpers/any-damper.ts';
import { type LinearStack, linearStacks } from '../helpers/linear-stack.ts';
import { MONOTUBE } from '../helpers/monotube.ts';

const SPEEDS = [-1.5, -0.7, -0.3, -0.1, -0.03, -0.001, 0, 0.001, 0.03, 0.1, 0.3, 0.7, 1.5];

function solve(damper: DamperInput, stack: LinearStack, speeds: readonly number[] = SPEEDS): ForcePoint[] {
  const { points } = forceCurveWith(linearStacks(stack), damper, speeds, { theory: 'small-deflection' });
  return points.filter((point) => point.status === 'converged');
}

const annulus = ({ boreDiameter_m: b, rodDiameter_m: r }: DamperInput) => (Math.PI / 4) * (b * b - r * r);

/** Runs a law over many dampers; at least one point of each must have solved. */
const holds = (law: (points: ForcePoint[], damper: DamperInput, stack: LinearStack) => void) =>
  fc.assert(
    fc.property(anyDamper, anyStack, (damper, stack) => {
      const points = solve(damper, stack);
      expect(points.length).toBeGreaterThan(2);
      law(points, damper, stack);
    }),
  );

describe('every damper', () => {
  it('conserves volume: the paths carry what the piston displaces, less only where air is released', () => {
    holds((points, damper) => {
      const { piston_m2, rod_m2, annulus_m2 } = pistonAreas(damper);
      const closes = (got: number, wanted: number, v: number) =>
        expect(Math.abs(got - wanted)).toBeLessThanOrEqual(1e-9 * piston_m2 * Math.abs(v));
      for (const { flows, base, shaftSpeed_m_s: v, voids_m3_s = {} } of points) {
        const { compression = 0, rebound = 0 } = voids_m3_s;
        closes(totalFlow(flows), annulus_m2 * Math.abs(v) - (v > 0 ? rebound : -rebound), v);
        const toGas = rod_m2 * v + compression + rebound;
        if (base) closes(totalFlow(base.flows), Math.abs(toGas), v);
      }
    });
  });

  it('pushes back harder the faster it moves', () => {
    holds((points) => {
      for (let i = 1; i < points.length; i++) {
        const [slow, fast] = [points[i - 1], points[i]];
        const limited = slow.airRelease && fast.airRelease;
        const least = limited ? -1e-6 : 0;
        expect(fast.dampingForce_N - slow.dampingForce_N).toBeGreaterThanOrEqual(least);
        expect(fast.force_N - slow.force_N).toBeGreaterThanOrEqual(least);
      }
    });
  });

  it('never gives energy back: damping and friction work against the motion', () => {
    holds((points) => {
      for (const { shaftSpeed_m_s: v, dampingForce_N, frictionForce_N } of points) {
        expect(dampingForce_N * v).toBeGreaterThanOrEqual(0);
        expect(frictionForce_N * v).toBeGreaterThanOrEqual(0);
      }
    });
  });

  it('pushes with the gas alone at rest', () => {
    holds((points, damper) => {
      const rest = points.find(({ shaftSpeed_m_s }) => shaftSpeed_m_s === 0);
      const sinks = (Math.PI / 4) * (damper.legDiameter_m ?? damper.rodDiameter_m) ** 2;
      expect(rest?.force_N).toBeCloseTo((damper.gas.absolutePressure_Pa - 101325) * sinks, 9);
    });
  });

  it('keeps every chamber at or above the air-release pressure', () => {
    holds((points) => {
      for (const p of points) {
        expect(Math.min(p.compressionPressure_Pa, p.reboundPressure_Pa)).toBeGreaterThan(101325 * (1 - 1e-9));
      }
    });
  });

  it('of a monotube: with one valve in both directions damps alike in both', () => {
    fc.assert(
      fc.property(anyMonotube, anyStack, between(1e-3, 1), (damper, stack, v) => {
        const both = { ...damper, rebound: damper.compression, gas: { ...damper.gas, absolutePressure_Pa: 1e9 } };
        const points = solve(both, stack, [v, -v]);
        fc.pre(points.length === 2);
        expect(points[1].dampingForce_N / points[0].dampingForce_N).toBeCloseTo(-1, 9);
      }),
    );
  });

  it('loses no more pressure with more bleed, and none of its flow goes astray without any', () => {
    fc.assert(
      fc.property(anyDamper, anyStack, between(1e-3, 1), (damper, stack, v) => {
        const withBleed = (count: number) => ({ ...damper, bleed: { ...damper.bleed, count } });
        const [none, one, two] = [0, 1, 2].map((n) => solve(withBleed(n), stack, [-v])[0]);
        fc.pre(none !== undefined && one !== undefined && two !== undefined);
        expect(none.flows.bleed_m3_s).toBe(0);
        expect(one.pistonDrop_Pa).toBeLessThanOrEqual(none.pistonDrop_Pa * (1 + 1e-9));
        expect(two.pistonDrop_Pa).toBeLessThanOrEqual(one.pistonDrop_Pa * (1 + 1e-9));
      }),
    );
  });
});

/** Energy over one sine cycle x = X sin wt, by the midpoint rule (spectrally exact for the smooth part) [J]. */
function energyPerCycle(damper: DamperInput, X: number, w: number, force: (point: ForcePoint) => number): number {
  const steps = 4096;
  const speeds = Array.from({ length: steps }, (_, i) => X * w * Math.cos((2 * Math.PI * (i + 0.5)) / steps));
  const rigid: LinearStack = { compliance_m_Pa: 1e-9, crackingPressure_Pa: 1e12 };
  const points = solve(damper, rigid, speeds);
  expect(points.length).toBe(steps);
  const dt = (2 * Math.PI) / w / steps;
  return points.reduce((sum, point) => sum + force(point) * point.shaftSpeed_m_s * dt, 0);
}

describe('a damper whose stacks never open, on a sine stroke', () => {
  const X = 0.02;
  const w = 2 * Math.PI * 5;
  const gas = { ...MONOTUBE.gas, absolutePressure_Pa: 1e8 };

  it('with a sharp hole and thin oil takes (8/3) c2 w^2 X^3', () => {
    // Source: any vibration text, quadratic damping; c2 = rho A^3 / (2 (Cd A_hole)^2) with Cd = pi/(pi+2).
    const damper: DamperInput = {
      ...MONOTUBE,
      gas,
      bleed: { count: 1, diameter_m: 3e-3, length_m: 0.1e-3 },
      fluid: { density_kg_m3: 844, dynamicViscosity_Pa_s: 1e-9 },
    };
    const c2 = (844 * annulus(damper) ** 3) / (2 * ((Math.PI / (Math.PI + 2)) * (Math.PI / 4) * 9e-6) ** 2);
    const energy = energyPerCycle(damper, X, w, ({ dampingForce_N }) => dampingForce_N);
    expect(Math.abs(energy / ((8 / 3) * c2 * w ** 2 * X ** 3) - 1)).toBeLessThan(1e-5);
  });

  it('with syrup takes pi c w X^2', () => {
    // Source: any vibration text, linear damping; c = 24 mu A^2 / d^3 (Sampson).
    const damper: DamperInput = {
      ...MONOTUBE,
      gas: { ...gas, absolutePressure_Pa: 1e10 },
      bleed: { count: 1, diameter_m: 6e-3, length_m: 0.1e-3 },
      fluid: { density_kg_m3: 1e-5, dynamicViscosity_Pa_s: 0.5 },
    };
    const c = (24 * 0.5 * annulus(damper) ** 2) / 6e-3 ** 3;
    const energy = energyPerCycle(damper, X, w, ({ dampingForce_N }) => dampingForce_N);
    expect(Math.abs(energy / (Math.PI * c * w * X ** 2) - 1)).toBeLessThan(1e-5);
  });

  it('takes 4 F X by its seal friction, and nothing by its gas', () => {
    // Source: any vibration text, Coulomb friction.
    const damper = { ...MONOTUBE, gas, bleed: { count: 4, diameter_m: 3e-3, length_m: 5e-3 } };
    const friction = energyPerCycle(damper, X, w, ({ frictionForce_N }) => frictionForce_N);
    expect(Math.abs(friction / (4 * 30 * X) - 1)).toBeLessThan(1e-5);
    expect(Math.abs(energyPerCycle(damper, X, w, ({ gasForce_N }) => gasForce_N))).toBeLessThan(1e-6);
  });
});
