/** `shimwright force`: force against shaft speed of one build. */
import { decodeProject } from '../../model/codec.ts';
import type { Build, Project } from '../../model/project.ts';
import { type FailedForce, type ForcePoint, forceCurveForBuild } from '../../solver/index.ts';
import { absolutePressure, toGauge } from '../../units/brands.ts';
import { fromSI } from '../../units/convert.ts';
import { EXIT, type Outcome, type Request, UsageError, type Values } from '../command.ts';
import { readDocument } from '../input.ts';
import { numberList } from '../number-list.ts';
import { csv } from '../render/csv.ts';
import { json } from '../render/json.ts';
import { type Cell, textTable } from '../render/text-table.ts';
import { theoryOf } from './lift.ts';

export const SPEEDS = 'speeds-m-s';

const bar = (pressure_Pa: number): number => fromSI(pressure_Pa, 'pressure', 'bar');
const gauge_bar = (pressure_Pa: number): number => bar(toGauge(absolutePressure(pressure_Pa)));
const litresPerMinute = (flow_m3_s: number): number => fromSI(flow_m3_s, 'flow', 'L/min');

interface Column {
  readonly key: string;
  /** Heading in the table for people; the others are in JSON and CSV only. */
  readonly heading?: string;
  readonly read: (point: ForcePoint) => number | boolean;
}

/** One row a quantity, in the order of the output. Pressures are written twice: absolute, and above the atmosphere. */
const COLUMNS: readonly Column[] = [
  { key: 'force_N', heading: 'force N', read: (p) => p.force_N },
  { key: 'gasForce_N', heading: 'gas N', read: (p) => p.gasForce_N },
  { key: 'frictionForce_N', heading: 'friction N', read: (p) => p.frictionForce_N },
  { key: 'dampingForce_N', heading: 'damping N', read: (p) => p.dampingForce_N },
  { key: 'compressionPressureAbsolute_bar', read: (p) => bar(p.compressionPressure_Pa) },
  {
    key: 'compressionPressureGauge_bar',
    heading: 'compression bar gauge',
    read: (p) => gauge_bar(p.compressionPressure_Pa),
  },
  { key: 'reboundPressureAbsolute_bar', read: (p) => bar(p.reboundPressure_Pa) },
  { key: 'reboundPressureGauge_bar', heading: 'rebound bar gauge', read: (p) => gauge_bar(p.reboundPressure_Pa) },
  { key: 'gasPressureAbsolute_bar', read: (p) => bar(p.gasPressure_Pa) },
  { key: 'gasPressureGauge_bar', read: (p) => gauge_bar(p.gasPressure_Pa) },
  { key: 'pistonDrop_bar', heading: 'piston drop bar', read: (p) => bar(p.pistonDrop_Pa) },
  { key: 'shimPressure_bar', read: (p) => bar(p.shimPressure_Pa) },
  { key: 'seatOpening_mm', heading: 'opening mm', read: (p) => fromSI(p.seatOpening_m, 'length', 'mm') },
  { key: 'portsFlow_L_min', heading: 'ports L/min', read: (p) => litresPerMinute(p.flows.ports_m3_s) },
  { key: 'bleedFlow_L_min', heading: 'bleed L/min', read: (p) => litresPerMinute(p.flows.bleed_m3_s) },
  { key: 'leakageFlow_L_min', read: (p) => litresPerMinute(p.flows.leakage_m3_s) },
  { key: 'airRelease', heading: 'air release', read: (p) => p.airRelease },
  { key: 'gasPressureNeededAbsolute_bar', read: (p) => bar(p.gasPressureNeeded_Pa) },
  { key: 'gasPressureNeededGauge_bar', read: (p) => gauge_bar(p.gasPressureNeeded_Pa) },
];

type Point = ForcePoint | FailedForce;

const cell = (point: Point, { read }: Column): Cell => (point.status === 'converged' ? read(point) : null);

/** Speeds as they were asked for, so that the echo is exact. */
interface Curve {
  readonly points: readonly Point[];
  readonly speeds_m_s: readonly number[];
}

function table({ points, speeds_m_s }: Curve, columns: readonly Column[]): Cell[][] {
  return points.map((point, i) => [speeds_m_s[i], point.status, ...columns.map((column) => cell(point, column))]);
}

function render(curve: Curve, head: Readonly<Record<string, unknown>>, values: Values): string {
  const keys = ['shaftSpeed_m_s', 'status', ...COLUMNS.map(({ key }) => key)];
  if (values.has('csv')) return csv(keys, table(curve, COLUMNS));
  if (values.has('json')) {
    const points = table(curve, COLUMNS).map((row) => Object.fromEntries(keys.map((key, index) => [key, row[index]])));
    return json({ format: 'shimwright/force', version: 1, ...head, points });
  }
  const shown = COLUMNS.filter(({ heading }) => heading !== undefined);
  return textTable(['speed m/s', 'status', ...shown.map(({ heading = '' }) => heading)], table(curve, shown));
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

export async function force({ file, values }: Request): Promise<Outcome> {
  const speeds_m_s = numberList(values.get(SPEEDS) ?? '', SPEEDS);
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values.get('build'));
  const { theory, points } = forceCurveForBuild(project, build.id, { speeds_m_s, theory: theoryOf(values) });
  const head = {
    theory,
    project: project.name,
    build: { id: build.id, name: build.name },
    oilTemperature_degC: project.fluid.temperature_degC,
  };
  return {
    exit: points.every(({ status }) => status === 'converged') ? EXIT.done : EXIT.failed,
    result: render({ points, speeds_m_s }, head, values),
    talk: points.flatMap((point, index) => remark(point, speeds_m_s[index])),
  };
}

function remark(point: Point, speed_m_s: number): string[] {
  if (point.status !== 'converged') return [`at ${speed_m_s} m/s: ${point.status}: ${point.reason}`];
  if (!point.airRelease) return [];
  const needed = gauge_bar(point.gasPressureNeeded_Pa).toFixed(1);
  return [
    `at ${speed_m_s} m/s: air comes out of the oil, the force is limited; ${needed} bar gauge of gas would prevent it`,
  ];
}
