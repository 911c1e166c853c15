/** The document with other settings of the day: what a person changes without opening the damper. */
import { InputError } from '../units/fault.ts';
import type { Bleed, Build, Project } from './project.ts';

export interface Setting {
  readonly oilTemperature_degC?: number;
  /** Of the needle of the build, from closed. */
  readonly clicks?: number;
}

/** @throws InputError `bleed.needle.none`, `bleed.needle.clicks` */
export function withSetting(project: Project, buildId: string, { oilTemperature_degC, clicks }: Setting): Project {
  const { fluid, builds } = project;
  const turned = (build: Build, i: number): Build =>
    clicks === undefined || build.id !== buildId
      ? build
      : { ...build, bleed: withClicks(build.bleed, clicks, `builds[${i}].bleed.needle`) };
  return {
    ...project,
    fluid: { ...fluid, temperature_degC: oilTemperature_degC ?? fluid.temperature_degC },
    builds: builds.map(turned),
  };
}

function withClicks(bleed: Bleed, clicks: number, path: string): Bleed {
  const { needle } = bleed;
  if (!needle) throw new InputError({ code: 'bleed.needle.none', path, got: 'no needle', wanted: 'a needle to turn' });
  if (Number.isInteger(clicks) && clicks >= 0 && clicks <= needle.clickCount)
    return { ...bleed, needle: { ...needle, clicks } };
  const wanted = `a whole number from 0 to ${needle.clickCount}`;
  throw new InputError({ code: 'bleed.needle.clicks', path: `${path}.clicks`, got: String(clicks), wanted });
}
