/**
 * A valve without a stack: a check and a bleed side by side,
 *   Q = Q_c + Q_b(dp)
 * Up to the opening drop of the check all goes through the bleed. From there on flow and drop of the check are explicit in its lift x
 * until it stands at its stop, and the drop explicit in its flow beyond; so a wanted Q is one root in x, or in Q_c.
 *
 * symbol    unit  meaning
 * dp        Pa    drop over the valve
 * Q         m3/s  flow through both paths; Q_c through the check, Q_b through the bleed
 * x, X      m     lift of the check, lift at its stop
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { type NotConverged, type Solved, valueOrNaN } from '../numeric/solved.ts';
import { closedPath } from '../restriction/closed.ts';
import type { SpringLoaded } from '../restriction/spring-loaded.ts';
import type { Restriction } from '../restriction/types.ts';
import type { FailedValve, Valve, ValvePoint } from './explicit-valve.ts';
import { throatOf } from './throats.ts';

export interface ParallelPaths {
  readonly check: SpringLoaded;
  /** Closed when absent. */
  readonly bleed?: Restriction;
}

/** The seat opening of its states is the lift of the check; no shims are pressed on. */
export function parallelPaths({ check, bleed = closedPath }: ParallelPaths): Valve {
  const pointAt = ({ drop, flow, lift }: CheckState): ValvePoint | FailedValve => {
    const beside = bleed.flow(drop);
    if (beside.status !== 'converged') return failedBy(beside);
    const flows = { ports_m3_s: 0, bleed_m3_s: beside.value, leakage_m3_s: 0, check_m3_s: flow };
    const checkThroat = { throat_m2: () => check.throatAtLift_m2(lift) };
    const throats = [...throatOf('check', checkThroat, flow), ...throatOf('bleed', bleed, beside.value)];
    return { status: 'converged', drop_Pa: drop, shimPressure_Pa: 0, seatOpening_m: lift, flows, throats };
  };
  const atDrop = (drop: number): ValvePoint | FailedValve => {
    const flow = check.flow(drop);
    if (flow.status !== 'converged') return failedBy(flow);
    const lift = check.lift(flow.value);
    return lift.status === 'converged' ? pointAt({ drop, flow: flow.value, lift: lift.value }) : failedBy(lift);
  };
  const atFlow = (Q: number): ValvePoint | FailedValve => {
    if (Q === 0) return pointAt({ drop: 0, flow: 0, lift: 0 });
    const { root, state } = sought(check, bleed, Q);
    return root.status === 'converged' ? pointAt(state(root.value)) : failedBy(root);
  };
  return { atDrop, atFlow };
}

interface CheckState {
  readonly drop: number;
  readonly flow: number;
  readonly lift: number;
}

/** What is solved for a flow through both, and the state of the check that it gives. */
interface Sought {
  readonly root: Solved;
  readonly state: (root: number) => CheckState;
}

function sought(check: SpringLoaded, bleed: Restriction, Q: number): Sought {
  const { openingDrop_Pa, largestLift_m: X, atLift } = check;
  const beside = (dp: number) => valueOrNaN(bleed.flow(dp));
  if (Q <= beside(openingDrop_Pa)) {
    return { root: bleed.drop(Q), state: (drop) => ({ drop, flow: 0, lift: 0 }) };
  }
  const stop = atLift(X);
  if (stop.flow + beside(stop.drop) < Q) {
    const dropOf = (Q_c: number) => valueOrNaN(check.drop(Q_c));
    const excess = (Q_c: number) => Q_c + beside(dropOf(Q_c)) - Q;
    return {
      root: bracketedRoot(excess, stop.flow, Q),
      state: (flow) => ({ drop: dropOf(flow), flow, lift: X }),
    };
  }
  const excess = (x: number) => {
    const { flow, drop } = atLift(x);
    return flow + beside(drop) - Q;
  };
  return { root: bracketedRoot(excess, 0, X), state: (lift) => ({ ...atLift(lift), lift }) };
}

const failedBy = ({ status, reason }: NotConverged): FailedValve => ({ status, reason });
