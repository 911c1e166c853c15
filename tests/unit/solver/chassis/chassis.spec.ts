import { describe, expect, it } from 'vitest';
import { dampingRatios } from '../../../../src/solver/chassis/damping-ratio.ts';
import { constantLinkage, tableLinkage } from '../../../../src/solver/chassis/linkage.ts';
import { sagUnder } from '../../../../src/solver/chassis/sag.ts';
import { coilLaw } from '../../../../src/solver/chassis/spring-laws.ts';
import type { ChassisInput } from '../../../../src/solver/chassis/types.ts';
import { vibrationOf } from '../../../../src/solver/chassis/vibration.ts';
import { wantedForce } from '../../../../src/solver/chassis/wanted-force.ts';
import { wheelState } from '../../../../src/solver/chassis/wheel-state.ts';

/** 100 kg on 20 kN/m, straight through; every number below is by hand from this. */
const plain: ChassisInput = {
  vehicleSprungMass_kg: 100,
  riderSprungMass_kg: 0,
  wheelTravel_m: 0.3,
  linkage: constantLinkage(1),
  springs: [coilLaw(20_000, 0)],
  damperCount: 1,
  legAngle_rad: 0,
};

const swings = (chassis: ChassisInput, mass_kg = 100, x = 0) => {
  const vibration = vibrationOf(chassis, wheelState(chassis, x), mass_kg);
  if (vibration.status !== 'swings') throw new Error('it does not swing');
  return vibration;
};

describe('the sprung mass on its springs', () => {
  // sqrt(20000/100)/2 pi and 1200/(2 sqrt(20000*100)), worked by hand.
  it('has its frequency and its critical damping', () => {
    const { naturalFrequency_Hz, criticalDamping_N_s_m } = swings(plain);
    expect(naturalFrequency_Hz).toBeCloseTo(2.250791, 6);
    expect(1200 / criticalDamping_N_s_m).toBeCloseTo(0.424264, 6);
  });

  // Static deflection against frequency: 10 in is 1 Hz, 5 in 1.4 Hz, 1 in 3.13 Hz.
  // T. D. Gillespie, Fundamentals of Vehicle Dynamics (1992), chapter 5, from memory; printed to 1 %.
  it.each([
    [10, 0.99],
    [5, 1.4],
    [1, 3.13],
  ])('swings by its static deflection of %d in at %d Hz', (deflection_in, frequency_Hz) => {
    const deflection_m = deflection_in * 0.0254;
    const chassis = { ...plain, springs: [coilLaw((100 * 9.80665) / deflection_m, 0)] };
    const sag = sagUnder(chassis, 100);
    expect(sag).toMatchObject({ status: 'balanced' });
    expect('state' in sag && sag.state.wheelTravel_m).toBeCloseTo(deflection_m, 9);
    expect(Math.abs(swings(chassis).naturalFrequency_Hz / frequency_Hz - 1)).toBeLessThan(0.01);
  });

  it('does not swing without mass or with a rate of 0 or less', () => {
    expect(vibrationOf(plain, wheelState(plain, 0), 0)).toEqual({ status: 'no-swing' });
    const falling = { ...plain, linkage: tableLinkage([0, 0.1], [1, 0.2]), springs: [coilLaw(1000, 0.2)] };
    expect(vibrationOf(falling, wheelState(falling, 0.05), 100)).toEqual({ status: 'no-swing' });
  });
});

describe('the motion ratio', () => {
  // 20000 * 0.5^2 = 5000 N/m and 1200 * 0.5^2 = 300 N s/m at the wheel.
  it('acts by its square on rates and on damping', () => {
    const half = { ...plain, linkage: constantLinkage(0.5) };
    const state = wheelState(half, 0.1);
    expect(state.wheelRate_N_m).toBeCloseTo(5000, 9);
    expect(state.springForce_N).toBeCloseTo(0.5 * 20_000 * 0.05, 9);
    const { criticalDamping_N_s_m, criticalShaftDamping_N_s_m } = swings(half);
    expect(criticalDamping_N_s_m / criticalShaftDamping_N_s_m).toBeCloseTo(0.25, 12);
  });

  // r = 0.5 + x: s = 0.05 + 0.005 = 0.055 m at x = 0.1 m, F = 1100 N, k r^2 = 7200 N/m, F dr/dx = 1100 N/m.
  it('adds the force times its change', () => {
    const rising = { ...plain, linkage: tableLinkage([0, 0.2], [0.5, 0.7]) };
    const state = wheelState(rising, 0.1);
    expect(state.link).toEqual({
      shaftTravel_m: expect.closeTo(0.055, 12),
      ratio: 0.6,
      ratioSlope_1_m: expect.closeTo(1, 12),
    });
    expect(state.rateOfSprings_N_m).toBeCloseTo(7200, 6);
    expect(state.rateOfLinkage_N_m).toBeCloseTo(1100, 6);
  });

  it('holds its end values outside the table', () => {
    const linkage = tableLinkage([0.1, 0.2], [0.5, 0.7]);
    expect(linkage(0.05)).toEqual({ shaftTravel_m: 0.025, ratio: 0.5, ratioSlope_1_m: 0 });
    expect(linkage(0.3)).toMatchObject({ ratio: 0.7, ratioSlope_1_m: 0 });
    expect(linkage(0.3).shaftTravel_m).toBeCloseTo(0.05 + 0.06 + 0.07, 12);
  });
});

