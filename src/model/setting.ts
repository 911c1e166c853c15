/** The document with other settings of the day: what a person changes without opening the damper. */
import { InputError } from '../units/fault.ts';
import { type AdjusterId, adjusterPlace, adjustersOf, withClicks } from './adjusters.ts';
import { joinPath } from './place.ts';
import type { Build, Project } from './project.ts';

export type Clicks = Readonly<Partial<Record<AdjusterId, number>>>;

export interface Setting {
  readonly oilTemperature_degC?: number;
  /** From closed. A bare number turns the only adjuster of the build, or else the needle of its piston. */
  readonly clicks?: number | Clicks;
}

const NEEDLE = { none: 'bleed.needle.none', clicks: 'bleed.needle.clicks' } as const;
const SPRING = { none: 'adjuster.none', clicks: 'adjuster.clicks' } as const;

/** @throws InputError `bleed.needle.none`, `bleed.needle.clicks` for a needle; `adjuster.none`, `adjuster.clicks` for a spring */
export function withSetting(project: Project, buildId: string, { oilTemperature_degC, clicks }: Setting): Project {
  const { fluid, builds } = project;
  return {
    ...project,
    fluid: { ...fluid, temperature_degC: oilTemperature_degC ?? fluid.temperature_degC },
    builds: builds.map((build, i) =>
      clicks === undefined || build.id !== buildId ? build : turned(build, clicks, joinPath('builds', i)),
    ),
  };
}

function turned(build: Build, clicks: number | Clicks, path: string): Build {
  const asked = typeof clicks === 'number' ? { [soleAdjuster(build)]: clicks } : clicks;
  const each = Object.entries(asked) as [AdjusterId, number | undefined][];
  return each.reduce((at, [id, to]) => (to === undefined ? at : turnedOne(at, id, to, path)), build);
}

function soleAdjuster(build: Build): AdjusterId {
  const adjusters = adjustersOf(build);
  return adjusters.length === 1 ? adjusters[0].id : 'needle';
}

function turnedOne(build: Build, id: AdjusterId, clicks: number, buildPath: string): Build {
  const adjusters = adjustersOf(build);
  const adjuster = adjusters.find((one) => one.id === id);
  const { path } = adjusterPlace(build, id, buildPath);
  const code = id === 'needle' || id === 'base-needle' ? NEEDLE : SPRING;
  if (!adjuster) {
    const known = adjusters.map((one) => one.id).join(', ');
    const wanted = known === '' ? 'an adjuster to turn' : `an adjuster that the build has: ${known}`;
    throw new InputError({ code: code.none, path, got: `no ${id}`, wanted });
  }
  if (Number.isInteger(clicks) && clicks >= 0 && clicks <= adjuster.clickCount) return withClicks(build, id, clicks);
  const wanted = `a whole number from 0 to ${adjuster.clickCount}`;
  throw new InputError({ code: code.clicks, path: `${path}.clicks`, got: String(clicks), wanted });
}
