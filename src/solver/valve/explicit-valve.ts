/**
 * One flow direction of a valve with a stack: ports, then shims and their notches, beside a bleed, the leak past the piston and a
 * poppet. With the stack's table the valve is explicit in the mean pressure P on the pressure zone of the stack:
 *   h = opening(P);  p, Q_s, port loss = ports, then shims (stack-path.ts);  dp = p + port loss;  Q = Q_s + flow of the others(dp)
 * All of them rise with P, so a given Q or a given dp is one root. Where they would not, which a table or a coefficient out of the
 * ordinary may bring about, the valve would have several states at one speed: it ends there and says so.
 *
 * symbol  unit  meaning
 * P       Pa    mean pressure on the pressure zone of the working stack
 * p       Pa    pressure across its shims; P itself where ports open the whole circumference and their jets do not count
 * h       m     opening at the seat
 * Q_s     m3/s  flow through ports, then shims and notches; Q with the others
 * dp      Pa    drop over the whole valve
 */
import { totalFlow } from '../damper/path-flows.ts';
import type { FluidState, PathFlows, StackTable, ValveInput } from '../damper/types.ts';
import { flowInWords, pressureInWords } from '../in-words.ts';
import { valueOrNaN } from '../numeric/solved.ts';
import type { Coefficients } from '../restriction/coefficients.ts';
import type { Restriction } from '../restriction/types.ts';
import type { ConvergedLift, FailureStatus, Theory } from '../types.ts';
import { inverseCurve } from './inverse-curve.ts';
import { type OpeningTable, openingTable } from './opening-table.ts';
import { type RisingPart, risingPart, samplePressures } from './rising-part.ts';
import { type StackFlow, stackPath } from './stack-path.ts';
import type { LiftSolver } from './stack-samples.ts';
import { type Throat, throatOf } from './throats.ts';

export interface ValvePoint {
  readonly status: 'converged';
  readonly drop_Pa: number;
  /** Mean pressure on the pressure zone of the stack: what bends it, and finds it in its table; 0 without a stack. */
  readonly shimPressure_Pa: number;
  /** Of the stack; without one, lift of the check. */
  readonly seatOpening_m: number;
  readonly flows: PathFlows;
  /** The narrowest places of the paths that carry oil, to tell which of them cavitate (throats.ts); absent where they are not known. */
  readonly throats?: readonly Throat[];
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
  /** Mean pressure on the zone at which the stack leaves its seat. */
  readonly crackingPressure_Pa: number;
  /** Mean pressure on the zone from which on more of it would not mean more flow and more drop; absent where it always does. */
  readonly fallsFrom_Pa?: number;
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
  const models = settings.map(valveModel);
  const enough = ({ pressure_Pa, seatOpening_m }: ConvergedLift) =>
    models.every((model) => model.at(pressure_Pa, seatOpening_m).flow >= largestFlow_m3_s);
  return openingTable(solveLift, settings[0].valve.stack, theory, enough);
}

/** The valve on the table of its stack. */
export function valveOn(stackTable: OpeningTable, setting: ValveSetting): ExplicitValve {
  const { table, crackingPressure_Pa, opening, end } = stackTable;
  const model = valveModel(setting);
  const at = (P: number) => model.at(P, opening(P));
  const part = risingPart(samplePressures(stackTable), at);
  const ending = part.cut ? cutAt(part.cut, (P) => model.unsolvedAt(P, opening(P))) : endedAt(end);
  const reach = reachOf(part);
  const beyond = reach ? { ...ending, reason: `${ending.reason}; ${reach}` } : ending;
  const inverted = (quantity: 'flow' | 'drop') => {
    const values = part[quantity];
    const last = values.at(-1);
    if (last === undefined) return () => beyond;
    const inverse = inverseCurve(part.pressure, values, (P) => at(P)[quantity]);
    return (wanted: number): ValvePoint | FailedValve => {
      if (!(wanted <= last)) return beyond;
      const P = inverse(wanted);
      if (P.status === 'converged') return model.point(P.value, opening(P.value));
      return { status: P.status, reason: `the pressure on the shims is not found: ${P.reason}` };
    };
  };
  return {
    table,
    crackingPressure_Pa,
    ...(part.cut?.reason === 'falls' && { fallsFrom_Pa: part.cut.pressure_Pa }),
    atFlow: inverted('flow'),
    atDrop: inverted('drop'),
  };
}

