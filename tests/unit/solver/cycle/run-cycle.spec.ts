import { describe, expect, it } from 'vitest';
import { elementModel } from '../../../../src/proof/cycle-elements.ts';
import { driveFor, type SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { forceLoop, peakForces } from '../../../../src/solver/cycle/read-cycle.ts';
import { runCycle } from '../../../../src/solver/cycle/run-cycle.ts';
import type { CycleModel, CycleOptions, CycleRun } from '../../../../src/solver/cycle/types.ts';
import { PLAIN, pistonArea, rodArea, TRAVEL_M, threeChambers } from '../../../helpers/cycle-models.ts';

const SINE: SineDrive = { kind: 'sine', stroke_m: 0.06, frequency_Hz: 2, middle_m: 0.05 };
const P_ATM = 101325;

function finished(model: CycleModel, sine: Partial<SineDrive> = {}, options?: CycleOptions): CycleRun {
  const result = runCycle(model, driveFor({ ...SINE, ...sine }, model.travel_m), options);
  if (result.status !== 'finished') throw new Error(result.reason);
  return result;
}

describe('a closed chamber', () => {
  const [A, V, K, p] = [14.608e-4, 146e-6, 1.5e9, 2e7];
  const closed = elementModel({
    area_m2: A,
    volume_m3: V,
    bulkModulus_Pa: K,
    flow: () => 0,
    largestDrop_Pa: 3e8,
    travel_m: 1e-3,
  });

  it('follows the law of its oil and gives everything back', () => {
    // Own: p = p1 - K ln(V/V1) for a bulk modulus that does not change; V falls by A a metre.
    const result = finished(closed, { stroke_m: 1e-3, middle_m: 0.5e-3 }, { pressureTolerance_Pa: 1 });
    const loop = forceLoop(result);
    const start = V + A * 0.5e-3;
    for (const [k, x] of loop.position_m.entries()) {
      const wanted = A * (p - K * Math.log(1 - (A * x) / start) - P_ATM);
      expect(Math.abs(loop.force_N[k] / wanted - 1)).toBeLessThan(1e-7);
    }
    expect(Math.abs(result.energy.work_J)).toBeLessThan(1e-6);
    expect(result.energy.oil_J).toBe(0);
  });
});

describe('a damper whose valves stand open', () => {
  const wide = { a: 1e3, b: 1e6, cracks_Pa: 0 };
  const model = threeChambers({
    ...PLAIN,
    airFraction: 0,
    pistonBleed: wide,
    baseBleed: wide,
  });

  it('pushes with its gas alone: p V^n at every position, and takes nothing', () => {
    const result = finished(model, { frequency_Hz: 0.5 });
    const { series, energy } = result;
    const V0 = 4 * rodArea(PLAIN) * TRAVEL_M;
    for (const [k, x] of series.position_m.entries()) {
      const p = 1.2e6 * (V0 / (V0 - rodArea(PLAIN) * x)) ** 1.3;
      const gas_N = (p - P_ATM) * rodArea(PLAIN);
      // Oil yields by p/K of some 0.3 L, a thousandth of the gas.
      expect(Math.abs(series.force_N[k] / gas_N - 1)).toBeLessThan(3e-3);
    }
    expect(Math.abs(energy.stored_J)).toBeLessThan(1e-6);
    expect(energy.work_J).toBeLessThan(2e-3);
  });
});

describe('three chambers on a sine stroke', () => {
  const model = threeChambers(PLAIN);
  const result = finished(model);

  it('samples all of it, counts the last period, and closes the loop', () => {
    const { series, counted } = result;
    expect(series.time_s.length).toBe(3 * 240 + 1);
    expect(counted).toEqual({ first: 480, last: 720 });
    expect(series.time_s[720]).toBe(1.5);
    expect(series.force_N[720] - series.force_N[480]).toBeCloseTo(0, 0);
    expect(Object.keys(series.pressure_Pa)).toEqual(['reservoir', 'compression', 'rebound']);
    expect(finished(model, { cycles: 1 }, { samples: 40 }).series.time_s.length).toBe(41);
  });

  it('balances its energy: 4 parts in a million are lost at most', () => {
    const { work_J, balanceError_J, oil_J, stored_J } = result.energy;
    expect(work_J).toBeGreaterThan(10);
    expect(Math.abs(balanceError_J)).toBeLessThan(4e-6 * work_J);
    expect(Math.abs(work_J - oil_J - stored_J)).toBeLessThan(4e-6 * work_J);
    expect(Math.abs(stored_J)).toBeLessThan(1e-4 * work_J);
  });

  it('says how well it settled, and nothing about it after one period', () => {
    expect(Math.abs(result.settling?.force_N ?? Number.NaN)).toBeLessThan(2);
    expect(Math.abs(result.settling?.work_J ?? Number.NaN)).toBeLessThan(0.01);
    expect(finished(model, { cycles: 1 }).settling).toBeUndefined();
    // From rest to the first turn the gas is pressed from full extension on; what the second cycle takes more is its work less the first.
    const [one, two] = [1, 2].map((cycles) => finished(model, { cycles }));
    expect(two.settling?.work_J).toBeCloseTo(two.energy.work_J - one.energy.work_J, 6);
    expect(Math.abs(two.settling?.work_J ?? 0)).toBeGreaterThan(1e-6);
  });

  it('comes closer to itself with a finer tolerance, and reports the error of its steps', () => {
    const fine = finished(model, {}, { pressureTolerance_Pa: 0.1 });
    const worst = (other: CycleRun) =>
      Math.max(...other.series.force_N.map((force, k) => Math.abs(force - fine.series.force_N[k])));
    const [coarse, middle] = [1000, 10].map((pressureTolerance_Pa) => finished(model, {}, { pressureTolerance_Pa }));
    expect(worst(middle)).toBeLessThan(worst(coarse));
    expect(worst(middle)).toBeLessThan(1);
    expect(worst(result)).toBeLessThan(5);
    expect(coarse.integration.largestPressureError_Pa).toBeLessThanOrEqual(1000);
    expect(middle.integration.largestPressureError_Pa).toBeLessThanOrEqual(10);
    expect(fine.integration.steps).toBeGreaterThan(coarse.integration.steps);
  });

  it('at a crawl passes what the static law says: peak flow through each valve, force from its drops', () => {
    const sine = { frequency_Hz: 0.05, cycles: 1 };
    const slow = finished(threeChambers({ ...PLAIN, airFraction: 0 }), sine, { pressureTolerance_Pa: 1 });
    const v = Math.PI * 0.06 * 0.05;
    const { compression, rebound } = peakForces(slow);
    const at = (k: number) => slow.series.gasPressure_Pa[k];
    const [A_p, A_r] = [pistonArea(PLAIN), rodArea(PLAIN)];
    const A_a = A_p - A_r;
    // Static: all flows follow from volumes; below their cracks only the bleeds pass, dp = a Q + b Q^2.
    const drop = ({ a, b }: { a: number; b: number }, Q: number) => a * Q + b * Q * Q;
    const pistonDrop = drop(PLAIN.pistonBleed, A_a * v);
    const baseDrop = drop(PLAIN.baseBleed, A_r * v);
    const p_c = at(60) + baseDrop;
    const F = (p_c - P_ATM) * A_p - (p_c - pistonDrop - P_ATM) * A_a;
    expect(pistonDrop).toBeLessThan(PLAIN.compression.cracks_Pa);
    expect(compression.speed_m_s).toBeCloseTo(v, 12);
    // However slow, the gas rises with the stroke and the oil yields to it: V/(K A) dp/dx, some parts in ten thousand of the flow.
    expect(Math.abs(compression.force_N - F)).toBeLessThan(2e-4 * F);
    expect(rebound.force_N).toBeLessThan(compression.force_N - pistonDrop * A_a);
  });

  it('shows where oil pulls apart: pressure at the floor, a void, and none once it has filled again', () => {
    const starved = finished(threeChambers({ ...PLAIN, gas_Pa: 1.5e5 }), { frequency_Hz: 4 });
    const [pressure, voids] = [starved.series.pressure_Pa.rebound, starved.series.void_m3.rebound];
    expect(Math.min(...pressure)).toBe(P_ATM);
    expect(Math.max(...voids)).toBeGreaterThan(1e-6);
    for (const [k, empty] of voids.entries()) if (empty > 0) expect(pressure[k]).toBe(P_ATM);
    expect(voids.some((empty, k) => empty === 0 && k > starved.counted.first)).toBe(true);
  });

  it('leaves empty what the piston draws and no valve lets in, and presses only once that is filled', () => {
    // By hand: a ring of A_a moves 20 mm out of the rebound chamber, whose oil starts at 1.2 MPa and hardly stretches.
    const shut = { a: 1e15, b: 0, cracks_Pa: 0 };
    const closed = threeChambers({ ...PLAIN, airFraction: 0, pistonBleed: shut, compression: shut, rebound: shut });
    const { series } = finished(closed, { stroke_m: 0.02, frequency_Hz: 1, cycles: 1 });
    const drawn = (pistonArea(PLAIN) - rodArea(PLAIN)) * 0.02;
    expect(Math.abs(series.void_m3.rebound[120] / drawn - 1)).toBeLessThan(0.02);
    expect(series.pressure_Pa.rebound[200]).toBe(P_ATM);
    expect(series.void_m3.rebound[240]).toBe(0);
    expect(series.pressure_Pa.rebound[240]).toBeGreaterThan(1e6);
  });

  it('with air in its oil lags more', () => {
    const work = (airFraction: number) => finished(threeChambers({ ...PLAIN, airFraction })).series.pressure_Pa.rebound;
    const [clean, foamed] = [work(0), work(0.05)];
    // Early in the compression stroke the foam still yields where clean oil already presses.
    expect(foamed[500] - P_ATM).not.toBeCloseTo(clean[500] - P_ATM, -3);
  });

  it('shuts its refill late when the check lags: oil runs back as compression begins', () => {
    const pressures = (checkLag_s: number) =>
      finished(threeChambers({ ...PLAIN, checkLag_s }), { frequency_Hz: 5 }).series.pressure_Pa.compression;
    const [atOnce, soon, late] = [pressures(0), pressures(1e-5), pressures(5e-3)];
    expect(late[486]).toBeLessThan(atOnce[486] - 1e5);
    for (const [k, p] of soon.entries()) expect(Math.abs(p - atOnce[k])).toBeLessThan(3e3);
  });

  it('drags oil past its piston where there is a clearance, and presses less', () => {
    const peak = (draggedArea_m2: number) => peakForces(finished(threeChambers({ ...PLAIN, draggedArea_m2 })));
    const [tight, loose] = [peak(0), peak(2e-5)];
    expect(loose.compression.force_N).toBeLessThan(tight.compression.force_N);
    expect(loose.rebound.force_N).toBeGreaterThan(tight.rebound.force_N);
  });

  it('takes a floating piston for friction: force times way, out and back (any vibration text, Coulomb friction)', () => {
    const { energy, series, counted } = finished(threeChambers({ ...PLAIN, separatorFriction_Pa: 3e4 }));
    const gas_m3 = series.gasPressure_Pa
      .slice(counted.first)
      .map((p) => 4 * rodArea(PLAIN) * TRAVEL_M * (1.2e6 / p) ** (1 / 1.3));
    const way_m3 = Math.max(...gas_m3) - Math.min(...gas_m3);
    // All of the stroke but what the oil springs.
    expect(way_m3 / (0.06 * rodArea(PLAIN))).toBeGreaterThan(0.97);
    expect(way_m3 / (0.06 * rodArea(PLAIN))).toBeLessThan(1);
    expect(Math.abs(energy.separator_J / (2 * 3e4 * way_m3) - 1)).toBeLessThan(1e-3);
    expect(result.energy.separator_J).toBe(0);
  });

  it('adds a stop and friction to the force, and their work to the balance', () => {
    const stopped: CycleModel = {
      ...model,
      friction: (v) => 80 * v,
      stop: (x, v) => (x > 0.06 && v > 0 ? 5e4 * (x - 0.06) * v : 0),
    };
    const other = finished(stopped);
    const [w, X] = [4 * Math.PI, 0.03];
    expect(Math.abs(other.energy.friction_J / (Math.PI * 80 * w * X * X) - 1)).toBeLessThan(1e-6);
    // Integral of 5e4 (x - 0.06) v dx on the way from 0.06 to 0.08, v = w sqrt(X^2 - (x - 0.05)^2), by the midpoint rule.
    const n = 20000;
    let stop_J = 0;
    for (let i = 0; i < n; i++) {
      const u = 0.01 + (0.02 * (i + 0.5)) / n;
      stop_J += (5e4 * (u - 0.01) * w * Math.sqrt(X * X - u * u) * 0.02) / n;
    }
    // Its kink lies within a step.
    expect(Math.abs(other.energy.stop_J / stop_J - 1)).toBeLessThan(2e-3);
    const k = 540;
    const { force_N, frictionForce_N, stopForce_N } = other.series;
    expect(force_N[k] - frictionForce_N[k] - stopForce_N[k]).toBeCloseTo(result.series.force_N[k], 1);
  });

  it('reads no peak at the first moment of a trace that sets out at its fastest, with the damper at rest', () => {
    const time_s = Array.from({ length: 41 }, (_, i) => i / 200);
    const trace = { kind: 'trace', time_s, position_m: time_s.map((t) => 0.03 + 0.4 * t - t * t) } as const;
    const run = runCycle(model, driveFor(trace, TRAVEL_M));
    if (run.status !== 'finished') throw new Error(run.reason);
    const { speed_m_s, force_N } = run.series;
    expect(Math.max(...speed_m_s)).toBe(speed_m_s[0]);
    const { compression } = peakForces(run);
    expect(compression.speed_m_s).toBeGreaterThan(0.39);
    expect(compression.force_N).toBeGreaterThan(1.1 * force_N[0]);
  });

  it('follows a trace through its points as it follows the sine', () => {
    const sine = driveFor({ ...SINE, cycles: 2 }, TRAVEL_M);
    const time_s = Array.from({ length: 401 }, (_, i) => (sine.end_s * i) / 400);
    const trace = driveFor({ kind: 'trace', time_s, position_m: time_s.map(sine.position) }, TRAVEL_M);
    const [other, same] = [runCycle(model, trace, { samples: 480 }), runCycle(model, sine)];
    if (other.status !== 'finished' || same.status !== 'finished') throw new Error('a run failed');
    expect(other.counted).toEqual({ first: 0, last: 480 });
    expect(other.settling).toBeUndefined();
    const range = Math.max(...same.series.force_N) - Math.min(...same.series.force_N);
    for (const [k, force] of same.series.force_N.entries()) {
      expect(Math.abs(other.series.force_N[k] - force)).toBeLessThan(0.02 * range);
    }
  });
});
