import { describe, expect, it } from 'vitest';
import { DEMOS } from '../../../../src/demo/index.ts';
import { CHECK_LAG } from '../../../../src/solver/cycle/check-lag.ts';
import type { SineDrive } from '../../../../src/solver/cycle/drive.ts';
import { dampingCycle, dampingCycles } from '../../../../src/solver/cycle/from-damper.ts';
import { chamberExtremes, peakForces } from '../../../../src/solver/cycle/read-cycle.ts';
import type { CycleRun, FailedCycle } from '../../../../src/solver/cycle/types.ts';
import { directionFlow, ValveFailed } from '../../../../src/solver/cycle/valve-flow.ts';
import { forceCurve } from '../../../../src/solver/damper/force-curve.ts';
import type { DamperInput, ForcePoint } from '../../../../src/solver/damper/types.ts';
import { dampingCyclesForBuild } from '../../../../src/solver/from-model/cycle.ts';
import { damperFromProject } from '../../../../src/solver/from-model.ts';
import { SolveStopped } from '../../../../src/solver/stopped.ts';
import type { Valve } from '../../../../src/solver/valve/explicit-valve.ts';
import { InputError } from '../../../../src/units/fault.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';

const THEORY = { theory: 'small-deflection' } as const;
/** No air, so that the gas stands where the static damper has it. */
const STIFF = { ...THEORY, oil: { bulkModulus_Pa: 1.5e9, airFraction: 0, airExponent: 1 } };

const demoDamper = (file: string): DamperInput => {
  const project = loadDemo(file);
  return damperFromProject(project, project.baselineBuild);
};

const sineFor = ({ travel_m }: DamperInput, frequency_Hz: number): SineDrive => ({
  kind: 'sine',
  stroke_m: Math.min(0.05, travel_m / 2),
  frequency_Hz,
  middle_m: travel_m / 2,
  cycles: 2,
});

const finished = (run: CycleRun | FailedCycle): CycleRun => {
  if (run.status === 'finished') return run;
  throw new Error(run.reason);
};

const staticForces = (damper: DamperInput, v: number): ForcePoint[] =>
  forceCurve(damper, [v, -v], THEORY).points.filter((point) => point.status === 'converged');

describe.each(DEMOS)('$id driven over time', ({ file }) => {
  const damper = demoDamper(file);

  it('gives its static force at the peak of a slow stroke, both ways', () => {
    const drive = sineFor(damper, 0.3);
    const { compression, rebound } = peakForces(finished(dampingCycle(damper, drive, { ...STIFF, checkLag_s: 0 })));
    const points = staticForces(damper, Math.PI * drive.stroke_m * 0.3);
    expect(points.length).toBe(2);
    const range = points[0].force_N - points[1].force_N;
    expect(Math.abs(compression.force_N - points[0].force_N)).toBeLessThan(5e-3 * range);
    expect(Math.abs(rebound.force_N - points[1].force_N)).toBeLessThan(5e-3 * range);
  });

  it('balances its energy and heats by oil and friction', () => {
    const { energy } = finished(dampingCycle(damper, sineFor(damper, 3), THEORY));
    expect(energy.oil_J).toBeGreaterThan(0.5 * energy.work_J);
    expect(energy.friction_J).toBeGreaterThan(0);
    expect(Math.abs(energy.balanceError_J)).toBeLessThan(1e-5 * energy.work_J);
  });
});

