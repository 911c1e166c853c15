import { readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { demoProject } from '../../scripts/lib/demo-project.ts';
import { decodeProject } from '../../src/model/codec.ts';
import {
  dampingCyclesForBuild,
  fitChoicesForBuild,
  forceCurveForBuild,
  forceLoop,
  hysteresisBothWays,
  type LiftOptions,
  parseTrace,
  peakForces,
  presentStacks,
  readTolerance,
  type StackInput,
  searchStart,
  sensitivityForBuild,
  solveLift,
  toleranceForBuild,
  WEIGHT_SPREADS,
} from '../../src/solver/index.ts';
import { createSolverClient } from '../../workers/client.ts';
import { plantedStudy } from '../helpers/search-studies.ts';
import { spawnFixture } from './helpers/node-worker.ts';

const client = createSolverClient({ spawn: spawnFixture('real-solver') });
afterAll(() => client.close());

const checked = decodeProject(readFileSync('tests/fixtures/project-v1.shimwright.json', 'utf8'));
if (!checked.ok) throw new Error('the fixture is not a project');
const project = checked.document;

/** `toStrictEqual` compares numbers by Object.is, in typed arrays too: bit for bit, -0 and 0 told apart. */
describe('the worker and a direct call give the same numbers, bit for bit', () => {
  it('force curves of every build', async () => {
    const options = { speeds_m_s: [-0.8, -0.1, 0, 0.02, 0.4, 1.5], theory: 'small-deflection' } as const;
    const buildIds = project.builds.map(({ id }) => id);
    const { curves } = await client.forceCurves({ project, buildIds, ...options });
    expect(Object.keys(curves)).toEqual(buildIds);
    for (const id of buildIds) {
      const curve = forceCurveForBuild(project, id, options);
      expect(curve.points.every((point) => point.status === 'converged')).toBe(true);
      expect(curves[id]).toStrictEqual({ status: 'solved', curve });
    }
  });

  it('force curves of waved shims, with the waves that a drawing needs', async () => {
    const options = { speeds_m_s: [-2], theory: 'port-periodic' } as const;
    const demo = demoProject('larkspur-trail-rear');
    const { curves } = await client.forceCurves({ project: demo, buildIds: [demo.baselineBuild], ...options });
    const curve = forceCurveForBuild(demo, demo.baselineBuild, options);
    expect(curves[demo.baselineBuild]).toStrictEqual({ status: 'solved', curve });
    const last = curve.stacks.rebound.points.at(-1);
    expect(last?.wave?.waves).toBeGreaterThan(1);
    const [[first]] = last?.shape.harmonics_m ?? [];
    const [lift] = last?.shape.lift_m ?? [];
    expect(first).toHaveLength(lift.length);
    expect(Math.abs(first[first.length - 1])).toBeGreaterThan(1e-6);
  });

  it('force curves away from mid-stroke, and their bands without the parts that nobody shows', async () => {
    const options = { speeds_m_s: [-0.5, 0.5], theory: 'small-deflection', stroke_m: 0.01 } as const;
    const [{ id }] = project.builds;
    const { curves } = await client.forceCurves({ project, buildIds: [id], ...options });
    expect(curves[id]).toStrictEqual({ status: 'solved', curve: forceCurveForBuild(project, id, options) });
    const { builds } = await client.forceBands({ project, buildIds: [id], ...options });
    const middle = forceCurveForBuild(project, id, { ...options, stroke_m: undefined });
    const banded = forceCurveForBuild(project, id, { ...options, bands: true });
    const wanted = banded.points.map((point, i) => {
      const plain = middle.points[i];
      if (point.status !== 'converged' || point.band?.status !== 'converged') throw new Error('not solved');
      // Nearer to full extension the gas has more room.
      expect(plain.status === 'converged' && plain.gasPressure_Pa).toBeGreaterThan(point.gasPressure_Pa);
      const { status, low_N, high_N, mostFrom } = point.band;
      expect(low_N).toBeLessThan(high_N);
      return { status, low_N, high_N, mostFrom };
    });
    expect(builds[id]).toStrictEqual({ status: 'solved', bands: wanted });
  });

  it('the forces of a sweep, those of the whole curve and no more', async () => {
    const options = { speeds_m_s: [-0.8, 0.02, 1.5], theory: 'large-deflection', stroke_m: 0.01 } as const;
    const [{ id }] = project.builds;
    const { builds } = await client.forces({ project, buildIds: [id], ...options });
    const { points } = forceCurveForBuild(project, id, options);
    const solved = points.filter((point) => point.status === 'converged');
    expect(solved).toHaveLength(3);
    expect(builds[id]).toStrictEqual({
      status: 'solved',
      forces: {
        shaftSpeed_m_s: [...options.speeds_m_s],
        force_N: solved.map(({ force_N }) => force_N),
        gasForce_N: solved.map(({ gasForce_N }) => gasForce_N),
        reasons: [],
        theories: { compression: 'large-deflection', rebound: 'large-deflection' },
      },
    });
  });

  it('what a fit may change', async () => {
    const [{ id }] = project.builds;
    const choices = fitChoicesForBuild(project, id);
    expect(choices.length).toBeGreaterThan(5);
    expect(await client.fitChoices({ project, buildId: id })).toStrictEqual({ choices });
  });

  it('what a search begins from', async () => {
    const { project: searched, request } = plantedStudy();
    const theory = 'large-deflection';
    const present = presentStacks(searched, request, theory);
    expect(present.judgement?.rms_N).toBeGreaterThan(0);
    expect(await client.searchPresent({ project: searched, request, theory })).toStrictEqual(present);
  });

  it('a build driven over time', async () => {
    const [{ id }] = project.builds;
    const middle_m = project.damper.travel_mm / 2000;
    const drive = { kind: 'sine', stroke_m: middle_m, frequency_Hz: 2, middle_m } as const;
    const theory = 'small-deflection';
    const { cycles } = await client.cycles({ project, buildIds: [id], drive, theory });
    const [run] = dampingCyclesForBuild(project, id, [drive], { theory });
    if (run.status !== 'finished') throw new Error(run.reason);
    expect(cycles[id]).toMatchObject({
      status: 'finished',
      reading: { loop: forceLoop(run), energy: run.energy, peaks: peakForces(run) },
    });
    const { speed_m_s, force_N } = forceLoop(run);
    const asked = 0.3 * peakForces(run).compression.speed_m_s;
    const { read } = await client.hysteresis({ loops: [{ speed_m_s, force_N }], speed_m_s: asked });
    expect(read).toStrictEqual([hysteresisBothWays(forceLoop(run), asked)]);
    expect(read[0].compression).toBeDefined();
  });

  it('a build driven along a trace, as the command line reads it', async () => {
    const [{ id }] = project.builds;
    const travel_m = project.damper.travel_mm / 1000;
    const text = 'time_ms;position_mm\n0;5\n40;12,5\n90;8\n';
    const { drive } = await client.trace({ text, travel_m });
    expect(drive).toStrictEqual({ kind: 'trace', ...parseTrace(text, travel_m) });
    const theory = 'small-deflection';
    const { cycles } = await client.cycles({ project, buildIds: [id], drive, theory });
    const [run] = dampingCyclesForBuild(project, id, [drive], { theory });
    if (run.status !== 'finished') throw new Error(run.reason);
    expect(cycles[id]).toMatchObject({ status: 'finished', reading: { loop: forceLoop(run), energy: run.energy } });
    await expect(client.trace({ text: 'time_s\n0', travel_m })).rejects.toMatchObject({
      code: 'invalid-input',
      fault: { code: 'cycle.trace.header' },
    });
  });

  it('a start of a search', async () => {
    const study = plantedStudy();
    const settings = { seed: 3, steps: 20, answers: 2, theory: 'small-deflection' } as const;
    const direct = searchStart(study.project, study.request, settings, 1);
    expect(direct.answers.length).toBeGreaterThan(0);
    const told: number[] = [];
    const found = await client.searchStart({ ...study, settings, start: 1 }, { onProgress: (done) => told.push(done) });
    expect(found).toStrictEqual(direct);
    expect(told.at(-1)).toBe(1);
  });

  it('what each shim does', async () => {
    const question = { place: 'compression', speeds_m_s: [0.3], theory: 'small-deflection' } as const;
    const buildId = project.baselineBuild;
    const told: number[] = [];
    const found = await client.sensitivity(
      { project, buildId, ...question },
      { onProgress: (done) => told.push(done) },
    );
    expect(found).toStrictEqual(sensitivityForBuild(project, buildId, question));
    expect(found.shims.length).toBeGreaterThan(1);
    expect(told.at(-1)).toBe(1);
  });

  it('samples of a build whose parts scatter, in two parts on one wire, and what they say', async () => {
    const question = { speeds_m_s: [0.3, -0.3], theory: 'small-deflection', seed: 4 } as const;
    const buildId = project.baselineBuild;
    const told: number[] = [];
    const ask = (from: number, to: number) =>
      client.toleranceSamples({ project, buildId, ...question, from, to }, { onProgress: (done) => told.push(done) });
    const parts = [await ask(0, 2), await ask(2, 4)];
    const whole = toleranceForBuild(project, buildId, { ...question, samples: 4 });
    expect(told).toContain(0.5);
    const solved = parts.map(({ samples }) => samples);
    const asked = { speeds_m_s: question.speeds_m_s, solved, seed: 4 };
    const reading = await client.toleranceReading(asked);
    expect(reading.spreads).toStrictEqual(whole.spreads);
    expect(reading).toStrictEqual(readTolerance(question.speeds_m_s, [whole.samples], 4));
  });

  it('the spread of weight numbers', async () => {
    expect(await client.weightSpreads()).toStrictEqual({ spreads: WEIGHT_SPREADS });
  });

  it('lift of a stack', async () => {
    const shim = { youngsModulus_Pa: 206e9, poissonsRatio: 0.3, thickness_m: 0.00015 };
    const stack: StackInput = {
      clampRadius_m: 0.006,
      shims: [
        { ...shim, outerRadius_m: 0.015 },
        { ...shim, outerRadius_m: 0.011 },
      ],
      pressureZone: { innerRadius_m: 0.00825, outerRadius_m: 0.0138 },
    };
    const pressures_Pa = [1e4, 5e4, 2e5];
    const options: LiftOptions = { theory: 'small-deflection' };
    const direct = solveLift(stack, pressures_Pa, options);
    expect(direct.points.map(({ status }) => status)).toEqual(['converged', 'converged', 'converged']);
    expect(await client.lift({ stack, pressures_Pa, options })).toStrictEqual(direct);
  });

  it('a build that the project does not have is refused with its fault, in both', async () => {
    const request = { project, buildIds: ['no such build'], speeds_m_s: [0.1], theory: 'small-deflection' } as const;
    const { curves } = await client.forceCurves(request);
    const direct = () => forceCurveForBuild(project, 'no such build', request);
    expect(direct).toThrow(expect.objectContaining({ fault: expect.objectContaining({ code: 'build.unknown' }) }));
    expect(curves['no such build']).toMatchObject({
      error: { code: 'invalid-input', fault: { code: 'build.unknown' } },
    });
  });
});
