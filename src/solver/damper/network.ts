/**
 * Chambers and the valves between them, as a tree that hangs on the gas: every chamber has one valve towards the gas, so the oil
 * that the piston displaces fixes every flow, and the flows fix the pressures:
 *   q_i = s_i v + sum of q of the chambers behind i,   p_i = p_parent + sign(q_i) dp_i(|q_i|)
 * A chamber cannot fall below the air-release pressure. Where it would, it is held there, its valve passes what that
 * drop drives, and what is missing opens as a void; the chambers between it and the gas then take the pressures that balance
 * their own flows, each the one root of a falling function:
 *   s_i v + sum of q_c(p_i) - Q_i(p_i - p_parent) = 0
 * Every valve passes more under more drop, so the state is the only one. Source: balance of volume; oil without compressibility.
 *
 * symbol  unit   meaning
 * s_i     m2     volume that the piston presses out of chamber i per metre of compression
 * v       m/s    shaft speed, positive in compression
 * q_i     m3/s   flow out of chamber i towards the gas
 * p_i     Pa     absolute pressure of chamber i
 */

import { pressureInWords } from '../in-words.ts';
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import type { FailedValve, Valve, ValvePoint } from '../valve/explicit-valve.ts';
import { totalFlow } from './path-flows.ts';

/** A chamber with its valves towards the gas, and the chambers behind it. */
export interface Chamber<Name extends string> {
  readonly name: Name;
  readonly sweptArea_m2: number;
  /** Lets oil out of the chamber, towards the gas. */
  readonly outward: Valve;
  /** Lets it in. */
  readonly inward: Valve;
  readonly behind: readonly Chamber<Name>[];
}

/** What stands on the gas itself: the pressure is that of the gas. */
export interface Network<Name extends string> {
  readonly chambers: readonly Chamber<Name>[];
}

export interface ChamberState {
  readonly pressure_Pa: number;
  /** Towards the gas [m3/s]. */
  readonly flow_m3_s: number;
  /** Its valve, in the direction of the flow. */
  readonly valve: ValvePoint;
  /** Rate at which a void opens; 0 unless the chamber is held at the air-release pressure [m3/s]. */
  readonly voidRate_m3_s: number;
}

export interface NetworkState<Name extends string> {
  readonly status: 'converged';
  readonly chambers: Readonly<Record<Name, ChamberState>>;
  /** How far the lowest chamber would lie below the gas if oil never pulled apart, at least 0 [Pa]. */
  readonly deepest_Pa: number;
}

/** A chamber as it would be if oil never pulled apart: its flow is given, and so its pressure over that of its parent. */
interface Free<Name extends string> {
  readonly chamber: Chamber<Name>;
  readonly flow_m3_s: number;
  readonly valve: ValvePoint;
  readonly rise_Pa: number;
  /** Least pressure of the chamber and those behind it, over that of the parent [Pa]. */
  readonly lowest_Pa: number;
  readonly behind: readonly Free<Name>[];
}

/** The chamber next to the gas, then those behind it. */
type Branch<Name extends string> = readonly [[Name, ChamberState], ...[Name, ChamberState][]];

/** Carries the failure of a valve out of nested roots. */
class ValveFailure extends Error {
  constructor(readonly failed: FailedValve) {
    super(failed.reason);
  }
}

/**
 * State at one shaft speed under an absolute pressure of the gas, or why a valve has none.
 * The outward valve of a chamber must reach the flow of everything that the piston presses out of it and of those behind it.
 */
export function networkState<Name extends string>(
  { chambers }: Network<Name>,
  v: number,
  gasPressure_Pa: number,
  airReleasePressure_Pa: number,
): NetworkState<Name> | FailedValve {
  try {
    const free = chambers.map((chamber) => freeState(chamber, v));
    const branches = free.flatMap((f) => branchOf(f, v, gasPressure_Pa, airReleasePressure_Pa));
    return {
      status: 'converged',
      chambers: Object.fromEntries(branches) as Record<Name, ChamberState>,
      deepest_Pa: Math.max(0, ...free.map(({ lowest_Pa }) => 0 - lowest_Pa)),
    };
  } catch (error) {
    if (error instanceof ValveFailure) return error.failed;
    throw error;
  }
}

