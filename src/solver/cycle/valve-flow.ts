/**
 * Tables of the static valves of a damper, as far as each of them is known. A refill check goes into a table of its own, since it may
 * lag; what lies beside it follows its drop at once.
 */
import { totalFlow } from '../damper/path-flows.ts';
import { pressureInWords } from '../in-words.ts';
import type { FailedValve, Valve, ValvePoint } from '../valve/explicit-valve.ts';
import { tabulateFlow } from './flow-table.ts';
import type { DirectionFlow } from './types.ts';

/** Drop at which every table ends: more than any damper bears [Pa]. */
const LARGEST_DROP_PA = 60e6;
/** How near the end of a valve that ends before is found, as a share of its drop. */
const END_SHARE = 1e-4;
/** A valve that ends at less is of no use [Pa]. */
const LEAST_END_PA = 100;

/** Carries out why a valve has no state. */
export class ValveFailed extends Error {
  override readonly name = 'ValveFailed';

  constructor(readonly failed: FailedValve) {
    super(failed.reason);
  }
}

/** @throws ValveFailed where the valve has no state, though it has at more */
export function directionFlow(valve: Valve): DirectionFlow {
  const end_Pa = lastDrop(valve);
  const beyond = end_Pa < LARGEST_DROP_PA ? valve.atDrop(end_Pa * (1 + 2 * END_SHARE)) : undefined;
  const ends = beyond && beyond.status !== 'converged' ? { endReason: beyond.reason } : {};
  const known = new Map<number, ValvePoint>();
  const at = (drop_Pa: number): ValvePoint => {
    const point = known.get(drop_Pa) ?? converged(valve.atDrop(drop_Pa));
    known.set(drop_Pa, point);
    return point;
  };
  const check = (drop_Pa: number) => at(drop_Pa).flows.check_m3_s ?? 0;
  const steady = tabulateFlow((drop_Pa) => totalFlow(at(drop_Pa).flows) - check(drop_Pa), end_Pa);
  if (check(end_Pa) === 0) return { steady, ...ends };
  return { steady, check: tabulateFlow(check, end_Pa), ...ends };
}

/** Largest drop at which the valve is known. */
function lastDrop(valve: Valve): number {
  const isKnown = (drop_Pa: number) => valve.atDrop(drop_Pa).status === 'converged';
  if (isKnown(LARGEST_DROP_PA)) return LARGEST_DROP_PA;
  let [low, high] = [LEAST_END_PA, LARGEST_DROP_PA];
  converged(valve.atDrop(low));
  while (high / low > 1 + END_SHARE) {
    const middle = Math.sqrt(low * high);
    if (isKnown(middle)) low = middle;
    else high = middle;
  }
  return low;
}

function converged(point: ValvePoint | FailedValve): ValvePoint {
  if (point.status !== 'converged') throw new ValveFailed(point);
  const flow = totalFlow(point.flows);
  if (Number.isFinite(flow)) return point;
  const reason = `the flow is ${flow} at a drop of ${pressureInWords(point.drop_Pa)}`;
  throw new ValveFailed({ status: 'not-converged', reason });
}
