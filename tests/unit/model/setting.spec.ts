import { describe, expect, it } from 'vitest';
import { adjustersOf } from '../../../src/model/adjusters.ts';
import { type Clicks, withSetting } from '../../../src/model/setting.ts';
import { soundCartridge, soundProject } from '../../helpers/documents.ts';

const NEEDLE = { coneAngle_deg: 20, travelPerClick_mm: 0.1, clicks: 4, clickCount: 20 };

function adjustable() {
  const project = soundProject();
  const [build] = project.builds;
  const bleed = { ...build.bleed, needle: NEEDLE };
  return { ...project, builds: [build, { ...build, id: 'adjustable', bleed }] };
}

describe('withSetting', () => {
  it('changes the oil temperature and the clicks of one build, and nothing else', () => {
    const before = adjustable();
    const kept = structuredClone(before);
    const after = withSetting(before, 'adjustable', { oilTemperature_degC: -5, clicks: 0 });
    expect(before).toEqual(kept);
    expect(after.fluid).toEqual({ ...kept.fluid, temperature_degC: -5 });
    expect(after.builds[0]).toEqual(kept.builds[0]);
    expect(after.builds[1]).toEqual({
      ...kept.builds[1],
      bleed: { ...kept.builds[1].bleed, needle: { ...NEEDLE, clicks: 0 } },
    });
    expect(withSetting(before, 'adjustable', {})).toEqual(kept);
  });

  it.each([
    ['as-found', 3, 'bleed.needle.none', 'builds[0].bleed.needle'],
    ['adjustable', 21, 'bleed.needle.clicks', 'builds[1].bleed.needle.clicks'],
    ['adjustable', 2.5, 'bleed.needle.clicks', 'builds[1].bleed.needle.clicks'],
    ['adjustable', -1, 'bleed.needle.clicks', 'builds[1].bleed.needle.clicks'],
  ])('refuses to turn the needle of %s to %d', (buildId, clicks, code, path) => {
    expect(() => withSetting(adjustable(), buildId, { clicks })).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code, path }) }),
    );
  });
});

describe('withSetting and several adjusters', () => {
  const standing = (clicks: number | Clicks) =>
    adjustersOf(withSetting(soundCartridge(), 'as-found', { clicks }).builds[0]).map((one) => one.clicks);

  it('turns each that is named, and leaves the others where they stand', () => {
    expect(standing({})).toEqual([10, 8, 3, 6]);
    expect(standing({ 'base-needle': 0, 'rebound-spring': 20, poppet: undefined })).toEqual([10, 0, 3, 20]);
    expect(standing({ needle: 1, 'base-needle': 2, poppet: 4, 'rebound-spring': 5 })).toEqual([1, 2, 4, 5]);
  });

  it('turns the needle of the piston with a bare number, or the only adjuster there is', () => {
    expect(standing(2)).toEqual([2, 8, 3, 6]);
    const project = soundProject();
    const { pistonRebound } = project.builds[0].valves;
    const adjuster = { travelPerClick_mm: 0.1, clicks: 0, clickCount: 10 };
    pistonRebound.coilSpring = { diameter_mm: 24, rate_N_mm: 20, preload_N: 40, adjuster };
    expect(adjustersOf(withSetting(project, 'as-found', { clicks: 10 }).builds[0])).toEqual([
      { id: 'rebound-spring', clicks: 10, clickCount: 10 },
    ]);
  });

  it.each<[Clicks, string, string]>([
    [{ 'base-needle': 17 }, 'bleed.needle.clicks', 'builds[0].baseBleed.needle.clicks'],
    [{ poppet: 25 }, 'adjuster.clicks', 'builds[0].basePoppet.adjuster.clicks'],
    [{ poppet: -1 }, 'adjuster.clicks', 'builds[0].basePoppet.adjuster.clicks'],
    [{ 'rebound-spring': 0.5 }, 'adjuster.clicks', 'builds[0].valves.pistonRebound.coilSpring.adjuster.clicks'],
    [{ 'compression-spring': 1 }, 'adjuster.none', 'builds[0].valves.pistonCompression.coilSpring.adjuster'],
  ])('refuses %j with %s', (clicks, code, path) => {
    expect(() => standing(clicks)).toThrow(expect.objectContaining({ fault: expect.objectContaining({ code, path }) }));
  });

  it('names the adjusters that there are, where a bare number could mean several and none is the needle', () => {
    const project = soundCartridge();
    delete project.builds[0].bleed.needle;
    expect(() => withSetting(project, 'as-found', { clicks: 1 })).toThrow(
      expect.objectContaining({
        fault: {
          code: 'bleed.needle.none',
          path: 'builds[0].bleed.needle',
          got: 'no needle',
          wanted: 'an adjuster that the build has: base-needle, poppet, rebound-spring',
        },
      }),
    );
  });
});
