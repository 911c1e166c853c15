/** The whole curve of one build as a table: every solved speed, rebound below 0, with all that the solver tells of it. */
import type { Units } from '../../units/own-units.ts';
import type { BasePoint, FailedForce, ForceCurve, ForcePoint, PathFlows } from '../app/solved.ts';
import type { PathName } from '../charts/path-shares.ts';
import { isSolved } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { gaugeOf, headed, type Measure, measureOf } from './columns.ts';
import type { Cell, Row } from './table-text.ts';

const words = text.export.columns;

interface Column {
  readonly head: string;
  readonly read: (point: ForcePoint) => Cell;
  /** Left out where no point has a number for it. */
  readonly optional?: boolean;
}

const column = (name: string, measure: Measure, read: (point: ForcePoint) => number | undefined): Column => ({
  head: headed(name, measure),
  read: (point) => {
    const si = read(point);
    return si === undefined ? undefined : measure.of(si);
  },
});

const optional = (some: Column): Column => ({ ...some, optional: true });

function forceColumns(units: Units): Column[] {
  const force = measureOf(units, 'force');
  const band = ({ band: found }: ForcePoint) => (found?.status === 'converged' ? found : undefined);
  return [
    column(words.force, force, (p) => p.force_N),
    optional(column(words.forceBandLow, force, (p) => band(p)?.low_N)),
    optional(column(words.forceBandHigh, force, (p) => band(p)?.high_N)),
    column(words.damping, force, (p) => p.dampingForce_N),
    column(words.gasForce, force, (p) => p.gasForce_N),
    column(words.friction, force, (p) => p.frictionForce_N),
    column(words.stop, force, (p) => p.stopForce_N),
  ];
}

function pressureColumns(units: Units): Column[] {
  const gauge = gaugeOf(units);
  return [
    column(words.chamber.compression, gauge, (p) => p.compressionPressure_Pa),
    column(words.chamber.rebound, gauge, (p) => p.reboundPressure_Pa),
    column(words.gas, gauge, (p) => p.gasPressure_Pa),
    column(words.gasNeeded, gauge, (p) => p.gasPressureNeeded_Pa),
    { head: words.airRelease, read: (p) => (p.airRelease ? words.yes : words.no) },
  ];
}

const flowOf = (flows: PathFlows | undefined, path: PathName): number | undefined => flows?.[`${path}_m3_s`];

function pistonColumns(units: Units): Column[] {
  const [pressure, length, flow] = [measureOf(units, 'pressure'), measureOf(units, 'length'), measureOf(units, 'flow')];
  const flowColumn = (path: PathName): Column =>
    column(words.flow(text.chart.path[path]), flow, (p) => flowOf(p.flows, path));
  return [
    column(words.pistonDrop, pressure, (p) => p.pistonDrop_Pa),
    column(words.shimPressure, pressure, (p) => p.shimPressure_Pa),
    column(words.opening, length, (p) => p.seatOpening_m),
    ...(['ports', 'bleed', 'leakage'] as const).map(flowColumn),
  ];
}

function baseColumns(units: Units): Column[] {
  const [pressure, length, flow] = [measureOf(units, 'pressure'), measureOf(units, 'length'), measureOf(units, 'flow')];
  const ofBase = (name: string, measure: Measure, read: (base: BasePoint) => number | undefined): Column =>
    optional(column(name, measure, ({ base }) => base && read(base)));
  return [
    ofBase(words.baseDrop, pressure, (base) => base.drop_Pa),
    ofBase(words.baseShims, pressure, (base) => base.shimPressure_Pa),
    ofBase(words.baseOpening, length, (base) => base.seatOpening_m),
    ...(['ports', 'bleed', 'poppet', 'check'] as const).map((path) =>
      ofBase(words.baseFlow(text.chart.path[path]), flow, ({ flows }) => flowOf(flows, path)),
    ),
  ];
}

/** Where less oil passes than is counted, so that the force is higher. */
function cavitationColumns(): Column[] {
  const told = (paths: ForcePoint['cavitating']): Cell => paths?.map(({ path }) => words.throat[path]).join('; ');
  return [
    optional({ head: words.cavitates, read: (p) => told(p.cavitating) }),
    optional({ head: words.baseCavitates, read: ({ base }) => told(base?.cavitating) }),
  ];
}

/** Of the stacks that work at a speed; at rest that of compression stands for both. */
function theoryColumns({ stacks }: ForceCurve): Column[] {
  const name = (table: ForceCurve['stacks']['base']): Cell => table && text.theory[table.theory];
  return [
    { head: words.theory, read: (p) => name(p.shaftSpeed_m_s < 0 ? stacks.rebound : stacks.compression) },
    optional({ head: words.baseTheory, read: (p) => (p.shaftSpeed_m_s < 0 ? undefined : name(stacks.base)) }),
  ];
}

/** Speeds that did not solve keep their row, with the reason in place of numbers. */
export function curveRows(curve: ForceCurve, units: Units): Row[] {
  const { points } = curve;
  const speed = measureOf(units, 'speed');
  const solved = points.filter(isSolved);
  const columns = [
    ...forceColumns(units),
    ...pressureColumns(units),
    ...pistonColumns(units),
    ...baseColumns(units),
    ...cavitationColumns(),
    ...theoryColumns(curve),
  ].filter((each) => !each.optional || solved.some((point) => each.read(point) !== undefined));
  const rowOf = (point: ForcePoint | FailedForce): Row => [
    speed.of(point.shaftSpeed_m_s),
    ...columns.map(({ read }) => (isSolved(point) ? read(point) : undefined)),
    isSolved(point) ? undefined : point.reason,
  ];
  return [[headed(words.speed, speed), ...columns.map(({ head }) => head), words.note], ...points.map(rowOf)];
}
