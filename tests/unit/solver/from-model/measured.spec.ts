import { describe, expect, it } from 'vitest';
import { FIT_COEFFICIENTS } from '../../../../src/model/fit.ts';
import type { Measurement, Project } from '../../../../src/model/project.ts';
import {
  FIT_NAMES,
  fitBuild,
  fitChoicesForBuild,
  fitMeasured,
  forceCurveForBuild,
  measurementsOf,
} from '../../../../src/solver/index.ts';
import { soundProject, withValue } from '../../../helpers/documents.ts';

const THEORY = 'small-deflection';
const SPEEDS = [0.05, 0.1, 0.2, 0.3, 0.5, 0.7, 0.9, 1.1].flatMap((v) => [v, -v]);
const buildId = soundProject().builds[0].id;

function forcesOf(project: Project, jetDischarge: number): number[] {
  const options = { speeds_m_s: SPEEDS, theory: THEORY, coefficients: { jetDischarge } } as const;
  return forceCurveForBuild(project, buildId, options).points.map((point) =>
    point.status === 'converged' ? point.force_N : Number.NaN,
  );
}

const measurement = (force_N: number[], change: Partial<Measurement> = {}): Measurement => ({
  id: 'a',
  name: 'A',
  notes: '',
  sourceFile: 'a.csv',
  kind: 'force-speed',
  conditions: {},
  rawCount: SPEEDS.length,
  steps: [],
  points: { speed_m_s: SPEEDS, force_N },
  outliers: [],
  ...change,
});

function jetOf(measured: Measurement): number {
  const options = { measurements: [measured], theory: THEORY, names: ['jetDischarge'] } as const;
  const outcome = fitBuild(soundProject(), buildId, options);
  return outcome.status === 'fitted' ? outcome.coefficients[0].value : Number.NaN;
}

describe('a fit to the measurements of a document', () => {
  it('is counted at the conditions that were written down', () => {
    const hot = withValue(withValue(soundProject(), 'fluid.temperature_degC', 75), 'gas.gaugePressure_bar', 14);
    const conditions = { oilTemperature_degC: 75, gasGaugePressure_bar: 14 };
    expect(jetOf(measurement(forcesOf(hot, 0.75), { conditions }))).toBeCloseTo(0.75, 3);
    expect(Math.abs(jetOf(measurement(forcesOf(hot, 0.75))) - 0.75)).toBeGreaterThan(0.002);
  });

  it('leaves outliers and points at rest out', () => {
    const force_N = forcesOf(soundProject(), 0.75);
    force_N[3] += 900;
    expect(jetOf(measurement(force_N, { outliers: [3] }))).toBeCloseTo(0.75, 3);
    const points = { speed_m_s: [...SPEEDS, 0], force_N: [...forcesOf(soundProject(), 0.75), 5000] };
    expect(jetOf(measurement([], { points }))).toBeCloseTo(0.75, 3);
  });

  it('is kept beside the build, and counts where that is asked for alone', () => {
    const kept = { measurements: ['a'], theory: THEORY, untold: [], scatter_N: 3, pointCount: 16 };
    const value = { physical: 0.7, low: 0.7, high: 0.8, leftOpen: 0.1 };
    const project = withValue(soundProject(), 'builds[0].fit', {
      ...kept,
      coefficients: [
        { name: 'jetDischarge', value: 0.75, ...value },
        { name: 'forceOffset_N', value: 40, ...value },
      ],
    });
    const forces = (fitted: boolean): number[] =>
      forceCurveForBuild(project, buildId, { speeds_m_s: SPEEDS, theory: THEORY, fitted }).points.map((point) =>
        point.status === 'converged' ? point.force_N : Number.NaN,
      );
    expect(forces(false)).toEqual(forcesOf(soundProject(), 0.7));
    // The offset is of the load cell and no force of the damper.
    for (const [i, force] of forces(true).entries()) expect(force).toBeCloseTo(forcesOf(soundProject(), 0.75)[i], 6);
  });

  it('knows the same coefficients as the document', () => {
    expect(FIT_NAMES).toEqual(FIT_COEFFICIENTS);
  });

  it('changes the coefficients that are asked for, and without a wish all but the seats', () => {
    const project = withValue(soundProject(), 'builds[0].measurements', [measurement(forcesOf(soundProject(), 0.75))]);
    const namesOf = (names?: ('portMomentum' | 'jetDischarge')[]): string[] => {
      const outcome = fitMeasured(project, buildId, { theory: THEORY, ...(names && { names }) });
      return outcome.status === 'fitted' ? outcome.coefficients.map(({ name }) => name) : [outcome.reason];
    };
    expect(namesOf(['portMomentum', 'jetDischarge'])).toEqual(['portMomentum', 'jetDischarge']);
    expect(namesOf()).toEqual(FIT_NAMES.filter((name) => !name.endsWith('Shift_m')));
    expect(namesOf([])).toEqual(['no coefficient is to be fitted']);
  });

  it('offers what the damper can have an answer to, with what each is known to', () => {
    const offered = fitChoicesForBuild(soundProject(), buildId);
    expect(offered.map(({ name }) => name)).toEqual(FIT_NAMES.filter((name) => name !== 'baseSeatShift_m'));
    expect(offered.filter(({ isUsual }) => !isUsual).map(({ name }) => name)).toEqual([
      'compressionSeatShift_m',
      'reboundSeatShift_m',
    ]);
    // Source: what a discharge coefficient of a shim is known to, docs/theory-hydraulics.md.
    expect(offered[0]).toMatchObject({ name: 'jetDischarge', physical: 0.7, low: 0.6, high: 0.8 });
    expect(offered[0].source).toContain('0.6 and 0.8');
    const bare = withValue(withValue(soundProject(), 'damper.friction', undefined), 'builds[0].bleed.count', 0);
    const left = fitChoicesForBuild(bare, buildId).map(({ name }) => name);
    expect(left).not.toContain('bleedAreaFactor');
  });

  it('takes measurements by id, and refuses those that are not there', () => {
    const build = { ...soundProject().builds[0], measurements: [measurement([])] };
    expect(measurementsOf(build)).toHaveLength(1);
    expect(measurementsOf(build, ['a'])).toHaveLength(1);
    expect(() => measurementsOf(build, ['b'])).toThrow('measurement.unknown');
  });
});
