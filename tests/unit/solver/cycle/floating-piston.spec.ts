import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driveFor, type SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { FloatingPiston } from '../../../../src/solver/cycle/floating-piston.ts';
import { oilState } from '../../../../src/solver/cycle/oil-state.ts';
import { runCycle } from '../../../../src/solver/cycle/run-cycle.ts';
import type { CycleRun } from '../../../../src/solver/cycle/types.ts';
import { between } from '../../../helpers/any-damper.ts';
import {
  PLAIN,
  pistonArea,
  rodArea,
  type ThreeChambers,
  TRAVEL_M,
  threeChambers,
} from '../../../helpers/cycle-models.ts';

const P_RELEASE = 101325;
const wide = { a: 1e7, b: 1e11, cracks_Pa: 0 };
/** Oil alone, through valves that stand open. */
const OPEN: ThreeChambers = { ...PLAIN, airFraction: 0, pistonBleed: wide, baseBleed: wide };

function finished(sizes: ThreeChambers, sine: Partial<SineDrive>): CycleRun {
  const drive = { kind: 'sine', stroke_m: 0.04, frequency_Hz: 0.1, middle_m: 0.05, cycles: 2, ...sine } as const;
  const run = runCycle(threeChambers(sizes), driveFor(drive, TRAVEL_M), { samples: 4000 });
  if (run.status !== 'finished') throw new Error(run.reason);
  return run;
}

