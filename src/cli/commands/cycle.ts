/** `shimwright cycle`: a damper driven over time, by a sine stroke or along a trace; one run in full, or several side by side. */
import { decodeProject } from '../../model/codec.ts';
import type { Build, Damper, Project } from '../../model/project.ts';
import { type DrivenDamper, dampingCyclesForBuild, type FailedCycle, heatedMassesOf } from '../../solver/index.ts';
import { tidy } from '../../units/convert.ts';
import { EXIT, type Form, type Outcome, type Request, type Values } from '../command.ts';
import { CYCLES, motionsOf, STROKE, TRACE } from '../cycle-motion.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { findBuild, headOf, type Occasion, occasionsOf } from '../occasions.ts';
import { oilRemarks } from '../oil-reach.ts';
import { mm } from '../quantities.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import { numberText } from '../render/number-text.ts';
import { type Asked, type Row, renderRows, whereOf } from '../render/rows.ts';
import { type Cell, textTable } from '../render/text-table.ts';
import { theoryOf } from '../theories.ts';
import { type RunColumn, type RunReading, readRun, runColumns } from './cycle-columns.ts';
import { samplesOf } from './cycle-series.ts';

export const HYSTERESIS_SPEED = 'hysteresis-m-s';

interface AskedRun {
  readonly asked: readonly Asked[];
  readonly ended: DrivenDamper | FailedCycle;
  /** Absent where the run failed. */
  readonly reading?: RunReading;
}

export async function cycle({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const runs = await runsOf(project, build, values);
  return {
    exit: runs.every(({ reading }) => reading) ? EXIT.done : EXIT.failed,
    result: render(runs, columnsFor(project.damper, values), headFor(project, build, values), { values, width }),
    talk: [
      ...runs.flatMap((run) => [...remarks(run), ...hysteresisRemarks(run, values)]),
      ...oilRemarks(project, values),
    ],
  };
}

async function runsOf(project: Project, build: Build, values: Values): Promise<AskedRun[]> {
  const motions = await motionsOf(project, values);
  const speed_m_s = hysteresisSpeed(values);
  return occasionsOf(project, build, values).flatMap(({ asked, project: then, stroke_m }: Occasion) => {
    const middle_mm = stroke_m === undefined ? project.damper.travel_mm / 2 : tidy(mm(stroke_m));
    const drives = motions.map(({ driveAbout }) => driveAbout(middle_mm));
    const heated = heatedMassesOf(then, build.id);
    return dampingCyclesForBuild(then, build.id, drives, { theory: theoryOf(values) }).map((ended, i) => ({
      asked: [...motions[i].asked, ...asked],
      ended,
      ...(ended.status === 'finished' && { reading: readRun(ended, heated, speed_m_s) }),
    }));
  });
}

function hysteresisSpeed(values: Values): number | undefined {
  const text = values.get(HYSTERESIS_SPEED);
  return text === undefined
    ? undefined
    : numberList(text, HYSTERESIS_SPEED, { above: 0, single: true, unit: 'm/s' })[0];
}

function headFor(project: Project, build: Build, values: Values): Readonly<Record<string, unknown>> {
  const { position_mm, ...head } = headOf(project, build, values);
  const number = (option: string, key: string) => values.has(option) && { [key]: Number(values.get(option)) };
  return {
    format: 'shimwright/cycle',
    version: 1,
    theory: theoryOf(values),
    ...head,
    ...(!values.has(TRACE) && position_mm !== undefined && { position_mm }),
    ...number(STROKE, 'stroke_mm'),
    ...number(CYCLES, 'cycles'),
  };
}

function render(
  runs: readonly AskedRun[],
  columns: readonly RunColumn[],
  head: Readonly<Record<string, unknown>>,
  { values, width }: Form,
): string {
  if (values.has('json')) return json({ ...head, runs: runs.map((run) => runRecord(run, columns)) });
  if (runs.length > 1) return renderRows(runs.map(rowOf), columns, head, { values, width });
  const [{ ended, reading }] = runs;
  if (values.has('csv')) {
    const { keys, rows } =
      ended.status === 'finished' ? samplesOf(ended) : { keys: ['status'], rows: [[ended.status]] };
    return csv(keys, rows);
  }
  return textTable(['status', ended.status], reading ? columns.map((column) => listed(column, reading)) : []);
}

/** The units of a list differ by the line. */
function listed({ label, read }: RunColumn, reading: RunReading): [string, Cell] {
  const [name, unit] = typeof label === 'string' ? [label] : label;
  const value = read(reading);
  return [unit ? `${name}, ${unit}` : name, typeof value === 'number' ? numberText(value, unit) : value];
}

const columnsFor = (damper: Damper, values: Values): RunColumn[] =>
  runColumns(chambersOf(damper), values.has(HYSTERESIS_SPEED));

/** As the runs name them, from the gas on. */
const chambersOf = ({ layout }: Damper): readonly string[] =>
  layout === 'monotube' ? ['compression', 'rebound'] : ['reservoir', 'compression', 'rebound'];

const rowOf = ({ asked, ended, reading }: AskedRun): Row<RunReading> => ({
  asked,
  status: ended.status,
  item: reading,
});

/** Everything of a run; a failed one has its reason and no number. */
function runRecord({ asked, ended, reading }: AskedRun, columns: readonly RunColumn[]): Record<string, unknown> {
  const echo = Object.fromEntries(asked.map(({ key, value }) => [key, value]));
  if (ended.status !== 'finished' || !reading) return { ...echo, ...ended };
  const { keys, rows } = samplesOf(ended);
  return {
    ...echo,
    status: ended.status,
    ...Object.fromEntries(columns.map(({ key, read }) => [key, read(reading)])),
    samples: rows.map((row) => Object.fromEntries(keys.map((key, i) => [key, row[i]]))),
  };
}

function remarks({ asked, ended }: AskedRun): string[] {
  const where = asked.length > 0 ? `${whereOf(asked)}: ` : '';
  if (ended.status === 'finished') return voidRemarks(ended).map((remark) => `${where}${remark}`);
  const when = ended.time_s === undefined ? '' : ` after ${ended.time_s.toPrecision(4)} s`;
  return [`${where}${ended.status}${when}: ${ended.reason}`];
}

/** Where a speed was asked for that a loop does not pass on the way up and on the way down. */
function hysteresisRemarks({ asked, reading }: AskedRun, values: Values): string[] {
  if (!reading || !values.has(HYSTERESIS_SPEED)) return [];
  const { hysteresis, peaks } = reading;
  const missing = [
    ...(hysteresis.compression ? [] : [['compression', peaks.compression.speed_m_s] as const]),
    ...(hysteresis.rebound ? [] : [['rebound', 0 - peaks.rebound.speed_m_s] as const]),
  ];
  const where = asked.length > 0 ? `${whereOf(asked)}: ` : '';
  const speed = `${values.get(HYSTERESIS_SPEED)} m/s`;
  return missing.map(
    ([way, peak]) =>
      `${where}no hysteresis in ${way}: the shaft does not pass ${speed} once on the way up and once on the way down; its peak is ${peak.toPrecision(4)} m/s`,
  );
}

function voidRemarks({ series, counted }: DrivenDamper): string[] {
  const opened = Object.entries(series.void_m3).filter(([, volumes]) =>
    volumes.subarray(counted.first, counted.last + 1).some((volume) => volume > 0),
  );
  return opened.map(([chamber]) => `in the ${chamber} chamber air comes out of the oil and a void opens`);
}
