import { describe, expect, it } from 'vitest';
import { aimSpeeds, changed, pointsFor, pointsOfForces } from '../../../../src/ui/search/aim-points.ts';

const at = (speeds: readonly number[]) => speeds.map((shaftSpeed_m_s) => ({ shaftSpeed_m_s, force_N: 1000 }));

describe('the points of a wanted curve', () => {
  it('lie in the directions in which the stacks work', () => {
    const both = aimSpeeds(['pistonRebound', 'baseCompression'], 2);
    expect([both[0], both.at(-1)]).toEqual([-2, 2]);
    expect(both).toEqual([...both].sort((a, b) => a - b));
    expect(aimSpeeds(['pistonRebound'], 2).every((speed) => speed < 0)).toBe(true);
    const points = at([-1, 1]);
    expect(pointsFor(points, ['pistonCompression'])).toEqual([points[1]]);
    expect(pointsFor(points, ['pistonRebound', 'baseCompression'])).toEqual(points);
  });

  it('leave the gas out, and are none where a speed did not solve', () => {
    const forces = {
      shaftSpeed_m_s: [-1, 1],
      force_N: [-400, 900],
      gasForce_N: [150, 150],
      reasons: [],
      theories: { compression: 'large-deflection', rebound: 'large-deflection' } as const,
    };
    expect(pointsOfForces(forces)).toEqual([
      { shaftSpeed_m_s: -1, force_N: -550 },
      { shaftSpeed_m_s: 1, force_N: 750 },
    ]);
    expect(pointsOfForces({ ...forces, force_N: [null, 900] })).toBeUndefined();
  });

  it('change above a speed or below it, easing in about it', () => {
    const speeds = [-2, 0.5, 0.8, 1.025, 1.25, 2];
    const force = (side: 'above' | 'below') =>
      changed(at(speeds), { percent: 20, side, speed_m_s: 1 }).map(({ force_N }) => Math.round(force_N));
    // Half way between 0.8 and 1.25 m/s half of the change is there.
    expect(force('above')).toEqual([1200, 1000, 1000, 1100, 1200, 1200]);
    expect(force('below')).toEqual([1000, 1200, 1200, 1100, 1000, 1000]);
  });
});