describe('a floating piston with friction', () => {
  it('stands still where the shaft turns, until the oil has sprung by twice what it holds', () => {
    const p_f = 3e5;
    const { series } = finished({ ...OPEN, separatorFriction_Pa: p_f }, {});
    const [A_p, A_r] = [pistonArea(PLAIN), rodArea(PLAIN)];
    // Own: reservoir A_p L, and A_p and A_p - A_r over the clearances of threeChambers; it springs back 2 p_f V/K.
    const oil_m3 = 2 * A_p * TRAVEL_M + (2 * A_p - A_r) * 0.01;
    const back_m = (2 * p_f * oil_m3) / (1.5e9 * A_r);
    const turn = 2000;
    const behind = (share: number) =>
      series.position_m.findIndex((x, k) => k > turn && x < series.position_m[turn] - share * back_m);
    const { gasPressure_Pa: gas, pressure_Pa } = series;
    const half = behind(0.5);
    expect(Math.abs(gas[half] / gas[turn] - 1)).toBeLessThan(1e-3);
    // Of the way of 0.43 mm the seal bends 0.02 ln 2, and a sample is 0.01 mm.
    expect(Math.abs((pressure_Pa.reservoir[turn] - pressure_Pa.reservoir[half]) / p_f - 1)).toBeLessThan(0.06);
    // Beyond, it slides with all its friction behind it, and the gas follows the stroke.
    const [far, further] = [behind(3), behind(6)];
    for (const k of [far, further]) expect((gas[k] - pressure_Pa.reservoir[k]) / p_f).toBeCloseTo(1, 3);
    const volume = (k: number) => 4 * A_r * TRAVEL_M * (1.2e6 / gas[k]) ** (1 / 1.3);
    const shaft_m3 = A_r * (series.position_m[far] - series.position_m[further]);
    // The oil springs by V/K a pascal as the gas does by V_g/(n p).
    const springs = ((oil_m3 / 1.5e9) * 1.3 * gas[far]) / volume(far);
    expect(Math.abs(((volume(further) - volume(far)) * (1 + springs)) / shaft_m3 - 1)).toBeLessThan(2e-3);
  });

  it('takes the same from a slow stroke as from a quick one', () => {
    const loss = (frequency_Hz: number) =>
      finished({ ...OPEN, separatorFriction_Pa: 3e4 }, { frequency_Hz }).energy.separator_J;
    expect(Math.abs(loss(0.02) / loss(1) - 1)).toBeLessThan(3e-3);
  });

  it('leaves a void beside it where gas cannot push it after the oil, and stands still', () => {
    // Source: balance of forces; 0.3 MPa of friction need 0.4013 MPa of gas, and here are 0.4008 at most.
    const sine = { stroke_m: 0.06, frequency_Hz: 2 };
    const { series, counted } = finished({ ...OPEN, gas_Pa: 2.99e5, separatorFriction_Pa: 3e5 }, sine);
    const gas = series.gasPressure_Pa.slice(counted.first);
    expect(Math.max(...gas)).toBeLessThan(4.0133e5);
    // The oil springs by 0.9 mm of the stroke.
    const voids_m3 = ['reservoir', 'compression', 'rebound'].reduce(
      (sum, at) => sum + series.void_m3[at][counted.last],
      0,
    );
    expect(voids_m3 / (0.06 * rodArea(PLAIN))).toBeGreaterThan(0.97);
    expect(voids_m3 / (0.06 * rodArea(PLAIN))).toBeLessThan(1);
    for (const [k, void_m3] of series.void_m3.reservoir.entries()) {
      if (void_m3 === 0) continue;
      expect(series.pressure_Pa.reservoir[k]).toBe(P_RELEASE);
      expect(Math.abs(series.gasPressure_Pa[k] / gas[0] - 1)).toBeLessThan(2e-3);
    }
    // With more gas it follows.
    const more = finished({ ...OPEN, gas_Pa: 4.1e5, separatorFriction_Pa: 3e5 }, sine);
    expect(Math.max(...more.series.void_m3.reservoir)).toBe(0);
  });

  it('never gives energy back, and never moves by more than what its chamber gains, or against it', () => {
    const oil = oilState({ bulkModulus_Pa: 1.5e9, airFraction: 0.01, airExponent: 1 }, P_RELEASE);
    const gas = { absolutePressure_Pa: 1e6, volume_m3: 1e-4, polytropicExponent: 1.3, separatorFriction_Pa: 1e5 };
    const some = fc.record({
      p: between(5e4, 2e6),
      held: between(-1.2, 1.2),
      inflow: between(-1e-3, 1e-3),
      room: between(-1e-3, 1e-3),
    });
    fc.assert(
      fc.property(some, ({ p, held, inflow, room }) => {
        const piston = new FloatingPiston(gas, oil, 2e-4);
        const p_gas = p - held * 1e5;
        fc.pre(p_gas > 1e4);
        const s = p > P_RELEASE ? oil.volume(p) : 1.01 * oil.floorVolume;
        piston.part(2e-4, 2e-4 * s, 1e-4 * (1e6 / p_gas) ** (1 / 1.3));
        expect(piston.gasPressure_Pa / p_gas).toBeCloseTo(1, 9);
        piston.move(inflow, room);
        expect(piston.loss_W).toBeGreaterThanOrEqual(0);
        const gains = inflow * Math.min(s, oil.floorVolume) + room;
        if (piston.void_m3 > 0) expect(Math.abs(piston.flow_m3_s)).toBe(0);
        else {
          expect(piston.flow_m3_s * gains).toBeGreaterThanOrEqual(0);
          expect(Math.abs(piston.flow_m3_s)).toBeLessThanOrEqual(Math.abs(gains));
        }
      }),
    );
  });

  it.each([0.6, -0.6])('keeps in its bent seal what it does not lose, at %f of what it can hold', (held) => {
    const oil = oilState({ bulkModulus_Pa: 1.5e9, airFraction: 0, airExponent: 1 }, P_RELEASE);
    const p_f = 1e5;
    const gas = { absolutePressure_Pa: 1e6, volume_m3: 1e-4, polytropicExponent: 1.3, separatorFriction_Pa: p_f };
    const holding = (share: number): FloatingPiston => {
      const piston = new FloatingPiston(gas, oil, 2e-4);
      piston.part(2e-4, 2e-4 * oil.volume(1e6 + share * p_f), gas.volume_m3);
      return piston;
    };
    const piston = holding(held);
    piston.move(1e-4, 0);
    // Dahl's law over a moment in which the seal bends by a ten thousandth of B, the volume of 0.02 mm of shaft.
    const B = 2e-5 * 2e-4;
    const moment_s = (1e-4 * B) / piston.flow_m3_s;
    const further = holding(held + 1e-4 * (1 - held));
    const work_J = held * p_f * 1e-4 * B;
    expect((further.storedEnergy_J - piston.storedEnergy_J) / (work_J - piston.loss_W * moment_s)).toBeCloseTo(1, 3);
  });
});