function freeState<Name extends string>(chamber: Chamber<Name>, v: number): Free<Name> {
  const behind = chamber.behind.map((c) => freeState(c, v));
  const flow_m3_s = chamber.sweptArea_m2 * v + sumOf(behind, (f) => f.flow_m3_s);
  const inwards = flow_m3_s < 0;
  const valve = converged((inwards ? chamber.inward : chamber.outward).atFlow(Math.abs(flow_m3_s)));
  const rise_Pa = inwards ? -valve.drop_Pa : valve.drop_Pa;
  const lowest_Pa = rise_Pa + Math.min(0, ...behind.map((f) => f.lowest_Pa));
  return { chamber, flow_m3_s, valve, rise_Pa, lowest_Pa, behind };
}

function branchOf<Name extends string>(free: Free<Name>, v: number, parent_Pa: number, floor_Pa: number): Branch<Name> {
  const { chamber, valve, rise_Pa, flow_m3_s } = free;
  const behindAt = (p: number) => free.behind.map((f) => branchOf(f, v, p, floor_Pa));
  if (parent_Pa + free.lowest_Pa >= floor_Pa) {
    const pressure_Pa = parent_Pa + rise_Pa;
    return [[chamber.name, { pressure_Pa, flow_m3_s, valve, voidRate_m3_s: 0 }], ...behindAt(pressure_Pa).flat()];
  }
  const surplus = (p: number) =>
    chamber.sweptArea_m2 * v +
    sumOf(behindAt(p), ([[, state]]) => state.flow_m3_s) -
    throughValve(chamber, p - parent_Pa).flow_m3_s;
  const atFloor = surplus(floor_Pa);
  const pressure_Pa =
    atFloor <= 0 ? floor_Pa : balancing(chamber.name, surplus, floor_Pa, parent_Pa + greatestRise(chamber, v));
  const state = {
    pressure_Pa,
    ...throughValve(chamber, pressure_Pa - parent_Pa),
    voidRate_m3_s: Math.max(0, 0 - atFloor),
  };
  return [[chamber.name, state], ...behindAt(pressure_Pa).flat()];
}

/** A void behind takes no oil, so a chamber may have to pass on all that the piston presses out of it. */
function greatestRise(chamber: Chamber<string>, v: number): number {
  const pressed = (c: Chamber<string>): number => Math.max(0, c.sweptArea_m2 * v) + sumOf(c.behind, pressed);
  return converged(chamber.outward.atFlow(pressed(chamber))).drop_Pa;
}

/** Pressure between the floor and the greatest one at which the flows of a chamber balance. */
function balancing(chamber: string, surplus: (p: number) => number, floor_Pa: number, greatest_Pa: number): number {
  const top_Pa = Math.max(greatest_Pa, floor_Pa);
  const root = bracketedRoot(surplus, floor_Pa, top_Pa);
  if (root.status === 'converged') return root.value;
  const where = `between ${pressureInWords(floor_Pa)} and ${pressureInWords(top_Pa)} absolute`;
  const reason = `the flows of the ${chamber} chamber balance at no pressure ${where}: ${root.reason}`;
  throw new ValveFailure({ status: root.status, reason });
}

function throughValve(
  { outward, inward }: Chamber<string>,
  drop_Pa: number,
): Pick<ChamberState, 'flow_m3_s' | 'valve'> {
  const valve = converged((drop_Pa < 0 ? inward : outward).atDrop(Math.abs(drop_Pa)));
  const flow_m3_s = totalFlow(valve.flows);
  return { flow_m3_s: drop_Pa < 0 ? -flow_m3_s : flow_m3_s, valve };
}

function converged(point: ValvePoint | FailedValve): ValvePoint {
  if (point.status === 'converged') return point;
  throw new ValveFailure(point);
}

const sumOf = <Item>(items: readonly Item[], value: (item: Item) => number): number =>
  items.reduce((sum, item) => sum + value(item), 0);
