import { describe, expect, it } from 'vitest';
import type { ForcePoint } from '../../../../src/ui/app/solved.ts';
import {
  comparedWith,
  differenceOf,
  largestResistance,
  shareOf,
  speedsWithoutShare,
} from '../../../../src/ui/charts/difference.ts';
import { curve, failed, point } from '../export/points.ts';

const LARGEST_N = 1000;
/** A force that is all damping, at a speed of either sign. */
const damped = (speed_m_s: number, force_N: number): ForcePoint =>
  point(speed_m_s, { force_N, dampingForce_N: force_N, gasForce_N: 0, frictionForce_N: 0 });
/** What the oil does on a rod that the gas pushes out with 150 N. */
const withGas = (speed_m_s: number, dampingForce_N: number): ForcePoint =>
  point(speed_m_s, { force_N: dampingForce_N + 150, dampingForce_N, gasForce_N: 150, frictionForce_N: 0 });

describe('firmer than the baseline', () => {
  it('is more push in compression and more pull in rebound', () => {
    expect(differenceOf(damped(1, 300), damped(1, 200), false)).toBe(100);
    expect(differenceOf(damped(-1, -300), damped(-1, -200), false)).toBe(100);
    expect(differenceOf(damped(-1, -150), damped(-1, -200), false)).toBe(-50);
  });

  it('does not feel the gas that both have, but its share does', () => {
    const [build, baseline] = [withGas(1, 450), withGas(1, 300)];
    for (const withoutGas of [false, true]) expect(differenceOf(build, baseline, withoutGas)).toBe(150);
    expect(shareOf(build, baseline, LARGEST_N, true)).toBe(0.5);
    expect(shareOf(build, baseline, LARGEST_N, false)).toBeCloseTo(150 / 450, 12);
  });

  it('is a share of the baseline in both directions', () => {
    expect(shareOf(damped(1, 250), damped(1, 200), LARGEST_N, false)).toBe(0.25);
    expect(shareOf(damped(-1, -150), damped(-1, -200), LARGEST_N, false)).toBe(-0.25);
  });

  it.each([
    ['has no force', damped(1, 0)],
    ['has less than a hundredth of its largest', damped(1, 9.9)],
    ['goes along with the motion', withGas(-1, -100)],
    ['is the small rest of a pull of oil and a push of gas', withGas(-1, -180)],
  ])('has no share where the baseline %s', (_, baseline) => {
    expect(shareOf(damped(baseline.shaftSpeed_m_s, 50), baseline, LARGEST_N, false)).toBeUndefined();
  });

  it('has one where it just resists enough, and a build may even go along with the motion', () => {
    expect(shareOf(damped(1, 20), damped(1, 10), LARGEST_N, false)).toBe(1);
    // 190 N of oil less 150 N of gas leave 40 N, more than a tenth of 340 N.
    expect(shareOf(withGas(-1, -140), withGas(-1, -190), LARGEST_N, false)).toBeCloseTo(-50 / 40, 12);
  });
});

describe('a curve beside the baseline', () => {
  const baseline = curve(withGas(-2, -600), withGas(-1, -155), withGas(-0.5, -100), damped(1, 200), failed(2));

  it('knows the largest resistance of each direction, which may be none', () => {
    expect(largestResistance(baseline, 1, false)).toBe(200);
    expect(largestResistance(baseline, -1, false)).toBe(450);
    expect(largestResistance(curve(withGas(-1, -100)), -1, false)).toBe(0);
  });

  it('is compared at the very same speed, or not at all', () => {
    const read = comparedWith({ as: 'difference', baseline }, 1, false);
    expect([read(damped(1, 260)), read(damped(2, 260)), read(damped(1.5, 260))]).toEqual([60, undefined, undefined]);
    const share = comparedWith({ as: 'share', baseline }, -1, false);
    expect([share(withGas(-2, -825)), share(withGas(-1, -155))]).toEqual([0.5, undefined]);
  });

  it('says at which speeds there is no share, run by run, whatever did not solve', () => {
    expect(speedsWithoutShare(baseline, -1, false)).toEqual([{ from_m_s: 0.5, to_m_s: 1 }]);
    expect(speedsWithoutShare(baseline, -1, true)).toEqual([]);
    expect(speedsWithoutShare(baseline, 1, false)).toEqual([]);
    const twice = curve(damped(1, 0), damped(2, 900), damped(3, 1), damped(4, 2), failed(5), damped(6, 3));
    expect(speedsWithoutShare(twice, 1, false)).toEqual([
      { from_m_s: 1, to_m_s: 1 },
      { from_m_s: 3, to_m_s: 4 },
      { from_m_s: 6, to_m_s: 6 },
    ]);
  });
});
