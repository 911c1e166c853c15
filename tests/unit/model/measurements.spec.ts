import { describe, expect, it } from 'vitest';
import { decodeProject, encodeProject } from '../../../src/model/codec.ts';
import { hasFriction, hasGasForce, type Measurement } from '../../../src/model/measurement.ts';
import { newBuildFrom } from '../../../src/model/new-build.ts';
import { validateProject } from '../../../src/model/validate.ts';
import { soundProject, withValue } from '../../helpers/documents.ts';

const measurement = (): Measurement => ({
  id: 'first',
  name: 'First run',
  notes: '',
  sourceFile: 'run-1.csv',
  kind: 'force-position-time',
  conditions: { oilTemperature_degC: 32, position_mm: 35, clicks: { needle: 4 }, gasGaugePressure_bar: 10 },
  rawCount: 4000,
  steps: [
    { kind: 'gas-force', force_N: 210, from: 'typed' },
    { kind: 'speed-from-position', window_s: 0.02, peakLoss_percent: 0.4, leftOut: 20 },
    { kind: 'thinned', fromCount: 4000 },
  ],
  points: { speed_m_s: [-0.2, 0.1, 0.3], force_N: [-300, 150, 400], position_mm: [1, 2, 3], time_s: [0, 0.1, 0.2] },
  outliers: [0, 2],
});

const measured = () => withValue(soundProject(), 'builds[0].measurements', [measurement()]);

describe('the measurements of a build', () => {
  it('come back as they were saved, unknown fields too', () => {
    const project = withValue(measured(), 'builds[0].measurements[0].ofLater', { kept: true });
    expect(decodeProject(encodeProject(project))).toEqual({ ok: true, document: project });
  });

  it('may be absent, as in files from before there were any', () => {
    const read = decodeProject(encodeProject(soundProject()));
    expect(read.ok && read.document.builds[0]).not.toHaveProperty('measurements');
  });

  it.each([
    ['points.force_N', [1, 2], 'measurement.points.length', 'a list of 2'],
    ['points.time_s', undefined, 'measurement.points.missing', 'nothing'],
    ['outliers', [2, 0], 'measurement.outlier.place', '0'],
    ['outliers', [3], 'measurement.outlier.place', '3'],
    ['steps', [{ kind: 'guess' }], 'document.choice', '"guess"'],
    ['points.speed_m_s[1]', 350, 'document.range', '350'],
    ['rawCount', 1.5, 'document.whole-number', '1.5'],
  ])('are refused where %s is %j', (key, value, code, got) => {
    const checked = validateProject(withValue(measured(), `builds[0].measurements[0].${key}`, value));
    expect(checked.ok ? [] : checked.faults).toContainEqual(expect.objectContaining({ code, got }));
  });

  it('are refused under one id', () => {
    const twice = withValue(soundProject(), 'builds[0].measurements', [measurement(), measurement()]);
    const checked = validateProject(twice);
    expect(checked.ok ? [] : checked.faults).toMatchObject([
      { code: 'measurement.same-id', path: 'builds[0].measurements[1].id', got: '"first"' },
    ]);
  });

  it('stay with the build that was measured when it is copied', () => {
    const [build] = measured().builds;
    expect(newBuildFrom(build, 'Copy', [])).not.toHaveProperty('measurements');
    expect(build.measurements).toHaveLength(1);
  });
});

describe('what is still in the points', () => {
  const plain = { ...measurement(), steps: [] };

  it('is gas and friction until a step took them off, or the bench did', () => {
    expect([hasGasForce(plain), hasFriction(plain)]).toEqual([true, true]);
    expect(hasGasForce(measurement())).toBe(false);
    expect(hasGasForce({ ...plain, gasTakenOffByBench: true })).toBe(false);
    expect(hasFriction({ ...plain, steps: [{ kind: 'friction', force_N: 20, from: 'typed' }] })).toBe(false);
  });
});
