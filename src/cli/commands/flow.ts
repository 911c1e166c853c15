/** `shimwright flow`: what passes through each path of each valve against shaft speed. */
import type { Damper } from '../../model/project.ts';
import type { BasePoint, ForcePoint, PathFlows, StackTheories, Theory } from '../../solver/index.ts';
import { tidy } from '../../units/convert.ts';
import type { Outcome, Request } from '../command.ts';
import { type AskedPoint, airReleaseOf, cavitationOf } from '../curve-points.ts';
import { bar, litresPerMinute, mm } from '../quantities.ts';
import type { Asked, Column, Row } from '../render/rows.ts';
import { tellCurve } from '../tell-curve.ts';
import { baseTheory, pistonTheory } from '../theories.ts';

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

function rowsOf({ asked, point, theories }: AskedPoint, { layout }: Damper): Row<ValveFlow>[] {
  const valves: readonly ValveName[] = layout === 'monotube' ? ['piston'] : ['piston', 'base'];
  return valves.map((valve) => {
    const row = { asked: [...asked, valveAsked(valve)], status: point.status };
    if (point.status !== 'converged') return row;
    return { ...row, item: (valve === 'piston' ? pistonFlow : baseFlow)(point, theories) };
  });
}

export const flow = (request: Request): Promise<Outcome> =>
  tellCurve(request, {
    format: 'shimwright/flow',
    columnsOf: flowColumns,
    rowsOf,
    remarksOf: (point) => [...airReleaseOf(point), ...cavitationOf(point)],
  });
