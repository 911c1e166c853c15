import { describe, expect, it } from 'vitest';
import type { ForceChange } from '../../../../src/model/project.ts';
import { movedPoint, nearestPlace, stepOf } from '../../../../src/ui/aim/aim-points.ts';
import { aimSpeeds, boundsOf, factorOf, pointsOn } from '../../../../src/ui/aim/changed-force.ts';
import { distanceOf } from '../../../../src/ui/aim/distance.ts';

const above: ForceChange = { direction: 'both', range: 'above', speed_m_s: 1, change_percent: 15 };
const below: ForceChange = { direction: 'rebound', range: 'below', speed_m_s: 0.2, change_percent: -10 };

describe('a change of a build', () => {
  it('acts whole in its range, in its direction, and fades out over a fifth of its speed', () => {
    const at = [1, 2, 0.9, 0.8, 0.5].map((speed) => factorOf([above], speed));
    for (const [i, wanted] of [1.15, 1.15, 1.075, 1, 1].entries()) expect(at[i]).toBeCloseTo(wanted, 12);
    expect([-0.1, -0.2, 0.1].map((speed) => factorOf([below], speed))).toEqual([0.9, 0.9, 1]);
    expect(factorOf([below], -0.22)).toBeCloseTo(0.95, 12);
    expect(factorOf([below], -0.25)).toBe(1);
    expect(factorOf([{ ...above, range: 'all' }], 0.01)).toBeCloseTo(1.15, 12);
  });

  it('acts on what the others leave', () => {
    expect(factorOf([above, { ...below, range: 'all' }], -1.5)).toBeCloseTo(1.15 * 0.9, 12);
  });

  it('has points where it begins and where it has faded out', () => {
    const speeds = aimSpeeds(2, boundsOf([above, below]));
    for (const bound of [1, 0.8, 0.2, 0.24]) for (const way of [1, -1]) expect(speeds).toContain(way * bound);
    expect([...speeds].sort((a, b) => a - b)).toEqual(speeds);
    expect(speeds).not.toContain(0);
  });

  it('takes the force between solved speeds, and leaves out what is not solved', () => {
    const curve = { shaftSpeed_m_s: [-2, -1, 1, 2], force_N: [-500, -300, 100, 200] };
    expect(pointsOn(curve, [-1.5, -1, 1, 1.5, 3], [])).toEqual([
      { shaftSpeed_m_s: -1.5, force_N: -400 },
      { shaftSpeed_m_s: -1, force_N: -300 },
      { shaftSpeed_m_s: 1, force_N: 100 },
      { shaftSpeed_m_s: 1.5, force_N: 150 },
    ]);
    expect(pointsOn(curve, [1.5], [above])).toEqual([{ shaftSpeed_m_s: 1.5, force_N: 172.5 }]);
    expect(pointsOn({ ...curve, force_N: [-500, null, 100, 200] }, [-1.5], [])).toEqual([]);
  });
});

describe('the distance from an aim', () => {
  const points = [
    { shaftSpeed_m_s: -1, force_N: -300 },
    { shaftSpeed_m_s: 1, force_N: 400 },
  ];
  const forces = {
    shaftSpeed_m_s: [-1, 1],
    force_N: [-253, 454],
    gasForce_N: [50, 50],
    reasons: [],
    theories: { compression: 'large-deflection', rebound: 'large-deflection' } as const,
  };

  // Without gas -303 and 404: off by 3 and 4, sqrt(25/2) = 3.5355 N, of sqrt(250000/2) = 353.55 N a hundredth.
  it('is the root mean square without gas, and its share of that of the aim', () => {
    const { rms_N, share } = distanceOf({ points }, forces) ?? { rms_N: 0 };
    expect(rms_N).toBeCloseTo(3.5355, 4);
    expect(share).toBeCloseTo(0.01, 12);
  });

  it('is none where a speed did not solve, and no share of nothing', () => {
    expect(distanceOf({ points }, { ...forces, force_N: [-253, null] })).toBeUndefined();
    const still = points.map((point) => ({ ...point, force_N: 0 }));
    expect(distanceOf({ points: still }, forces)).not.toHaveProperty('share');
  });
});

describe('a point of an aim', () => {
  const points = [-1, -0.5, 0.5, 1].map((shaftSpeed_m_s) => ({ shaftSpeed_m_s, force_N: 100 * shaftSpeed_m_s }));
  const speedAfter = (at: number, shaftSpeed_m_s: number): number =>
    movedPoint(points, at, { shaftSpeed_m_s, force_N: 7 })[at].shaftSpeed_m_s;

  it('moves between its neighbours and stays on its side of rest', () => {
    expect(speedAfter(2, 0.7)).toBe(0.7);
    expect(speedAfter(2, 3)).toBe(0.995);
    expect(speedAfter(2, -3)).toBe(0.005);
    expect(speedAfter(1, 2)).toBe(-0.005);
    expect(speedAfter(3, 9)).toBe(9);
    expect(movedPoint(points, 2, { shaftSpeed_m_s: 0.6, force_N: 12.34 })[2].force_N).toBe(12.3);
    expect(movedPoint(points, 2, { shaftSpeed_m_s: 0.6, force_N: 0 })[1]).toBe(points[1]);
  });

  it('moves by arrow keys, farther with Shift', () => {
    expect(stepOf('ArrowUp', false)).toEqual({ force_N: 5, speed_m_s: 0 });
    expect(stepOf('ArrowLeft', true)).toEqual({ force_N: 0, speed_m_s: -0.1 });
    expect(stepOf('Tab', false)).toBeUndefined();
  });
});

describe('a press among points', () => {
  it('takes the nearest, the first of two as near', () => {
    const places = [0, 30, 50].map((x) => ({ x, y: 10 }));
    expect([5, 14, 16, 41, 90].map((x) => nearestPlace(places, { x, y: 0 }))).toEqual([0, 0, 1, 2, 2]);
    expect(nearestPlace(places, { x: 40, y: 10 })).toBe(1);
  });
});
