import { expect, it } from 'vitest';
import { POINTS_PER_DIRECTION, solvedSpeeds, speedsUpTo } from '../../../../src/ui/app/speeds.ts';

it('speeds rise from near 0 to the top, closest together at low speed', () => {
  const speeds = speedsUpTo(2);
  const steps = speeds.map((speed, i) => speed - (speeds[i - 1] ?? 0));
  expect(speeds).toHaveLength(POINTS_PER_DIRECTION);
  expect(speeds[0]).toBeGreaterThan(0);
  expect(speeds.at(-1)).toBeCloseTo(2, 12);
  for (let i = 1; i < steps.length; i++) expect(steps[i]).toBeGreaterThan(steps[i - 1]);
});

it('both directions are the same speeds, and none is 0', () => {
  const both = solvedSpeeds(1);
  expect(
    both
      .filter((speed) => speed < 0)
      .map((speed) => -speed)
      .reverse(),
  ).toEqual(speedsUpTo(1));
  expect(both.filter((speed) => speed > 0)).toEqual(speedsUpTo(1));
  expect(both).not.toContain(0);
});
