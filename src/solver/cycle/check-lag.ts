/**
 * A check that needs time. Its openness y, the share of its opening at the stop, follows its drop late:
 *   Q = y q(dp),   q(dp) = C dp / sqrt(|dp| + p1),   dy/dt = (r(dp) - y) / tau,   r = Q_static / q for dp > 0, else 0
 * q is a jet through the check at its stop, straight within p1 of no drop; C is taken so that r stays within 0 and 1. With tau = 0 the
 * static flow is back. While it still stands open against a drop that has turned, oil runs back through it.
 * Source: own; a first-order lag is common practice. A plate of 2 g with its oil, 1 mm from its stop under 5 N takes
 * sqrt(2 * 1e-3 * 2e-3 / 5) = 0.9 ms.
 *
 * symbol  unit  meaning
 * dp      Pa    drop in the direction in which the check opens
 * Q, q    m3/s  flow; flow through the check at its stop
 * y, r    -     openness; openness that belongs to the drop
 * tau     s     lag
 * p1      Pa    drop below which q is straight
 */
import { type HermiteTable, pchipTable } from '../numeric/hermite-table.ts';
import type { CoefficientEntry } from '../restriction/coefficients.ts';
import type { FlowTable } from './flow-table.ts';
import type { CycleLink } from './types.ts';

export const CHECK_LAG: CoefficientEntry = {
  value: 1e-3,
  low: 0,
  high: 5e-3,
  unit: 's',
  meaning: 'time in which a check follows its drop',
  source:
    'common practice: checks close within some milliseconds; own estimate for a plate of 2 g, 1 mm and 5 N: 0.9 ms',
};

/** p1. */
const STRAIGHT_PA = 1000;

export interface LaggedCheck {
  /** q, odd in the drop. */
  readonly open: (drop_Pa: number) => number;
  /** r, NaN beyond the table. */
  readonly target: (drop_Pa: number) => number;
}

/** @returns undefined for a check that lets nothing through */
export function laggedCheck({ drop_Pa, flow_m3_s }: FlowTable): LaggedCheck | undefined {
  const C = Math.max(...drop_Pa.slice(1).map((drop, i) => flow_m3_s[i + 1] / jet(drop)));
  if (!(C > 0)) return undefined;
  const shares = drop_Pa.map((drop, i) => (i === 0 ? 0 : flow_m3_s[i] / (C * jet(drop))));
  const table: HermiteTable = pchipTable(drop_Pa, shares);
  return {
    open: (drop) => C * jet(drop),
    target: (drop) => (drop > 0 ? table.at(drop) : 0),
  };
}

const jet = (drop: number): number => drop / Math.sqrt(Math.abs(drop) + STRAIGHT_PA);

/** One check of a link; `sign` is that of the drop in which it opens. */
export interface LinkCheck {
  readonly chamber: number;
  readonly sign: 1 | -1;
  readonly check: LaggedCheck;
}

/** @param chamber  index of the chamber whose link it is */
export function checksOf({ outward, inward }: CycleLink, chamber: number): LinkCheck[] {
  const found: LinkCheck[] = [];
  for (const [direction, sign] of [
    [outward, 1],
    [inward, -1],
  ] as const) {
    const check = direction.check && laggedCheck(direction.check);
    if (check) found.push({ chamber, sign, check });
  }
  return found;
}
