import { describe, expect, it } from 'vitest';
import type { FailedForce, ForceCurve, ForcePoint } from '../../../../src/ui/app/solved.ts';
import type { Shown } from '../../../../src/ui/charts/chart-data.ts';
import {
  airReleaseFrom,
  cavitatesFrom,
  failedOf,
  heldFrom,
  rangeOf,
  seriesOf,
  wavesFrom,
} from '../../../../src/ui/charts/chart-data.ts';

const point = (shaftSpeed_m_s: number, part: Partial<ForcePoint> = {}): ForcePoint => ({
  status: 'converged',
  shaftSpeed_m_s,
  force_N: shaftSpeed_m_s * 500,
  gasForce_N: 0,
  frictionForce_N: 0,
  dampingForce_N: 0,
  stopForce_N: 0,
  compressionPressure_Pa: 3e6,
  reboundPressure_Pa: 1e6,
  gasPressure_Pa: 1e6,
  pistonDrop_Pa: 0,
  shimPressure_Pa: 0,
  seatOpening_m: 1e-4,
  flows: { ports_m3_s: 3, bleed_m3_s: 1, leakage_m3_s: 0 },
  airRelease: false,
  gasPressureNeeded_Pa: 0,
  ...part,
});
const failed: FailedForce = { status: 'not-converged', shaftSpeed_m_s: 2, reason: 'residual 1 over 1e-9' };
const base: ForcePoint['base'] = {
  drop_Pa: 5e5,
  shimPressure_Pa: 4e5,
  seatOpening_m: 3e-4,
  flows: { ports_m3_s: 2, bleed_m3_s: 1, leakage_m3_s: 0, poppet_m3_s: 1 },
};
const curve = (...points: (ForcePoint | FailedForce)[]): ForceCurve => {
  const table = { theory: 'small-deflection' as const, pressure_Pa: [], points: [], failures: [] };
  return { theory: 'small-deflection', points, stacks: { compression: table, rebound: table } };
};

const shown = (part: Partial<Shown> = {}): Shown => ({
  direction: 1,
  stack: 'compression',
  valve: 'piston',
  withoutGas: false,
  shimQuantity: 'lift',
  ...part,
});

describe('what a chart shows', () => {
  it('force: both directions over speed, rebound as it pulls, a gap where a speed did not solve', () => {
    const [compression, rebound] = seriesOf('force', 'a', curve(point(-1), point(1), failed, point(3)), shown());
    expect(compression).toMatchObject({ speeds_m_s: [1, 2, 3], values: [500, null, 1500] });
    expect(rebound).toMatchObject({ speeds_m_s: [1], values: [-500] });
  });

  it('force without that of the gas', () => {
    const some = curve(point(-1, { gasForce_N: 80 }), point(1, { gasForce_N: 80 }));
    const lines = seriesOf('force', 'a', some, shown({ withoutGas: true }));
    expect(lines.map(({ values }) => values)).toEqual([[420], [-580]]);
  });

  it('force measured from the baseline: what each direction resists more, a gap where either did not solve', () => {
    const baseline = curve(point(-2), point(-1), point(1), failed, point(3));
    const build = curve(
      { ...failed, shaftSpeed_m_s: -2 },
      point(-1, { force_N: -600 }),
      point(1, { force_N: 450 }),
      point(2),
      point(3, { force_N: 1800 }),
    );
    const [compression, rebound] = seriesOf('force', 'a', build, shown({ comparison: { as: 'difference', baseline } }));
    expect(compression).toMatchObject({ part: 'compression', speeds_m_s: [1, 2, 3], values: [-50, null, 300] });
    expect(rebound).toMatchObject({ part: 'rebound', speeds_m_s: [1, 2], values: [100, null] });
  });

  it('the other charts: the direction on show alone', () => {
    const both = curve(point(-1, { seatOpening_m: 2e-4 }), point(1));
    const rebound = shown({ direction: -1, stack: 'rebound' });
    expect(seriesOf('opening', 'a', both, rebound)[0].values).toEqual([2e-4]);
    expect(seriesOf('pressures', 'a', both, shown()).map(({ values }) => values[0])).toEqual([3e6, 1e6]);
  });

  it('the opening of the base valve, where there is one', () => {
    const both = curve(point(1, { base }), point(2));
    expect(seriesOf('opening', 'a', both, shown({ stack: 'base' }))[0].values).toEqual([3e-4, null]);
  });

  it('paths: one line for each that oil takes, of the valve asked for', () => {
    const some = curve(point(1, { base }), failed);
    const piston = seriesOf('paths', 'a', some, shown());
    expect(piston.map(({ part, values }) => [part, values])).toEqual([
      ['ports', [0.75, null]],
      ['bleed', [0.25, null]],
    ]);
    const parts = seriesOf('paths', 'a', some, shown({ valve: 'base' })).map(({ part, values }) => [part, values[0]]);
    expect(parts).toEqual([
      ['ports', 0.5],
      ['bleed', 0.25],
      ['poppet', 0.25],
    ]);
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

  it('says which chamber is held, and from which speed', () => {
    const held = point(-3, { airRelease: true, voids_m3_s: { compression: 1e-6 } });
    const some = curve(held, point(-2, { airRelease: true, voids_m3_s: { compression: 0 } }), point(3));
    expect(heldFrom(some, -1, 'compression')).toBe(3);
    expect(heldFrom(some, -1, 'rebound')).toBeUndefined();
    expect(heldFrom(some, 1, 'compression')).toBeUndefined();
  });

  it('says from which speed a path cavitates, of piston and base valve each', () => {
    const cavitating = [{ path: 'bleed' as const, flow_m3_s: 2, chokedFlow_m3_s: 1 }];
    const some = curve(point(1), point(2, { cavitating }), point(3, { base: { ...base, cavitating } }));
    expect(cavitatesFrom(some, 1, 'piston')).toBe(2);
    expect(cavitatesFrom(some, 1, 'base')).toBe(3);
    expect(cavitatesFrom(some, -1, 'piston')).toBeUndefined();
  });

  it('says from which speed the rim ruffles, of each stack by its own pressure', () => {
    const at = [1, 2, 3].map((speed) =>
      point(speed, { shimPressure_Pa: speed * 1e5, base: { ...base, shimPressure_Pa: speed * 0.5e5 } }),
    );
    const plain = curve(...at);
    expect(wavesFrom(plain, 'compression')).toBeUndefined();
    const table = { ...plain.stacks.compression, waves: { status: 'found' as const, pressure_Pa: 1.5e5, waves: 3 } };
    const wavy = { ...plain, stacks: { ...plain.stacks, compression: table, base: table } };
    expect(wavesFrom(wavy, 'compression')).toBe(2);
    expect(wavesFrom(wavy, 'rebound')).toBeUndefined();
    expect(wavesFrom(wavy, 'base')).toBe(3);
  });
});
