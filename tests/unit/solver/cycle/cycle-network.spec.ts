import { describe, expect, it } from 'vitest';
import { CycleNetwork } from '../../../../src/solver/cycle/cycle-network.ts';
import { driveFor, type SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { runCycle } from '../../../../src/solver/cycle/run-cycle.ts';
import { bothFlow, PLAIN, TRAVEL_M, threeChambers } from '../../../helpers/cycle-models.ts';

const SINE: SineDrive = { kind: 'sine', stroke_m: 0.06, frequency_Hz: 4, middle_m: 0.05 };

describe('the rates of a damper', () => {
  it('shut a check that stands open without a drop in its lag: dy/dt = -y/tau', () => {
    const network = new CycleNetwork(threeChambers({ ...PLAIN, checkLag_s: 4e-3 }), driveFor(SINE, TRAVEL_M));
    const state = network.restingState();
    const rates = new Float64Array(state.length);
    expect(state.length).toBe(3);
    state[2] = 0.5;
    network.rates(0, state, rates);
    expect(rates[2]).toBeCloseTo(-125, 9);
  });

  it('fill a void with the flow of the valve, oil at air release, however large the void is', () => {
    const run = runCycle(threeChambers({ ...PLAIN, gas_Pa: 1.5e5 }), driveFor(SINE, TRAVEL_M));
    if (run.status !== 'finished') throw new Error(run.reason);
    const { void_m3, flow_m3_s, pressure_Pa } = run.series;
    const inward = bothFlow(PLAIN.pistonBleed, PLAIN.compression);
    let seen = 0;
    for (const [k, empty] of void_m3.rebound.entries()) {
      const drop = pressure_Pa.compression[k] - 101325;
      if (empty < 1e-6 || drop < 1e4) continue;
      seen++;
      // Air release is at the atmosphere, where the content of oil is its volume.
      expect(Math.abs(flow_m3_s.rebound[k] / inward(drop) + 1)).toBeLessThan(2e-3);
    }
    expect(seen).toBeGreaterThan(20);
  });

  it('balance their energy where a run ends with a void: that took its volume times the pressure of air release', () => {
    // By hand: the ring leaves 20 mm of an empty rebound chamber, 1366.6 mm2 * 20 mm * 0.101325 MPa = 2.77 J.
    const shut = { a: 1e15, b: 0, cracks_Pa: 0 };
    const model = threeChambers({ ...PLAIN, airFraction: 0, pistonBleed: shut, compression: shut, rebound: shut });
    const trace = { kind: 'trace', time_s: [0, 0.5, 1], position_m: [0.05, 0.06, 0.07] } as const;
    const run = runCycle(model, driveFor(trace, TRAVEL_M));
    if (run.status !== 'finished') throw new Error(run.reason);
    expect(run.series.void_m3.rebound.at(-1)).toBeGreaterThan(26e-6);
    expect(Math.abs(run.energy.balanceError_J)).toBeLessThan(0.05);
  });
});
