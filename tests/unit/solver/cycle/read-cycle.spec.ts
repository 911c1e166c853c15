import { describe, expect, it } from 'vitest';
import { elementModel } from '../../../../src/proof/cycle-elements.ts';
import { driveFor } from '../../../../src/solver/cycle/drive.ts';
import {
  chamberExtremes,
  forceLoop,
  heatingPower,
  hysteresisAt,
  hysteresisBothWays,
  peakForces,
  warmingPerMinute,
} from '../../../../src/solver/cycle/read-cycle.ts';
import { runCycle } from '../../../../src/solver/cycle/run-cycle.ts';
import type { CycleRun } from '../../../../src/solver/cycle/types.ts';

const [S, F_HZ] = [0.06, 2];
const V = Math.PI * S * F_HZ;

/** F = 900 v + 500 v |v| + 40 dv/dt-like lag term: a loop made by hand, two periods long. */
function handMade(lag_N: number): CycleRun {
  const samples = 400;
  const phase = (k: number) => (2 * Math.PI * k) / samples;
  const array = (value: (k: number) => number) => Float64Array.from({ length: 2 * samples + 1 }, (_, k) => value(k));
  const speed = (k: number) => V * Math.sin(phase(k));
  const force = (k: number) => 900 * speed(k) + 500 * speed(k) * Math.abs(speed(k)) - lag_N * Math.cos(phase(k)) + 100;
  return {
    status: 'finished',
    series: {
      time_s: array((k) => k / samples / F_HZ),
      position_m: array((k) => 0.05 - (S / 2) * Math.cos(phase(k))),
      speed_m_s: array(speed),
      force_N: array(force),
      frictionForce_N: array(() => 0),
      stopForce_N: array(() => 0),
      gasPressure_Pa: array(() => 1e6),
      pressure_Pa: { root: array((k) => (k < samples ? 0 : 1e6 + 1e5 * Math.sin(phase(k)))) },
      void_m3: { root: array((k) => (k === samples + 7 ? 3e-6 : 0)) },
      flow_m3_s: { root: array(() => 0) },
    },
    counted: { first: samples, last: 2 * samples },
    energy: { work_J: 20, oil_J: 12, friction_J: 5, stop_J: 2, separator_J: 1, stored_J: 0, balanceError_J: 0 },
    integration: { steps: 1, rejections: 0, evaluations: 1, largestPressureError_Pa: 0 },
  };
}

describe('what is read off a loop', () => {
  it('is the peak velocity point: the force at pi S f, both ways', () => {
    // By hand: v = 0.376991 m/s, 900 v + 500 v^2 = 410.353 N about the 100 N of the gas.
    const { compression, rebound } = peakForces(handMade(0));
    const wanted = 900 * V + 500 * V * V;
    expect(V).toBeCloseTo(0.376991, 6);
    expect(Math.abs(compression.speed_m_s / V - 1)).toBeLessThan(1e-12);
    expect(Math.abs(compression.force_N / (wanted + 100) - 1)).toBeLessThan(1e-4);
    expect(Math.abs(rebound.force_N / (100 - wanted) - 1)).toBeLessThan(1e-4);
    expect(rebound.speed_m_s).toBeCloseTo(-V, 12);
  });

  it('is the last period alone, closed', () => {
    const loop = forceLoop(handMade(30));
    expect(loop.force_N.length).toBe(401);
    expect(loop.force_N[0]).toBeCloseTo(loop.force_N[400], 9);
    expect(loop.time_s[0]).toBeCloseTo(0.5, 12);
  });

  it.each([0.3, -0.3, 0.05])('is the hysteresis at %d m/s: what the force lags by', (v) => {
    // By hand: the lag term is -/+ 30 sqrt(1 - (v/V)^2) on the way up and down.
    const hysteresis = hysteresisAt(forceLoop(handMade(30)), v);
    const half = 30 * Math.sqrt(1 - (v / V) ** 2) * Math.sign(v);
    const mean = 100 + 900 * v + 500 * v * Math.abs(v);
    expect(Math.abs((hysteresis?.accelerating_N ?? 0) - (mean - half))).toBeLessThan(0.05);
    expect(Math.abs((hysteresis?.decelerating_N ?? 0) - (mean + half))).toBeLessThan(0.05);
    expect(hysteresis?.difference_N).toBeCloseTo(-2 * half, 0);
  });

  it('is the hysteresis both ways at half the speed that it reaches, or at the one asked for', () => {
    const loop = forceLoop(handMade(30));
    const half = hysteresisBothWays(loop);
    expect(half.speed_m_s).toBeCloseTo(V / 2, 4);
    // By hand, as above: twice 30 sqrt(1 - 1/4), less on the way up in compression and more in rebound.
    expect(half.compression?.difference_N).toBeCloseTo(-60 * Math.sqrt(0.75), 0);
    expect(half.rebound?.difference_N).toBeCloseTo(60 * Math.sqrt(0.75), 0);
    expect(hysteresisBothWays(loop, 0.3).compression).toEqual(hysteresisAt(loop, 0.3));
    expect(hysteresisBothWays(loop, 2 * V)).toEqual({ speed_m_s: 2 * V });
  });

  it('is no hysteresis at a speed that it does not reach', () => {
    expect(hysteresisAt(forceLoop(handMade(30)), 0.4)).toBeUndefined();
    expect(hysteresisAt(forceLoop(handMade(30)), -0.4)).toBeUndefined();
  });

  it('is the heat a second, and the warming a minute', () => {
    // By hand: 12 + 5 + 2 + 1 J in half a second are 40 W, 2400 J a minute; 1200 J/K warm by 2 K.
    expect(heatingPower(handMade(0))).toBeCloseTo(40, 9);
    expect(warmingPerMinute(handMade(0), 1200)).toBeCloseTo(2, 9);
  });

  it('is the lowest and highest pressure and the largest void of what counts', () => {
    const { root } = chamberExtremes(handMade(0));
    expect(root.lowest_Pa).toBeCloseTo(0.9e6, 6);
    expect(root.highest_Pa).toBeCloseTo(1.1e6, 6);
    expect(root.largestVoid_m3).toBe(3e-6);
  });
});

describe('a lag of oil', () => {
  it('shows as hysteresis: 2 F sin phi cos phi about, for Maxwell', () => {
    // Source: dashpot c behind spring k, tan phi = w c/k; F lags, so at speed v the way up carries less than the way down.
    const [c, k, A] = [2000, 2e6, 1e-3];
    const model = elementModel({
      area_m2: A,
      volume_m3: (1.5e9 * A * A) / k,
      bulkModulus_Pa: 1.5e9,
      flow: (dp) => (A * A * dp) / c,
      largestDrop_Pa: 5e6,
      travel_m: 0.004,
    });
    const f = 20;
    const run = runCycle(model, driveFor({ kind: 'sine', stroke_m: 0.004, middle_m: 0.002, frequency_Hz: f }, 0.004));
    if (run.status !== 'finished') throw new Error(run.reason);
    const phi = Math.atan((2 * Math.PI * f * c) / k);
    const [peak, v] = [Math.PI * 0.004 * f, 0.1];
    const wanted = 2 * c * peak * Math.cos(phi) * Math.sin(phi) * Math.sqrt(1 - (v / peak) ** 2);
    const found = hysteresisAt(forceLoop(run), v);
    expect(Math.abs((found?.difference_N ?? 0) / -wanted - 1)).toBeLessThan(5e-3);
  });
});
