/** `shimwright force`: force against shaft speed of one build, at one or several oil temperatures and settings of its needle. */
import { decodeProject } from '../../model/codec.ts';
import type { Build, Project } from '../../model/project.ts';
import { OIL_TEMPERATURES } from '../../model/project-schema.ts';
import { withSetting } from '../../model/setting.ts';
import { forceCurveForBuild } from '../../solver/index.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import { type Cell, textTable } from '../render/text-table.ts';
import { BAND_COLUMNS, COLUMNS, type Column, cell, gauge_bar, type Point } from './force-columns.ts';
import { theoryOf } from './lift.ts';

export const SPEEDS = 'speeds-m-s';
export const TEMPERATURES = 'temperature';
export const CLICKS = 'clicks';
export const BAND = 'band';

/** One row of the output: the numbers that were asked for, so that the echo is exact, and what came of them. */
interface Row {
  readonly asked: readonly Asked[];
  readonly point: Point;
}

interface Asked {
  readonly key: string;
  readonly heading: string;
  readonly value: number;
}

function render(rows: readonly Row[], head: Readonly<Record<string, unknown>>, values: Values): string {
  const columns = [...COLUMNS, ...(values.has(BAND) ? BAND_COLUMNS : [])];
  const cells = ({ asked, point }: Row, shown: readonly Column[]): Cell[] => [
    ...asked.map(({ value }) => value),
    point.status,
    ...shown.map((column) => cell(point, column)),
  ];
  const [{ asked }] = rows;
  const keys = [...asked.map(({ key }) => key), 'status', ...columns.map(({ key }) => key)];
  const whole = rows.map((row) => cells(row, columns));
  if (values.has('csv')) return csv(keys, whole);
  if (values.has('json')) {
    const points = whole.map((row) => Object.fromEntries(keys.map((key, index) => [key, row[index]])));
    return json({ format: 'shimwright/force', version: 1, ...head, points });
  }
  const shown = columns.filter(({ heading }) => heading !== undefined);
  const headings = [...asked.map(({ heading }) => heading), 'status', ...shown.map(({ heading = '' }) => heading)];
  return textTable(
    headings,
    rows.map((row) => cells(row, shown)),
  );
}

/** By id, else by name; without a wish, the baseline. */
function findBuild({ builds, baselineBuild }: Project, wish: string | undefined): Build {
  const wanted = wish ?? baselineBuild;
  const byId = builds.filter(({ id }) => id === wanted);
  const found = byId.length > 0 ? byId : builds.filter(({ name }) => name === wanted);
  if (found.length === 1) return found[0];
  const known = builds.map(({ id, name }) => `${id} (${name})`).join(', ');
  const many = found.length > 1 ? 'several builds have that name, choose by id' : 'no such build';
  throw new UsageError(`--build: got ${JSON.stringify(wanted)}: ${many}; the builds are ${known}`);
}

/** The values of an option that sweeps; one undefined where it was not given. */
function swept(
  values: Values,
  option: string,
  range: { from: number; upTo?: number },
): readonly (number | undefined)[] {
  const list = values.get(option);
  return list === undefined ? [undefined] : numberList(list, option, range);
}

function curveRows(project: Project, build: Build, values: Values): Row[] {
  const speeds_m_s = numberList(values.get(SPEEDS) ?? '', SPEEDS);
  const temperatures = swept(values, TEMPERATURES, OIL_TEMPERATURES);
  const clicks = swept(values, CLICKS, { from: 0 });
  const options = { speeds_m_s, theory: theoryOf(values), bands: values.has(BAND) };
  return temperatures.flatMap((oilTemperature_degC) =>
    clicks.flatMap((turned) => {
      const setting = {
        ...(oilTemperature_degC !== undefined && { oilTemperature_degC }),
        ...(turned !== undefined && { clicks: turned }),
      };
      const { points } = forceCurveForBuild(withSetting(project, build.id, setting), build.id, options);
      return points.map((point, i) => ({
        asked: [
          { key: 'shaftSpeed_m_s', heading: 'speed m/s', value: speeds_m_s[i] },
          ...asked('oilTemperature_degC', 'oil °C', oilTemperature_degC),
          ...asked('clicks', 'clicks', turned),
        ],
        point,
      }));
    }),
  );
}

const asked = (key: string, heading: string, value: number | undefined): Asked[] =>
  value === undefined ? [] : [{ key, heading, value }];

export async function force({ file, values }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values.get('build'));
  const rows = curveRows(project, build, values);
  const head = {
    theory: theoryOf(values),
    project: project.name,
    build: { id: build.id, name: build.name },
    // A sweep has it in every point.
    ...(!values.has(TEMPERATURES) && { oilTemperature_degC: project.fluid.temperature_degC }),
  };
  return {
    exit: rows.every(({ point }) => isWhole(point)) ? EXIT.done : EXIT.failed,
    result: render(rows, head, values),
    talk: rows.flatMap(remarks),
  };
}

const isWhole = (point: Point): boolean =>
  point.status === 'converged' && (point.band?.status ?? 'converged') === 'converged';

const UNITS: Readonly<Record<string, string>> = { shaftSpeed_m_s: 'm/s', oilTemperature_degC: '°C', clicks: 'clicks' };

function remarks({ asked, point }: Row): string[] {
  const at = `at ${asked.map(({ key, value }) => `${value} ${UNITS[key]}`).join(', ')}`;
  if (point.status !== 'converged') return [`${at}: ${point.status}: ${point.reason}`];
  const { band, bleedCavitates } = point;
  const cavitation = bleedCavitates ? [`${at}: the bleed cavitates and passes less than is counted`] : [];
  const noBand = band && band.status !== 'converged' ? [`${at}: no band: ${band.status}: ${band.reason}`] : [];
  if (!point.airRelease) return [...cavitation, ...noBand];
  const needed = gauge_bar(point.gasPressureNeeded_Pa).toFixed(1);
  return [
    `${at}: air comes out of the oil, the force is limited; ${needed} bar gauge of gas would prevent it`,
    ...cavitation,
    ...noBand,
  ];
}
