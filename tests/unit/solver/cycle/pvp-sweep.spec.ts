import { describe, expect, it } from 'vitest';
import { pvpSweep } from '../../../../src/solver/cycle/pvp-sweep.ts';
import { damperFromProject } from '../../../../src/solver/from-model.ts';
import { SolveStopped } from '../../../../src/solver/stopped.ts';
import { loadDemo } from '../../../helpers/demo-curves.ts';

const project = loadDemo('larkspur-trail-rear.shimwright.json');
const damper = damperFromProject(project, project.baselineBuild);
const STROKE = { kind: 'sine', stroke_m: 0.05, middle_m: damper.travel_m / 2, cycles: 2 } as const;
const THEORY = { theory: 'small-deflection' } as const;

describe('a sweep over frequencies', () => {
  it('gives a point each at pi S f, faster and harder both ways', () => {
    const points = pvpSweep(damper, STROKE, [0.5, 1, 2], THEORY);
    // By hand: pi 0.05 m 0.5 /s = 0.0785398 m/s.
    expect(points.map(({ peakSpeed_m_s }) => peakSpeed_m_s.toFixed(7))).toEqual([
      '0.0785398',
      '0.1570796',
      '0.3141593',
    ]);
    const forces = points.map((point) => {
      if (point.status !== 'finished') throw new Error(point.reason);
      expect(point.compression.speed_m_s).toBeCloseTo(point.peakSpeed_m_s, 12);
      expect(point.rebound.speed_m_s).toBeCloseTo(0 - point.peakSpeed_m_s, 12);
      return [point.compression.force_N, 0 - point.rebound.force_N];
    });
    for (const i of [1, 2]) for (const way of [0, 1]) expect(forces[i][way]).toBeGreaterThan(forces[i - 1][way]);
  });

  it('carries a failed run as a point with its reason', () => {
    const [point] = pvpSweep(damper, STROKE, [1], { ...THEORY, coefficients: { longOrificeFactor: Number.NaN } });
    expect(point).toMatchObject({ status: 'valve', frequency_Hz: 1, reason: expect.stringMatching(/.{10}/) });
  });

  it('stops when asked', () => {
    expect(() => pvpSweep(damper, STROKE, [1, 2], THEORY, { shouldStop: () => true })).toThrow(SolveStopped);
  });
});
