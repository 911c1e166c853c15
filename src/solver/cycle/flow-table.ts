/**
 * A static valve made quick: its flow at drops from 0 up, a monotone cubic between them. Points lie dense at small drops,
 *   dp_k = D (k / N)^4,
 * and are put in where the curve is off by more than a share of the flow, or by a thousandth of that share of the largest one, down to
 * drops that no one measures.
 * Source: own.
 *
 * symbol  unit  meaning
 * dp, D   Pa    drop, largest drop of the table
 * k, N    -     index of a point, number of intervals to begin with
 */
import { type HermiteTable, pchipTable } from '../numeric/hermite-table.ts';

export interface FlowTable {
  /** From 0, strictly rising [Pa]. */
  readonly drop_Pa: readonly number[];
  /** From 0, not falling [m3/s]. */
  readonly flow_m3_s: readonly number[];
}

const FIRST_INTERVALS = 16;
const MAX_ROUNDS = 8;
/**
 * No point is put in below: a valve so wide that its oil needs less is as good as open, and the steeper its curve, the smaller the steps
 * of a run over time. A hundredth of what the integration may be off by.
 */
const LEAST_DROP_PA = 1;
const DEFAULT_SHARE = 1e-4;

/**
 * @param flow  flow [m3/s] at a drop >= 0 [Pa], 0 at 0 and not falling; may throw
 * @param share  how far the table may be off, as a share of the flow
 */
export function tabulateFlow(
  flow: (drop_Pa: number) => number,
  largestDrop_Pa: number,
  share = DEFAULT_SHARE,
): FlowTable {
  let drops = Array.from({ length: FIRST_INTERVALS + 1 }, (_, k) => largestDrop_Pa * (k / FIRST_INTERVALS) ** 4);
  let flows = drops.map(flow);
  const least = 1e-3 * share * flows[FIRST_INTERVALS];
  let open = new Set(drops.slice(1).keys());
  for (let round = 0; round < MAX_ROUNDS && open.size > 0; round++) {
    const curve = pchipTable(drops, flows);
    ({ drops, flows, open } = refined(drops, flows, open, flow, (drop, wanted) => {
      return Math.abs(curve.at(drop) - wanted) > share * Math.abs(wanted) + least;
    }));
  }
  return { drop_Pa: drops, flow_m3_s: flows };
}

/** Halves the open intervals; what was off stays open on both sides. */
function refined(
  drops: readonly number[],
  flows: readonly number[],
  open: ReadonlySet<number>,
  flow: (drop_Pa: number) => number,
  isOff: (drop_Pa: number, wanted: number) => boolean,
) {
  const next = { drops: [drops[0]], flows: [flows[0]], open: new Set<number>() };
  for (let i = 0; i + 1 < drops.length; i++) {
    const middle = ((drops[i] ** 0.25 + drops[i + 1] ** 0.25) / 2) ** 4;
    if (open.has(i) && middle >= LEAST_DROP_PA) {
      const wanted = flow(middle);
      if (isOff(middle, wanted)) next.open.add(next.drops.length - 1).add(next.drops.length);
      next.drops.push(middle);
      next.flows.push(wanted);
    }
    next.drops.push(drops[i + 1]);
    next.flows.push(flows[i + 1]);
  }
  return next;
}

/** Flow against a drop of either sign: outwards positive. */
export function bothWays(outward: FlowTable, inward: FlowTable): HermiteTable {
  const drops = [
    ...inward.drop_Pa
      .slice(1)
      .map((drop) => -drop)
      .reverse(),
    ...outward.drop_Pa,
  ];
  const flows = [
    ...inward.flow_m3_s
      .slice(1)
      .map((flow) => -flow)
      .reverse(),
    ...outward.flow_m3_s,
  ];
  return pchipTable(drops, flows);
}