interface ValveModel {
  /** Flow through the whole valve and drop over it, at a mean pressure on the zone and the opening there; NaN where a path fails. */
  readonly at: (P: number, h: number) => { flow: number; drop: number };
  readonly point: (P: number, h: number) => ValvePoint;
  /** The first path that gives no number there. */
  readonly unsolvedAt: (P: number, h: number) => string | undefined;
}

function valveModel({ valve, bleed, leakage, poppet, fluid, coefficients }: ValveSetting): ValveModel {
  const path = stackPath(valve, fluid, coefficients);
  const flowsOf = (stack: StackFlow, drop_Pa: number): PathFlows => {
    const through = (beside: Restriction) => valueOrNaN(beside.flow(drop_Pa));
    return {
      ports_m3_s: stack.curtain_m3_s + stack.notches_m3_s,
      bleed_m3_s: through(bleed),
      leakage_m3_s: through(leakage),
      ...(poppet && { poppet_m3_s: through(poppet) }),
    };
  };
  return {
    at: (P, h) => {
      const stack = path.at(P, h);
      const drop = dropOver(stack);
      return { flow: totalFlow(flowsOf(stack, drop)), drop };
    },
    point: (P, h) => {
      const stack = path.at(P, h);
      const drop_Pa = dropOver(stack);
      const flows = flowsOf(stack, drop_Pa);
      const throats = [
        ...path.throats(stack, h),
        ...throatOf('bleed', bleed, flows.bleed_m3_s),
        ...throatOf('poppet', poppet, flows.poppet_m3_s),
      ];
      return { status: 'converged', drop_Pa, shimPressure_Pa: P, seatOpening_m: h, flows, throats };
    },
    unsolvedAt: (P, h) => {
      const stack = path.at(P, h);
      const { bleed_m3_s, leakage_m3_s, poppet_m3_s = 0 } = flowsOf(stack, dropOver(stack));
      const inOrder: readonly (readonly [string, number])[] = [
        ['shims', stack.curtain_m3_s + stack.shimDrop_Pa],
        ['notches', stack.notches_m3_s],
        ['ports', stack.portDrop_Pa],
        ['bleed', bleed_m3_s],
        ['clearance of the piston', leakage_m3_s],
        ['poppet', poppet_m3_s],
      ];
      return inOrder.find(([, value]) => !Number.isFinite(value))?.[0];
    },
  };
}

const dropOver = ({ shimDrop_Pa, portDrop_Pa }: StackFlow): number => shimDrop_Pa + portDrop_Pa;

/** The samples of a valve end before its table. */
function cutAt(
  { reason, pressure_Pa, beyond_Pa }: NonNullable<RisingPart['cut']>,
  unsolvedAt: (P: number) => string | undefined,
): FailedValve {
  if (reason === 'no-number') {
    const path = unsolvedAt(beyond_Pa) ?? 'valve';
    return { status: 'not-converged', reason: `the ${path} gave no number at ${onShims(beyond_Pa)}` };
  }
  return {
    status: 'beyond-table',
    reason: `above ${onShims(pressure_Pa)} the valve would have several states at one speed`,
  };
}

const onShims = (pressure_Pa: number): string => `${pressureInWords(pressure_Pa)} on the shims`;

/** A table that reached its own flow can still be asked for more than that. */
const endedAt = ({ status, reason }: OpeningTable['end']): FailedValve =>
  status === 'reached'
    ? { status: 'beyond-table', reason: 'more was wanted than the stack table was built for' }
    : { status, reason };

/** What the valve has states up to; nothing where it has none but rest. */
function reachOf({ flow, drop }: RisingPart): string | undefined {
  const [Q, dp] = [flow.at(-1), drop.at(-1)];
  return Q && dp ? `the valve is known up to ${flowInWords(Q)} at a drop of ${pressureInWords(dp)}` : undefined;
}
