/**
 * One flow direction of a piston valve: (ports, then shims and their notches) beside a bleed and the leak past the piston.
 * With the stack's table the valve is explicit in the pressure p across the shims:
 *   h = opening(p);  Q_s = curtain flow at (h, p) + notch flow at p;  dp = p + port loss(Q_s);  Q = Q_s + bleed and leak flow(dp)
 * All four rise with p, so a given Q or a given dp is one bracketed root.
 * Left out: ports that cover only part of the circumference, flow force on the shim.
 *
 * symbol  unit  meaning
 * p       Pa    pressure across the shims of the working stack
 * h       m     opening at the seat
 * Q_s     m3/s  flow through ports, then shims and notches; Q with bleed and leak
 * dp      Pa    drop over the whole valve
 */
import { totalFlow } from '../damper/path-flows.ts';
import type { FluidState, PathFlows, StackTable, ValveInput } from '../damper/types.ts';
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { valueOrNaN } from '../numeric/solved.ts';
import type { Coefficients } from '../restriction/coefficients.ts';
import { curtain } from '../restriction/curtain.ts';
import { drilledHole } from '../restriction/drilled-hole.ts';
import { notchPath } from '../restriction/notches.ts';
import type { Restriction } from '../restriction/types.ts';
import type { ConvergedLift, FailureStatus, Theory } from '../types.ts';
import { type OpeningTable, openingTable } from './opening-table.ts';
import type { LiftSolver } from './stack-samples.ts';

export interface ValvePoint {
  readonly status: 'converged';
  readonly drop_Pa: number;
  readonly shimPressure_Pa: number;
  readonly seatOpening_m: number;
  readonly flows: PathFlows;
}

export interface FailedValve {
  readonly status: FailureStatus | 'beyond-table';
  readonly reason: string;
}

/** One flow direction between two chambers. */
export interface Valve {
  /** State at a flow >= 0 [m3/s] through the whole valve. */
  readonly atFlow: (flow_m3_s: number) => ValvePoint | FailedValve;
  /** State at a drop >= 0 [Pa] over the whole valve. */
  readonly atDrop: (drop_Pa: number) => ValvePoint | FailedValve;
}

export interface ExplicitValve extends Valve {
  readonly table: StackTable;
  readonly crackingPressure_Pa: number;
}

export interface ValveSetting {
  readonly valve: ValveInput;
  readonly bleed: Restriction;
  readonly leakage: Restriction;
  /** Beside the stack of a base valve. */
  readonly poppet?: Restriction;
  readonly fluid: FluidState;
  readonly coefficients: Coefficients;
}

/**
 * Table of the stack that all settings share: it reaches `largestFlow_m3_s` with every one of them, or ends earlier for a
 * reason that its points then give.
 */
export function tableReaching(
  solveLift: LiftSolver,
  settings: readonly ValveSetting[],
  theory: Theory,
  largestFlow_m3_s: number,
): OpeningTable {
  const states = settings.map(valveState);
  const enough = ({ pressure_Pa, seatOpening_m }: ConvergedLift) =>
    states.every((at) => passing(at(pressure_Pa, seatOpening_m)) >= largestFlow_m3_s);
  return openingTable(solveLift, settings[0].valve.stack, theory, enough);
}

/** The valve on the table of its stack. */
export function valveOn(stackTable: OpeningTable, setting: ValveSetting): ExplicitValve {
  const at = valveState(setting);
  const state = (p: number) => at(p, stackTable.opening(p));
  return {
    table: stackTable.table,
    crackingPressure_Pa: stackTable.crackingPressure_Pa,
    atFlow: (flow) => invert(stackTable, state, passing, flow),
    atDrop: (drop) => invert(stackTable, state, ({ drop_Pa }) => drop_Pa, drop),
  };
}

function valveState({
  valve,
  bleed,
  leakage,
  poppet,
  fluid,
  coefficients,
}: ValveSetting): (p: number, h: number) => ValvePoint {
  const { seat, shims } = valve.stack;
  const land = {
    innerRadius_m: seat.innerRadius_m,
    outerRadius_m: Math.min(seat.outerRadius_m, shims[0].outerRadius_m),
  };
  const ports = drilledHole(valve.ports, fluid, coefficients);
  const notches = notchPath(valve.notches, shims[0].thickness_m, land, fluid, coefficients);
  return (p, h) => {
    const opening = curtain({ ...land, gap_m: h }, fluid, coefficients.jetDischarge);
    const shims_m3_s = valueOrNaN(opening.flow(p)) + valueOrNaN(notches.flow(p));
    const drop_Pa = p + valueOrNaN(ports.drop(shims_m3_s));
    const [bleed_m3_s, leakage_m3_s] = [bleed, leakage].map((path) => valueOrNaN(path.flow(drop_Pa)));
    const poppet_m3_s = poppet && valueOrNaN(poppet.flow(drop_Pa));
    const flows = {
      ports_m3_s: shims_m3_s,
      bleed_m3_s,
      leakage_m3_s,
      ...(poppet_m3_s !== undefined && { poppet_m3_s }),
    };
    return { status: 'converged', drop_Pa, shimPressure_Pa: p, seatOpening_m: h, flows };
  };
}

const passing = ({ flows }: ValvePoint): number => totalFlow(flows);

/** Finds the shim pressure at which `quantity` has the wanted value; where the table ends before, says why. */
function invert(
  { table, end }: OpeningTable,
  state: (p: number) => ValvePoint,
  quantity: (point: ValvePoint) => number,
  wanted: number,
): ValvePoint | FailedValve {
  const top = table.pressure_Pa.at(-1);
  if (top === undefined) return endedAt(end);
  if (wanted === 0) return state(0);
  const reached = quantity(state(top));
  if (!(reached >= wanted)) return Number.isNaN(reached) ? noNumber : endedAt(end);
  const root = bracketedRoot((p) => quantity(state(p)) - wanted, 0, top);
  return root.status === 'converged' ? state(root.value) : { status: root.status, reason: root.reason };
}

/** A table that reached its own flow can still be asked for more than that. */
const endedAt = ({ status, reason }: OpeningTable['end']): FailedValve =>
  status === 'reached'
    ? { status: 'beyond-table', reason: 'the stack table was not built this far' }
    : { status, reason };

const noNumber: FailedValve = { status: 'not-converged', reason: 'a port or bleed loss did not solve' };
