/** `shimwright flow`: what passes through each path of each valve against shaft speed. */
import { decodeProject } from '../../model/codec.ts';
import type { Damper } from '../../model/project.ts';
import type { BasePoint, ForcePoint, PathFlows, StackTheories, Theory } from '../../solver/index.ts';
import { tidy } from '../../units/convert.ts';
import { EXIT, type Outcome, type Request } from '../command.ts';
import {
  type AskedPoint,
  airReleaseOf,
  cavitationOf,
  curvePoints,
  failureOf,
  fallbacksOf,
  gasCautionOf,
} from '../curve-points.ts';
import { readDocument } from '../input.ts';
import { findBuild, headOf } from '../occasions.ts';
import { oilRemarks } from '../oil-reach.ts';
import { bar, litresPerMinute, mm } from '../quantities.ts';
import { type Asked, type Column, type Row, renderRows } from '../render/rows.ts';
import { baseTheory, pistonTheory } from '../theories.ts';
import { theoryOf } from './lift.ts';

/** One valve at one speed. */
interface ValveFlow {
  readonly drop_Pa: number;
  readonly shimPressure_Pa: number;
  readonly seatOpening_m: number;
  readonly flows: PathFlows;
  readonly cavitating?: BasePoint['cavitating'];
  /** Of its stack; none where only a check works. */
  readonly theory: Theory | null;
}

type ValveName = 'piston' | 'base';

/** The paths side by side, as `PathFlows` names them, with the word of the heading. */
const PATHS = {
  ports: 'stack',
  bleed: 'bleed',
  leakage: 'leakage',
  poppet: 'poppet',
  check: 'check',
} as const;

type PathName = keyof typeof PATHS;

const OF_EVERY_VALVE: readonly PathName[] = ['ports', 'bleed', 'leakage'];
const WITH_BASE: readonly PathName[] = ['ports', 'bleed', 'leakage', 'poppet', 'check'];

const flowOf = ({ flows }: ValveFlow, path: PathName): number => flows[`${path}_m3_s`] ?? 0;

const totalOf = (valve: ValveFlow): number => WITH_BASE.reduce((sum, path) => sum + flowOf(valve, path), 0);

/** A valve through which nothing flows has no shares. */
function shareOf(valve: ValveFlow, path: PathName): number | null {
  const total = totalOf(valve);
  return total > 0 ? tidy((100 * flowOf(valve, path)) / total) : null;
}

function flowColumns({ layout }: Damper): Column<ValveFlow>[] {
  const paths = layout === 'monotube' ? OF_EVERY_VALVE : WITH_BASE;
  return [
    { key: 'totalFlow_L_min', heading: ['flow', 'L/min'], read: (valve) => litresPerMinute(totalOf(valve)) },
    ...paths.map((path) => ({
      key: `${path}Flow_L_min`,
      read: (valve: ValveFlow) => litresPerMinute(flowOf(valve, path)),
    })),
    ...paths.map((path) => ({
      key: `${path}Share_percent`,
      heading: [PATHS[path], '%'] as const,
      read: (valve: ValveFlow) => shareOf(valve, path),
    })),
    { key: 'drop_bar', heading: ['drop', 'bar'], read: (valve) => bar(valve.drop_Pa) },
    { key: 'shimPressure_bar', heading: ['on shims', 'bar'], read: (valve) => bar(valve.shimPressure_Pa) },
    { key: 'opening_mm', heading: ['opening', 'mm'], read: (valve) => mm(valve.seatOpening_m) },
    {
      key: 'cavitating',
      heading: 'cavitates',
      read: ({ cavitating }) => cavitating?.map(({ path }) => path).join(' ') ?? null,
    },
    { key: 'theory', heading: 'theory', read: ({ theory }) => theory },
  ];
}

const pistonFlow = ({ pistonDrop_Pa, ...point }: ForcePoint, theories: StackTheories): ValveFlow => ({
  ...point,
  drop_Pa: pistonDrop_Pa,
  theory: pistonTheory(theories, point.shaftSpeed_m_s),
});

const baseFlow = ({ base, shaftSpeed_m_s }: ForcePoint, theories: StackTheories): ValveFlow | undefined =>
  base && { ...base, theory: baseTheory(theories, shaftSpeed_m_s) };

const valveAsked = (value: ValveName): Asked => ({ key: 'valve', heading: 'valve', value, words: value });

function rowsOf({ asked, point, theories }: AskedPoint, valves: readonly ValveName[]): Row<ValveFlow>[] {
  return valves.map((valve) => {
    const row = { asked: [...asked, valveAsked(valve)], status: point.status };
    if (point.status !== 'converged') return row;
    return { ...row, item: (valve === 'piston' ? pistonFlow : baseFlow)(point, theories) };
  });
}

export async function flow({ file, values, width }: Request): Promise<Outcome> {
  const project = await readDocument(file, decodeProject);
  const build = findBuild(project, values);
  const points = curvePoints(project, build, values);
  const valves: readonly ValveName[] = project.damper.layout === 'monotube' ? ['piston'] : ['piston', 'base'];
  const rows = points.flatMap((point) => rowsOf(point, valves));
  const head = { format: 'shimwright/flow', version: 1, theory: theoryOf(values), ...headOf(project, build, values) };
  return {
    exit: points.every(({ point }) => point.status === 'converged') ? EXIT.done : EXIT.failed,
    result: renderRows(rows, flowColumns(project.damper), head, { values, width }),
    talk: [
      ...points.flatMap((point) => [...failureOf(point), ...airReleaseOf(point), ...cavitationOf(point)]),
      ...gasCautionOf(points),
      ...oilRemarks(project, values),
      ...fallbacksOf(points),
    ],
  };
}
