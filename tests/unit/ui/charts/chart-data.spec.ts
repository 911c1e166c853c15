import { describe, expect, it } from 'vitest';
import type { FailedForce, ForceCurve, ForcePoint } from '../../../../src/ui/app/solved.ts';
import {
  airReleaseFrom,
  bleedShare,
  failedOf,
  rangeOf,
  seriesOf,
  wavesFrom,
} from '../../../../src/ui/charts/chart-data.ts';
import type { ShownLine } from '../../../../src/ui/charts/chart-model.ts';
import { placeNames } from '../../../../src/ui/charts/line-names.ts';

const point = (shaftSpeed_m_s: number, part: Partial<ForcePoint> = {}): ForcePoint => ({
  status: 'converged',
  shaftSpeed_m_s,
  force_N: shaftSpeed_m_s * 500,
  gasForce_N: 0,
  frictionForce_N: 0,
  dampingForce_N: 0,
  compressionPressure_Pa: 3e6,
  reboundPressure_Pa: 1e6,
  gasPressure_Pa: 1e6,
  pistonDrop_Pa: 0,
  shimPressure_Pa: 0,
  seatOpening_m: 1e-4,
  flows: { ports_m3_s: 3e-4, bleed_m3_s: 1e-4, leakage_m3_s: 0 },
  airRelease: false,
  gasPressureNeeded_Pa: 0,
  ...part,
});
const failed: FailedForce = { status: 'not-converged', shaftSpeed_m_s: 2, reason: 'residual 1 over 1e-9' };
const curve = (...points: (ForcePoint | FailedForce)[]): ForceCurve => {
  const table = { theory: 'small-deflection' as const, pressure_Pa: [], points: [], failures: [] };
  return { theory: 'small-deflection', points, stacks: { compression: table, rebound: table } };
};

describe('what a chart shows', () => {
  it('force: both directions over speed, rebound as it pulls, a gap where a speed did not solve', () => {
    const [compression, rebound] = seriesOf('force', 'a', curve(point(-1), point(1), failed, point(3)), 1);
    expect(compression).toMatchObject({ speeds_m_s: [1, 2, 3], values: [500, null, 1500] });
    expect(rebound).toMatchObject({ speeds_m_s: [1], values: [-500] });
  });

  it('the other charts: the direction on show alone', () => {
    const both = curve(point(-1, { seatOpening_m: 2e-4 }), point(1));
    expect(seriesOf('opening', 'a', both, -1)[0].values).toEqual([2e-4]);
    expect(seriesOf('pressures', 'a', both, 1).map(({ values }) => values[0])).toEqual([3e6, 1e6]);
    expect(seriesOf('paths', 'a', both, 1)[0].values[0]).toBeCloseTo(0.25, 12);
  });

  it('the share of the bleed counts oil, whichever way it goes, and is 0 when nothing moves', () => {
    expect(bleedShare(point(-1, { flows: { ports_m3_s: -3, bleed_m3_s: -1, leakage_m3_s: -4 } }))).toBe(0.125);
    expect(bleedShare(point(1, { flows: { ports_m3_s: 0, bleed_m3_s: 0, leakage_m3_s: 0 } }))).toBe(0);
  });

  it('the axis holds every value and zero', () => {
    const [low, high] = rangeOf([null, -200, 800]);
    expect(low).toBeLessThan(-200);
    expect(high).toBeGreaterThan(800);
    expect(rangeOf([3, 4])[0]).toBe(0);
    expect(rangeOf([])[1]).toBeGreaterThan(0);
  });

  it('names the speeds that failed and where air comes out', () => {
    const some = curve(point(-2, { airRelease: true }), point(-1), point(1), failed);
    expect(failedOf(some)).toEqual([failed]);
    expect(airReleaseFrom(some, -1)).toBe(2);
    expect(airReleaseFrom(some, 1)).toBeUndefined();
  });

  it('says from which speed the rim ruffles', () => {
    const at = [1, 2, 3].map((speed) => point(speed, { shimPressure_Pa: speed * 1e5 }));
    const plain = curve(...at);
    expect(wavesFrom(plain, 1)).toBeUndefined();
    const waves = { status: 'found' as const, pressure_Pa: 1.5e5, waves: 3 };
    const wavy = { ...plain, stacks: { ...plain.stacks, compression: { ...plain.stacks.compression, waves } } };
    expect(wavesFrom(wavy, 1)).toBe(2);
    expect(wavesFrom(wavy, -1)).toBeUndefined();
  });
});

describe('names of lines', () => {
  const line = (label: string, last: number, part: ShownLine['part'] = 'compression'): ShownLine => ({
    buildId: label,
    label,
    name: label,
    part,
    x: [0, 100, 200],
    y: [0, last / 2, last],
    colour: '',
    dash: 'solid',
    width: 2,
    faded: false,
  });
  const scales = { x: (value: number) => value, y: (value: number) => 300 - value };

  it('stand clear of one another, however close the lines are', () => {
    const names = placeNames(
      ['a', 'b', 'c', 'd'].map((label) => line(label, 200)),
      scales,
      0,
    );
    const ys = names.map(({ y }) => y).sort((a, b) => a - b);
    expect(names).toHaveLength(4);
    for (let i = 1; i < ys.length; i++) expect(ys[i] - ys[i - 1]).toBeGreaterThanOrEqual(14);
  });

  it('are written once for the two directions of a build, and never off the chart', () => {
    const names = placeNames([line('a', 290), line('a', -100, 'rebound')], scales, 19);
    expect(names).toHaveLength(1);
    expect(names[0].y).toBe(19);
  });
});
