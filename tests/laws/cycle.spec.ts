/** Laws that hold for every damper over time, whatever its sizes: of three chambers, driven by a sine. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { driveFor } from '../../src/solver/cycle/drive.ts';
import { peakForces } from '../../src/solver/cycle/read-cycle.ts';
import { runCycle } from '../../src/solver/cycle/run-cycle.ts';
import type { CycleModel, CycleRun, Drive } from '../../src/solver/cycle/types.ts';
import { relativeVolume } from '../../src/solver/fluid/bulk-modulus.ts';
import { between } from '../helpers/any-damper.ts';
import { anyThreeChambers, TRAVEL_M, threeChambers } from '../helpers/cycle-models.ts';

const P_RELEASE = 101325;
const RUNS = { numRuns: 25 };

const anySine: fc.Arbitrary<Drive> = fc
  .record({ stroke_m: between(0.005, 0.09), frequency_Hz: between(0.2, 12) })
  .map((sine) => driveFor({ kind: 'sine', ...sine, middle_m: 0.05, cycles: 2 }, TRAVEL_M));

/** Runs a law over many dampers; a motion that drives a valve beyond its table has no run to look at. */
const holds = (law: (run: CycleRun, model: CycleModel) => void) =>
  fc.assert(
    fc.property(anyThreeChambers, anySine, (sizes, drive) => {
      const model = threeChambers(sizes);
      const run = runCycle(model, drive);
      if (run.status !== 'finished') {
        expect(run).toMatchObject({ status: 'beyond-table' });
        return fc.pre(false);
      }
      law(run, model);
    }),
    RUNS,
  );

/** Content of all chambers at one sample, from volumes, voids and pressures alone. */
function contentAt({ series }: CycleRun, { root, chambers, oil }: CycleModel, k: number): number {
  const x = series.position_m[k];
  const p_gas = series.gasPressure_Pa[k];
  const { absolutePressure_Pa: p0, volume_m3: V0, polytropicExponent: n } = root.gas;
  const gas = V0 * (p0 / p_gas) ** (1 / n);
  const room = root.extendedVolume_m3 - root.sweptArea_m2 * x - gas - series.void_m3[root.name][k];
  const inRoot = room / relativeVolume(oil, series.pressure_Pa[root.name][k]);
  return chambers.reduce((sum, { name, extendedVolume_m3, sweptArea_m2 }) => {
    const room = extendedVolume_m3 - sweptArea_m2 * x - series.void_m3[name][k];
    return sum + room / relativeVolume(oil, series.pressure_Pa[name][k]);
  }, inRoot);
}

describe('every damper over time', () => {
  it('keeps its oil: content, voids and gas fill the chambers at every moment', () => {
    holds((run, model) => {
      const start = contentAt(run, model, 0);
      for (let k = 0; k < run.series.time_s.length; k += 7) {
        expect(Math.abs(contentAt(run, model, k) / start - 1)).toBeLessThan(1e-9);
      }
    });
  });

  it('keeps its energy: work is loss and what is stored', () => {
    holds(({ energy, series }, { chambers }) => {
      const stroke_m = Math.max(...series.position_m) - Math.min(...series.position_m);
      // What the tolerance of 100 Pa is worth on the swept volume, out and back.
      const tolerance_J = 2 * 100 * chambers[0].sweptArea_m2 * stroke_m;
      expect(Math.abs(energy.balanceError_J)).toBeLessThan(1e-4 * energy.oil_J + tolerance_J);
    });
  });

  it('only loses: valves, friction and floating piston take energy and give none', () => {
    holds(({ energy }) => {
      expect(energy.oil_J).toBeGreaterThan(0);
      expect(energy.friction_J).toBeGreaterThanOrEqual(0);
      expect(energy.separator_J).toBeGreaterThanOrEqual(0);
    });
  });

  it('never falls below air release, and has voids only there', () => {
    holds(({ series }) => {
      for (const name of ['reservoir', 'compression', 'rebound']) {
        for (const [k, p] of series.pressure_Pa[name].entries()) {
          expect(p).toBeGreaterThanOrEqual(P_RELEASE);
          if (series.void_m3[name][k] > 0) expect(p).toBe(P_RELEASE);
        }
      }
    });
  });

  it('estimates no error beyond its tolerance', () => {
    holds(({ integration }) => expect(integration.largestPressureError_Pa).toBeLessThanOrEqual(100));
  });

  it('pushes harder in compression than it does in rebound', () => {
    holds((run) => {
      const { compression, rebound } = peakForces(run);
      expect(compression.force_N).toBeGreaterThan(rebound.force_N);
    });
  });

  it('does not know when the clock began: a trace later is the same trace', () => {
    fc.assert(
      fc.property(anyThreeChambers, between(1, 50), (sizes, later) => {
        const model = threeChambers({ ...sizes, gas_Pa: 2e6 });
        const time_s = [0, 0.05, 0.12, 0.2, 0.3];
        const position_m = [0.02, 0.05, 0.07, 0.03, 0.04];
        const from = (start: number) =>
          runCycle(model, driveFor({ kind: 'trace', time_s: time_s.map((t) => t + start), position_m }, TRAVEL_M));
        const [now, then] = [from(0), from(later)];
        fc.pre(now.status === 'finished' && then.status === 'finished');
        if (now.status !== 'finished' || then.status !== 'finished') return;
        const range = Math.max(...now.series.force_N) - Math.min(...now.series.force_N);
        for (const [k, force] of now.series.force_N.entries()) {
          expect(Math.abs(then.series.force_N[k] - force)).toBeLessThan(0.01 * range);
        }
      }),
      RUNS,
    );
  });
});
