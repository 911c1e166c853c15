import { describe, expect, it } from 'vitest';
import type { ForceBand, ForcePoint } from '../../../../src/ui/app/solved.ts';
import { bandBetween } from '../../../../src/ui/section/band-between.ts';
import { pointBetween } from '../../../../src/ui/section/point-between.ts';

const point = (value: number, part: Partial<ForcePoint> = {}): ForcePoint => ({
  status: 'converged',
  shaftSpeed_m_s: value,
  force_N: value,
  gasForce_N: value,
  frictionForce_N: value,
  dampingForce_N: value,
  stopForce_N: value,
  compressionPressure_Pa: value,
  reboundPressure_Pa: value,
  gasPressure_Pa: value,
  pistonDrop_Pa: value,
  shimPressure_Pa: value,
  seatOpening_m: value,
  flows: { ports_m3_s: value, bleed_m3_s: value, leakage_m3_s: value },
  airRelease: false,
  gasPressureNeeded_Pa: value,
  ...part,
});

describe('the damper between two speeds', () => {
  it('has every number at its share of the way', () => {
    const { status, airRelease, flows, ...numbers } = pointBetween(point(2), point(4), 0.25);
    expect(status).toBe('converged');
    expect(airRelease).toBe(false);
    expect([...new Set([...Object.values(numbers), ...Object.values(flows)])]).toEqual([2.5]);
  });

  it('has the base valve where both ends have it, with the paths that either has', () => {
    const base = (value: number, flows: object): ForcePoint['base'] => ({
      drop_Pa: value,
      shimPressure_Pa: value,
      seatOpening_m: value,
      flows: { ports_m3_s: value, bleed_m3_s: value, leakage_m3_s: 0, ...flows },
    });
    const [a, b] = [point(0, { base: base(2, {}) }), point(0, { base: base(4, { poppet_m3_s: 4 }) })];
    expect(pointBetween(a, b, 0.5).base).toEqual(base(3, { poppet_m3_s: 2 }));
    expect(pointBetween(a, point(0), 0.5).base).toBeUndefined();
    expect('check_m3_s' in (pointBetween(a, b, 0.5).base?.flows ?? {})).toBe(false);
  });

  it('has the jets of either end, from nothing where the other has none', () => {
    const ports = (speed_m_s: number) => ({ path: 'ports' as const, flow_m3_s: speed_m_s * 2, speed_m_s });
    const bleed = { path: 'bleed' as const, flow_m3_s: 4, speed_m_s: 8 };
    const [a, b] = [point(0, { jets: [ports(10)] }), point(0, { jets: [ports(20), bleed] })];
    expect(pointBetween(a, b, 0.5).jets).toEqual([ports(15), { path: 'bleed', flow_m3_s: 2, speed_m_s: 4 }]);
    expect(pointBetween(point(0), point(0), 0.5)).not.toHaveProperty('jets');
    const base = { drop_Pa: 0, shimPressure_Pa: 0, seatOpening_m: 0, flows: point(0).flows, jets: [ports(6)] };
    expect(pointBetween(point(0, { base }), point(0, { base }), 0.5).base?.jets).toEqual([ports(6)]);
  });

  it('warns of what holds at either end', () => {
    const held = point(0, { airRelease: true, voids_m3_s: { rebound: 2 }, bleedCavitates: true });
    for (const between of [pointBetween(point(0), held, 0.5), pointBetween(held, point(0), 0.5)]) {
      expect(between).toMatchObject({ airRelease: true, voids_m3_s: { rebound: 1 }, bleedCavitates: true });
    }
    const cavitating = [{ path: 'bleed' as const, flow_m3_s: 2, chokedFlow_m3_s: 1 }];
    expect(pointBetween(point(0, { cavitating }), point(0), 0.9).cavitating).toEqual(cavitating);
    expect(Object.keys(pointBetween(point(0), point(0), 0.5))).not.toContain('cavitating');
    expect(pointBetween(point(0), point(0), 0.5).voids_m3_s).toBeUndefined();
  });
});

describe('the band between two speeds', () => {
  const band = (low_N: number, high_N: number, mostFrom: 'jetDischarge' | 'sharpEdgeDischarge'): ForceBand => ({
    status: 'converged',
    low_N,
    high_N,
    mostFrom,
  });

  it('is straight, and most of it comes from what the nearer end says', () => {
    const [a, b] = [band(100, 200, 'jetDischarge'), band(300, 600, 'sharpEdgeDischarge')];
    expect(bandBetween(a, b, 0.25)).toEqual(band(150, 300, 'jetDischarge'));
    expect(bandBetween(a, b, 0.75)).toMatchObject({ mostFrom: 'sharpEdgeDischarge' });
  });

  it('is none where one end has none, and says why where one end failed', () => {
    const failed: ForceBand = { status: 'beyond-table', reason: 'jetDischarge: too far' };
    expect(bandBetween(undefined, band(1, 2, 'jetDischarge'), 0.5)).toBeUndefined();
    expect(bandBetween(band(1, 2, 'jetDischarge'), failed, 0.1)).toBe(failed);
  });
});
