/** Laws that hold for every chassis: nothing is gained or lost between spring and wheel. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { constantLinkage, tableLinkage } from '../../src/solver/chassis/linkage.ts';
import { sagUnder } from '../../src/solver/chassis/sag.ts';
import { coilLaw, progressiveLaw } from '../../src/solver/chassis/spring-laws.ts';
import type { ChassisInput, Linkage } from '../../src/solver/chassis/types.ts';
import { wheelState } from '../../src/solver/chassis/wheel-state.ts';
import { between } from '../helpers/any-damper.ts';

const TRAVEL_M = 0.2;
const X = [0, 0.07, 0.13, TRAVEL_M];

const anyLinkage = fc
  .tuple(between(0.3, 1.2), between(0.3, 1.2), between(0.3, 1.2), between(0.3, 1.2))
  .map((ratios) => tableLinkage(X, ratios));
const anySpring = fc.oneof(
  fc.tuple(between(1e3, 1e5), between(0, 0.05)).map(([rate, preload]) => coilLaw(rate, preload)),
  fc
    .tuple(between(50, 2000), between(50, 4000), between(0, 0.04))
    .map(([first, second, preload]) => progressiveLaw([0, 0.05, 0.2], [0, first, first + second], preload)),
);
const chassisWith = (linkage: Linkage, springs: ChassisInput['springs']): ChassisInput => ({
  vehicleSprungMass_kg: 60,
  riderSprungMass_kg: 40,
  wheelTravel_m: TRAVEL_M,
  linkage,
  springs,
  damperCount: 1,
  legAngle_rad: 0,
});
const anyChassis = fc.tuple(anyLinkage, anySpring).map(([linkage, spring]) => chassisWith(linkage, [spring]));

/** Gauss-Legendre with 3 points on each of many intervals, which leaves no error worth telling here. */
function integral(f: (x: number) => number, from: number, to: number): number {
  const n = 400;
  const h = (to - from) / n;
  const nodes = [-Math.sqrt(0.6), 0, Math.sqrt(0.6)];
  const weights = [5 / 9, 8 / 9, 5 / 9];
  let sum = 0;
  for (let i = 0; i < n; i++)
    for (const [k, node] of nodes.entries()) sum += (weights[k] * h * f(from + h * (i + 0.5 + node / 2))) / 2;
  return sum;
}

describe('every chassis', () => {
  it('puts the work done at the wheel into its springs', () => {
    fc.assert(
      fc.property(anyChassis, between(0.02, TRAVEL_M), (chassis, to) => {
        const atWheel = integral((x) => wheelState(chassis, x).springForce_N, 0, to);
        const [spring] = chassis.springs;
        const inSpring = integral((s) => spring(s).force_N, 0, chassis.linkage(to).shaftTravel_m);
        expect(Math.abs(atWheel / inSpring - 1)).toBeLessThan(1e-5);
      }),
    );
  });

  it('has the wheel rate that its force at the wheel rises with', () => {
    const h = 1e-6;
    fc.assert(
      fc.property(anyChassis, between(0.005, 0.195), (chassis, x) => {
        fc.pre(X.every((knot) => Math.abs(knot - x) > 2 * h));
        const [low, high] = [x - h, x + h].map((at) => wheelState(chassis, at).springForce_N);
        const { wheelRate_N_m } = wheelState(chassis, x);
        expect(Math.abs((high - low) / (2 * h) - wheelRate_N_m)).toBeLessThan(1e-3 * Math.abs(wheelRate_N_m) + 20);
      }),
    );
  });

  it('with a table that does not change is one with a constant ratio', () => {
    fc.assert(
      fc.property(between(0.3, 1.2), anySpring, between(0, TRAVEL_M), (ratio, spring, x) => {
        const table = wheelState(chassisWith(tableLinkage(X, [ratio, ratio, ratio, ratio]), [spring]), x);
        const constant = wheelState(chassisWith(constantLinkage(ratio), [spring]), x);
        expect(table.rateOfLinkage_N_m).toBe(0);
        expect(table.springForce_N).toBeCloseTo(constant.springForce_N, 6);
        expect(table.wheelRate_N_m).toBeCloseTo(constant.wheelRate_N_m, 4);
      }),
    );
  });

  it('holds its load where it sags to', () => {
    fc.assert(
      fc.property(anyChassis, between(5, 300), (chassis, mass_kg) => {
        const sag = sagUnder(chassis, mass_kg);
        if (sag.status !== 'balanced') return;
        expect(sag.state.uprightForce_N / 9.80665).toBeCloseTo(mass_kg, 6);
      }),
    );
  });

  it('sags no less with the rider on it', () => {
    fc.assert(
      fc.property(anyChassis, (chassis) => {
        const [light, heavy] = [60, 100].map((mass) => sagUnder(chassis, mass));
        if (!('state' in light && 'state' in heavy)) throw new Error('no sag');
        expect(heavy.state.wheelTravel_m).toBeGreaterThanOrEqual(light.state.wheelTravel_m);
      }),
    );
  });
});
