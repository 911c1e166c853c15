import { describe, expect, it } from 'vitest';
import { withSetting } from '../../../src/model/setting.ts';
import { soundProject } from '../../helpers/documents.ts';

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
