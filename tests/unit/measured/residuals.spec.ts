import { describe, expect, it } from 'vitest';
import { type ModelPoint, residualAt, residualsOf, scatterOf } from '../../../src/measured/residuals.ts';
import type { Measurement } from '../../../src/model/measurement.ts';

/** 1000 N s/m over 200 N of gas, 20 N of friction. */
const curve: ModelPoint[] = [-1, 0, 1].map((v) => ({
  shaftSpeed_m_s: v,
  force_N: 1000 * v + 200 + 20 * Math.sign(v),
  gasForce_N: 200,
  frictionForce_N: 20 * Math.sign(v),
}));

const measurement = (change: Partial<Measurement> = {}): Measurement => ({
  id: 'a',
  name: 'A',
  notes: '',
  sourceFile: 'a.csv',
  kind: 'force-speed',
  conditions: {},
  rawCount: 4,
  steps: [],
  points: { speed_m_s: [-1, 0.5, 1, 3], force_N: [-810, 715, 1250, 9] },
  outliers: [],
  ...change,
});

describe('residuals', () => {
  it('are what was measured less the build, straight between its speeds, and none beyond them', () => {
    expect(residualsOf(measurement(), curve)).toEqual([
      { speed_m_s: -1, measured_N: -810, build_N: -820, residual_N: 10, isOutlier: false },
      { speed_m_s: 0.5, measured_N: 715, build_N: 710, residual_N: 5, isOutlier: false },
      { speed_m_s: 1, measured_N: 1250, build_N: 1220, residual_N: 30, isOutlier: false },
    ]);
  });

  it('leave out of the build what was taken off the measurement', () => {
    const build = (change: Partial<Measurement>): number[] =>
      residualsOf(measurement(change), curve).map(({ build_N }) => build_N);
    expect(build({ gasTakenOffByBench: true })).toEqual([-1020, 510, 1020]);
    expect(build({ steps: [{ kind: 'gas-force', force_N: 180, from: 'typed' }] })).toEqual([-1020, 510, 1020]);
    expect(build({ steps: [{ kind: 'friction', force_N: 20, from: 'typed' }] })).toEqual([-800, 700, 1200]);
  });

  it('lie straight between the measured speeds of one direction, and nowhere beyond them', () => {
    const points = { speed_m_s: [-1, 0.5, 1, 3], force_N: [-810, 715, 1250, 9] };
    const off = (speed: number, change: Partial<Measurement> = {}) =>
      residualAt(measurement({ points, ...change }), curve, speed);
    // 5 N at 0.5 m/s and 30 N at 1 m/s: 15 N a fifth of the way from the one, at 0.7 m/s.
    expect(off(0.7)).toEqual({ build_N: expect.closeTo(914, 9), residual_N: expect.closeTo(15, 9) });
    expect(off(0.5)?.residual_N).toBe(5);
    expect(off(0.505)?.residual_N).toBe(5);
    expect(off(-1)).toEqual({ build_N: -820, residual_N: 10 });
    for (const beyond of [0.4, 1.2, -0.9, 0, 4]) expect(off(beyond)).toBeUndefined();
    expect(off(0.7, { outliers: [1] })).toBeUndefined();
    expect(off(0.7, { gasTakenOffByBench: true })?.residual_N).toBeCloseTo(15 + 200, 9);
  });

  it('of samples of one speed are their mean', () => {
    // 1 % apart, 40 N and -10 N off: both halves of a stroke.
    const points = { speed_m_s: [0.5, 0.505, 0.9], force_N: [750, 705, 1000] };
    const residual = residualAt(measurement({ points }), curve, 0.5)?.residual_N;
    // Build 710 and 715.1 N.
    expect(residual).toBeCloseTo((750 - 710 + (705 - 715.1)) / 2, 9);
    // Two runs of the same speeds: from their means of 15 N and 25 N.
    const runs = { speed_m_s: [0.5, 0.5, 1, 1], force_N: [720, 730, 1240, 1250] };
    expect(residualAt(measurement({ points: runs }), curve, 0.75)?.residual_N).toBeCloseTo(20, 9);
  });

  it('scatter by direction, without the outliers', () => {
    const residuals = residualsOf(measurement({ outliers: [1] }), curve);
    expect(scatterOf(residuals, 1)).toEqual({ count: 1, rms_N: 30, rms_share: 30 / 1220, mean_N: 30 });
    const all = residualsOf(measurement(), curve);
    // sqrt((5^2 + 30^2)/2) = 21.506 N.
    expect(scatterOf(all, 1)).toMatchObject({ count: 2, rms_N: expect.closeTo(21.506, 3), mean_N: 17.5 });
    expect(scatterOf(all, -1)).toMatchObject({ count: 1, rms_N: 10 });
    expect(scatterOf([], 1)).toBeUndefined();
  });
});
