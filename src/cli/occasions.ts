/** Which build is asked about, and under which settings of the day: the options that all commands about a damper share. */
import type { Build, Project } from '../model/project.ts';
import { OIL_TEMPERATURES } from '../model/project-schema.ts';
import { withSetting } from '../model/setting.ts';
import { metresFromMillimetres } from '../units/si.ts';
import { CLICKS, clickSettings, type Turned } from './clicks.ts';
import { UsageError, type Values } from './command.ts';
import { type Allowed, numberList } from './number-list.ts';
import type { Asked } from './render/rows.ts';

export const BUILD = 'build';
export const TEMPERATURES = 'temperature';
export const POSITIONS = 'position';

/** One setting of a sweep. */
export interface Occasion {
  /** What of it was asked for. */
  readonly asked: readonly Asked[];
  /** As it is then. */
  readonly project: Project;
  /** Where the piston stands, from full extension [m]; when absent, mid-stroke. */
  readonly stroke_m?: number;
}

/** By id, else by name; without a wish, the baseline. @throws UsageError that names the builds */
export function findBuild({ builds, baselineBuild }: Project, values: Values): Build {
  const wanted = values.get(BUILD) ?? baselineBuild;
  const byId = builds.filter(({ id }) => id === wanted);
  const found = byId.length > 0 ? byId : builds.filter(({ name }) => name === wanted);
  if (found.length === 1) return found[0];
  const known = builds.map(({ id, name }) => `${id} (${name})`).join(', ');
  const many = found.length > 1 ? 'several builds have that name, choose by id' : 'no such build';
  throw new UsageError(`--${BUILD}: got ${JSON.stringify(wanted)}: ${many}; the builds are ${known}`);
}

/** Every combination of the temperatures, positions and clicks; one occasion, as the document has it, without any of them. */
export function occasionsOf(project: Project, build: Build, values: Values): Occasion[] {
  const { travel_mm } = project.damper;
  const temperatures = swept(values, TEMPERATURES, { ...OIL_TEMPERATURES, unit: '°C' }, (value) => [
    { key: 'oilTemperature_degC', heading: ['oil', '°C'], value, words: `${value} °C` },
  ]);
  const positions = swept(values, POSITIONS, { from: 0, upTo: travel_mm, unit: 'mm' }, (value) => [
    { key: 'position_mm', heading: ['position', 'mm'], value, words: `${value} mm` },
  ]);
  const turns = turnsOf(values, build);
  return temperatures.flatMap((temperature) =>
    positions.flatMap((position) =>
      turns.map(({ asked, clicks }) => ({
        asked: [...temperature.asked, ...position.asked, ...asked],
        project: withSetting(project, build.id, { oilTemperature_degC: temperature.value, clicks }),
        ...(position.value !== undefined && { stroke_m: metresFromMillimetres(position.value) }),
      })),
    ),
  );
}

interface Swept {
  readonly value?: number;
  readonly asked: readonly Asked[];
}

/** The values of an option that sweeps; one without a value where it was not given. */
function swept(values: Values, option: string, range: Allowed, asked: (value: number) => Asked[]): Swept[] {
  const list = values.get(option);
  if (list === undefined) return [{ asked: [] }];
  return numberList(list, option, range).map((value) => ({ value, asked: asked(value) }));
}

/** The settings of the adjusters; one that turns none where the option was not given. */
function turnsOf(values: Values, build: Build): (Pick<Turned, 'asked'> & Partial<Turned>)[] {
  const text = values.get(CLICKS);
  return text === undefined ? [{ asked: [] }] : clickSettings(text, build);
}

/** What stands at the head of every JSON about a damper; a sweep has its temperature and position in every point. */
export function headOf(project: Project, { id, name }: Build, values: Values): Readonly<Record<string, unknown>> {
  return {
    project: project.name,
    build: { id, name },
    ...(!values.has(TEMPERATURES) && { oilTemperature_degC: project.fluid.temperature_degC }),
    ...(!values.has(POSITIONS) && { position_mm: project.damper.travel_mm / 2 }),
  };
}
