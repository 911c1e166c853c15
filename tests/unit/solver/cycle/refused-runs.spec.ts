import { describe, expect, it } from 'vitest';
import { elementModel } from '../../../../src/proof/cycle-elements.ts';
import { driveFor, type SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { runCycle } from '../../../../src/solver/cycle/run-cycle.ts';
import type { CycleModel, CycleOptions } from '../../../../src/solver/cycle/types.ts';
import { SolveStopped } from '../../../../src/solver/stopped.ts';
import type { SolveHooks } from '../../../../src/solver/types.ts';
import { InputError } from '../../../../src/units/fault.ts';
import { PLAIN, threeChambers } from '../../../helpers/cycle-models.ts';

const SINE: SineDrive = { kind: 'sine', stroke_m: 0.06, frequency_Hz: 2, middle_m: 0.05 };

const run = (model: CycleModel, sine: Partial<SineDrive> = {}, options?: CycleOptions, hooks?: SolveHooks) =>
  runCycle(model, driveFor({ ...SINE, ...sine }, model.travel_m), options, hooks);

const faultOf = (work: () => unknown) => {
  try {
    work();
  } catch (error) {
    if (error instanceof InputError) return error.fault.code;
  }
  return undefined;
};

describe('a run that cannot be', () => {
  const model = threeChambers(PLAIN);
  const [first, second] = model.chambers;

  it.each<[string, Partial<CycleModel>]>([
    ['cycle.model.parent', { chambers: [second, first] }],
    ['cycle.model.name', { chambers: [first, { ...second, name: 'compression' }] }],
    ['cycle.model.volume', { chambers: [{ ...first, extendedVolume_m3: 1e-5 }, second] }],
    ['cycle.model.gas', { root: { ...model.root, gas: { ...model.root.gas, absolutePressure_Pa: 0 } } }],
    ['cycle.model.gas', { root: { ...model.root, gas: { ...model.root.gas, volume_m3: 1 } } }],
    ['cycle.model.gas', { root: { ...model.root, gas: { ...model.root.gas, polytropicExponent: 0.9 } } }],
    ['cycle.model.air-release', { airReleasePressure_Pa: 0 }],
    ['cycle.model.lag', { checkLag_s: -1e-3 }],
  ])('is refused: %s', (code, change) => {
    expect(faultOf(() => run({ ...model, ...change }))).toBe(code);
  });

  it.each<[string, CycleOptions]>([
    ['cycle.options.samples', { samples: 41 }],
    ['cycle.options.samples', { samples: 0 }],
    ['cycle.options.tolerance', { pressureTolerance_Pa: 0 }],
    ['cycle.options.tolerance', { pressureTolerance_Pa: Number.NaN }],
  ])('is refused: %s', (code, options) => {
    expect(faultOf(() => run(model, {}, options))).toBe(code);
  });

  it('ends where a valve is asked for more than its table holds, and says when and at which pressures', () => {
    const short = elementModel({
      area_m2: 1e-3,
      volume_m3: 1e-4,
      bulkModulus_Pa: 1.5e9,
      flow: (dp) => 1e-10 * dp,
      largestDrop_Pa: 1e6,
      travel_m: 0.06,
    });
    const failed = run(short, { middle_m: 0.03 });
    expect(failed).toMatchObject({
      status: 'beyond-table',
      reason: expect.stringContaining(
        'from chamber to gas ends at a drop of 1 MPa; absolute pressures there: gas 20 MPa, chamber 21 MPa',
      ),
    });
    expect(failed.status !== 'finished' && failed.time_s).toBeGreaterThan(0);
  });

  it('stops when asked, and tells how far it is', () => {
    let [asked, told] = [0, 0];
    const hooks: SolveHooks = { shouldStop: () => ++asked > 5, onProgress: (done, total) => (told = done / total) };
    expect(() => run(model, {}, {}, hooks)).toThrow(SolveStopped);
    expect(told).toBeGreaterThan(0);
    expect(told).toBeLessThan(1);
  });
});