describe('a fork leaned back', () => {
  // cos 60 deg = 1/2: the legs carry half of an upright load, and the upright rate is four times that along them.
  it('carries by its angle', () => {
    const leaned = { ...plain, legAngle_rad: Math.PI / 3, damperCount: 2 };
    const sag = sagUnder(leaned, 100);
    expect('state' in sag && sag.state.wheelTravel_m).toBeCloseTo((100 * 9.80665) / 2 / 20_000, 9);
    expect(wheelState(leaned, 0).wheelRate_N_m).toBeCloseTo(80_000, 6);
    const { criticalDamping_N_s_m, criticalShaftDamping_N_s_m } = swings(leaned);
    expect(criticalDamping_N_s_m / criticalShaftDamping_N_s_m).toBeCloseTo(2 / 0.25, 9);
  });
});

describe('sag', () => {
  it('is 0 where the preload holds more, and all of the travel where nothing holds', () => {
    expect(sagUnder({ ...plain, springs: [coilLaw(20_000, 0.1)] }, 100)).toMatchObject({
      status: 'topped-out',
      state: { wheelTravel_m: 0 },
    });
    expect(sagUnder(plain, 1000)).toMatchObject({ status: 'bottomed-out', state: { wheelTravel_m: 0.3 } });
  });

  it('says why where the springs give no number', () => {
    const broken = { ...plain, springs: [() => ({ force_N: Number.POSITIVE_INFINITY, rate_N_m: 1 })] };
    expect(sagUnder(broken, 100).status).toBe('topped-out');
    const jumps = {
      ...plain,
      springs: [(s: number) => ({ force_N: s < 0.0511 ? 0 : s < 0.0512 ? Number.NaN : 1e6, rate_N_m: 1 })],
    };
    expect(sagUnder(jumps, 100)).toMatchObject({ status: 'not-converged', reason: expect.stringContaining('NaN') });
  });

  it('is the first balance from full extension', () => {
    const falling = { ...plain, linkage: tableLinkage([0, 0.1, 0.3], [1, 1, 0.05]) };
    const sag = sagUnder(falling, 150);
    expect('state' in sag && sag.state.wheelTravel_m).toBeCloseTo((150 * 9.80665) / 20_000, 9);
  });
});

describe('the damping ratio of a curve', () => {
  // F = 300 v + 100 v^2: secant 300 + 100 v; F' = 300 + 200 v, which three points of a parabola give exactly.
  it('is a secant from rest and a tangent, which differ', () => {
    const speeds = [0.9, 1, 1.1];
    const { secant, tangent } = dampingRatios(
      speeds,
      speeds.map((v) => 300 * v + 100 * v * v),
      1000,
    );
    expect(secant[1]).toBeCloseTo(0.4, 12);
    expect(tangent[1]).toBeCloseTo(0.5, 3);
  });

  it('is that of a dashpot at every speed and by both', () => {
    const { secant, tangent } = dampingRatios([-1, -0.5, 0.5, 1], [-500, -250, 250, 500], 1000);
    for (const ratio of [...secant, ...tangent]) expect(ratio).toBeCloseTo(0.5, 12);
  });

  it('leaves gaps where there is no force, and has no slope through one point', () => {
    const { secant, tangent } = dampingRatios([-0.5, 0.5, 1], [-100, null, 300], 1000);
    expect(secant).toEqual([0.2, null, 0.3]);
    expect(tangent).toEqual([null, null, null]);
  });
});

describe('the force that damping ratios ask for', () => {
  const goal = { lowSpeedRatio: 0.5, highSpeedRatio: 0.2, kneeSpeed_m_s: 0.3 };
  // 1000 * 0.5 * 0.2 = 100; 1000 * (0.5 * 0.3 + 0.2 * 0.7) = 290.
  it('is a line up to the knee and another beyond it', () => {
    expect(wantedForce(goal, 1000, 0.2)).toBeCloseTo(100, 12);
    expect(wantedForce(goal, 1000, 1)).toBeCloseTo(290, 12);
  });
});
