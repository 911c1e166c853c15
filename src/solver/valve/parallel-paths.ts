/**
 * A valve without a stack: a check and a bleed side by side.
 *   Q(dp) = Q_check(dp) + Q_bleed(dp);   dp(Q) by its one root, since both rise with dp
 * The root lies below the drop that either path alone would need for the whole flow.
 *
 * symbol  unit  meaning
 * dp      Pa    drop over the valve
 * Q       m3/s  flow through both paths
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { type Solved, valueOrNaN } from '../numeric/solved.ts';
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

/** A path gives its flow back from its drop but for rounding; the bracket reaches further than that. */
const BEYOND_ROUNDING = 1 + 1e-9;

/** The seat opening of its states is the lift of the check; no shims are pressed on. */
export function parallelPaths({ check, bleed = closedPath }: ParallelPaths): Valve {
  const total = (dp: number) => valueOrNaN(check.flow(dp)) + valueOrNaN(bleed.flow(dp));
  const atDrop = (drop_Pa: number): ValvePoint | FailedValve => {
    const flow = check.flow(drop_Pa);
    const lift = flow.status === 'converged' ? check.lift(flow.value) : flow;
    const point = pointOf(drop_Pa, { flow, lift, bleed: bleed.flow(drop_Pa) });
    if (point.status !== 'converged') return point;
    const { check_m3_s, bleed_m3_s } = point.flows;
    return { ...point, throats: [...throatOf('check', check, check_m3_s), ...throatOf('bleed', bleed, bleed_m3_s)] };
  };
  const atFlow = (Q: number): ValvePoint | FailedValve => {
    if (Q === 0) return atDrop(0);
    const enough = Math.min(...[check, bleed].map((path) => valueOr(path.drop(Q), Number.POSITIVE_INFINITY)));
    const root = bracketedRoot((dp) => total(dp) - Q, 0, BEYOND_ROUNDING * enough);
    return root.status === 'converged' ? atDrop(root.value) : { status: root.status, reason: root.reason };
  };
  return { atDrop, atFlow };
}

interface Paths {
  readonly flow: Solved;
  readonly lift: Solved;
  readonly bleed: Solved;
}

function pointOf(drop_Pa: number, { flow, lift, bleed }: Paths): ValvePoint | FailedValve {
  for (const solved of [flow, lift, bleed]) {
    if (solved.status !== 'converged') return { status: solved.status, reason: solved.reason };
  }
  const flows = { ports_m3_s: 0, bleed_m3_s: valueOrNaN(bleed), leakage_m3_s: 0, check_m3_s: valueOrNaN(flow) };
  return { status: 'converged', drop_Pa, shimPressure_Pa: 0, seatOpening_m: valueOrNaN(lift), flows };
}

const valueOr = (solved: Solved, otherwise: number): number =>
  solved.status === 'converged' ? solved.value : otherwise;