describe('dampingCycles', () => {
  const fork = demoDamper('larkspur-trail-fork.shimwright.json');
  const rear = demoDamper('larkspur-trail-rear.shimwright.json');

  it('names the chambers of the layout', () => {
    const names = (damper: DamperInput) =>
      Object.keys(chamberExtremes(finished(dampingCycle(damper, sineFor(damper, 1), THEORY))));
    expect(names(rear)).toEqual(['compression', 'rebound']);
    expect(names(fork)).toEqual(['reservoir', 'compression', 'rebound']);
  });

  it('runs several motions as it runs each, and tells how far it is', () => {
    const told: string[] = [];
    const drives = [1, 3].map((f) => sineFor(rear, f));
    const runs = dampingCycles(rear, drives, THEORY, { onProgress: (done, total) => told.push(`${done}/${total}`) });
    expect(told).toEqual(['1/4', '2/4', '3/4', '4/4']);
    const alone = finished(dampingCycle(rear, drives[0], THEORY));
    const together = finished(runs[0]);
    expect(peakForces(together).compression.force_N / peakForces(alone).compression.force_N).toBeCloseTo(1, 3);
  });

  it('takes coefficients: a smaller jet presses harder', () => {
    const at = (jetDischarge: number) =>
      peakForces(finished(dampingCycle(rear, sineFor(rear, 4), { ...THEORY, coefficients: { jetDischarge } })));
    expect(at(0.6).compression.force_N).toBeGreaterThan(at(0.8).compression.force_N);
  });

  it('lets the check lag as its table says, unless told otherwise', () => {
    const forces = (options: { checkLag_s?: number }) =>
      finished(dampingCycle(fork, sineFor(fork, 4), { ...THEORY, ...options })).series.force_N;
    const own = forces({});
    expect(own).toEqual(forces({ checkLag_s: CHECK_LAG.value }));
    expect(own).not.toEqual(forces({ checkLag_s: 0 }));
  });

  it('lets a chamber fall as low as the release pressure it is given, and never to none', () => {
    const starved = { ...rear, gas: { ...rear.gas, absolutePressure_Pa: 1.2e5 } };
    const lowest = (airReleasePressure_Pa: number) =>
      chamberExtremes(
        finished(dampingCycle(starved, sineFor(rear, 6), { ...THEORY, coefficients: { airReleasePressure_Pa } })),
      ).rebound.lowest_Pa;
    expect(lowest(101325)).toBe(101325);
    expect(lowest(4e4)).toBe(4e4);
    // Vapour pressure is far below 1 kPa (from memory), which stands for no release at all.
    expect(lowest(0)).toBe(1000);
  });

  it('takes the oil of the document', () => {
    const project = loadDemo('larkspur-trail-rear.shimwright.json');
    const foamed = { ...project, fluid: { ...project.fluid, entrainedAir_percent: 8 } };
    const pressures = (document: typeof project) => {
      const [run] = dampingCyclesForBuild(document, document.baselineBuild, [sineFor(rear, 4)], THEORY);
      return finished(run).series.pressure_Pa.rebound;
    };
    const [foam, oil] = [pressures(foamed), pressures(project)];
    expect(Math.max(...foam.map((p, k) => Math.abs(p - oil[k])))).toBeGreaterThan(1e4);
  });

  it('brings its hydraulic stop to bear where the stroke reaches it', () => {
    const stop = { end: 'compression', length_m: 0.02, plungerDiameter_m: 0.02, clearance_m: 2e-4 } as const;
    const drive = { ...sineFor(rear, 2), stroke_m: rear.travel_m };
    const with_ = finished(dampingCycle({ ...rear, hydraulicStop: stop }, drive, THEORY));
    expect(with_.energy.stop_J).toBeGreaterThan(0.1);
    for (const [k, x] of with_.series.position_m.entries()) {
      if (x < rear.travel_m - 0.02 || with_.series.speed_m_s[k] < 0)
        expect(with_.series.stopForce_N[k]).toBeCloseTo(0, 9);
    }
  });

  it('refuses a damper, a motion and a gas that cannot be, and stops when asked', () => {
    const faultOf = (damper: DamperInput, drive: SineDrive) => {
      try {
        dampingCycle(damper, drive, THEORY);
      } catch (error) {
        if (error instanceof InputError) return error.fault.code;
      }
      return undefined;
    };
    const drive = sineFor(rear, 1);
    expect(faultOf({ ...rear, boreDiameter_m: 0 }, drive)).toBe('damper.not-positive');
    expect(faultOf(rear, { ...drive, stroke_m: 1 })).toBe('cycle.drive.travel');
    expect(faultOf({ ...rear, gas: { ...rear.gas, volume_m3: 1e-6 } }, drive)).toBe('gas.volume.too-small');
    expect(() => dampingCycle(rear, drive, THEORY, { shouldStop: () => true })).toThrow(SolveStopped);
  });

  it('knows its valves as far as a void needs that fills: thick rod, hardly any gas, fast', () => {
    const thick = { ...fork, rodDiameter_m: 0.9 * fork.boreDiameter_m };
    const starved = { ...thick, gas: { ...fork.gas, absolutePressure_Pa: 1.1e5, volume_m3: 3 * fork.gas.volume_m3 } };
    const drive = { ...sineFor(fork, 6), stroke_m: 0.8 * fork.travel_m };
    const { rebound } = chamberExtremes(finished(dampingCycle(starved, drive, THEORY)));
    expect(rebound.largestVoid_m3).toBeGreaterThan(1e-5);
  });

  it('says why it never began when a valve has no state', () => {
    const run = dampingCycle(rear, sineFor(rear, 1), { ...THEORY, coefficients: { longOrificeFactor: Number.NaN } });
    expect(run).toMatchObject({ status: 'valve', reason: expect.stringMatching(/.{10}/) });
  });
});

describe('a run that outgrows its valve', () => {
  it('says which one, where it ends and why', () => {
    const rear = demoDamper('larkspur-trail-rear.shimwright.json');
    // Without a jet that can be computed the stack is known as long as it is closed.
    const run = dampingCycle(rear, sineFor(rear, 1), { ...THEORY, coefficients: { jetDischarge: Number.NaN } });
    expect(run).toMatchObject({
      status: 'beyond-table',
      reason: expect.stringMatching(/the valve from \w+ to \w+ ends at a drop of [\d.]+ MPa \(.+\)/),
    });
  });
});

describe('the tables of a valve', () => {
  const point = (drop_Pa: number) => ({
    status: 'converged' as const,
    drop_Pa,
    shimPressure_Pa: 0,
    seatOpening_m: 0,
    flows: { ports_m3_s: 1e-10 * drop_Pa, bleed_m3_s: 2e-11 * drop_Pa, leakage_m3_s: 0, check_m3_s: 5e-11 * drop_Pa },
  });
  const failed = { status: 'beyond-table', reason: 'the stack ends here' } as const;
  const upTo = (end_Pa: number): Valve => ({
    atDrop: (drop_Pa) => (drop_Pa <= end_Pa ? point(drop_Pa) : failed),
    atFlow: () => failed,
  });

  it('end where the valve ends, and keep the check apart', () => {
    const { steady, check, endReason } = directionFlow(upTo(2e6));
    expect(endReason).toBe('the stack ends here');
    const end = steady.drop_Pa.at(-1) ?? Number.NaN;
    expect(end).toBeGreaterThan(1.999e6);
    expect(end).toBeLessThanOrEqual(2e6);
    expect((steady.flow_m3_s.at(-1) ?? 0) / end).toBeCloseTo(1.2e-10, 20);
    expect((check?.flow_m3_s.at(-1) ?? 0) / end).toBeCloseTo(5e-11, 20);
  });

  it('are none where the valve has no state at all', () => {
    expect(() => directionFlow(upTo(10))).toThrow(ValveFailed);
    expect(() => directionFlow(upTo(10))).toThrow('the stack ends here');
  });
});
