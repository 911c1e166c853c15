/** The sentence of the rows: which tolerance matters most, and what it would bring to hold it exactly. */
import type { ShareEstimate } from '../../../workers/protocol.ts';
import type { Scatter, Sort, ToleranceRow } from './scatter-rows.ts';

export interface Verdict {
  readonly most: ToleranceRow;
  /** Of `most`, at least 0. */
  readonly share: ShareEstimate;
  readonly next?: ToleranceRow;
  /** The samples do not tell the first from the second. */
  readonly isTied: boolean;
  /** Half the width of the band now, and as it would be with the first held exactly [N]. */
  readonly half_N?: number;
  readonly without_N?: number;
}

/** Below this share of the scatter nothing is worth a word. */
const LEAST = 0.005;

export const shareBy = (row: ToleranceRow, sort: Sort): ShareEstimate => (sort === 'cursor' && row.cursor) || row.range;

/**
 * The share that is lost when a tolerance is known is taken off the variance: the width goes with its root.
 * @param rows  sorted by `sort`, most first
 */
export function verdictOf(
  rows: readonly ToleranceRow[],
  sort: Sort,
  scatter: Scatter | undefined,
): Verdict | undefined {
  const [most, next] = rows.filter(({ hasPart }) => hasPart);
  if (!most || shareBy(most, sort).total.value < LEAST) return undefined;
  const share = shareBy(most, sort);
  const nextShare = next && shareBy(next, sort);
  const isTied = nextShare !== undefined && nextShare.total.high >= share.total.low;
  const half_N = sort === 'cursor' && scatter ? (scatter.p95_N - scatter.p5_N) / 2 : undefined;
  const left = Math.sqrt(Math.min(1, Math.max(0, 1 - share.first.value)));
  return {
    most,
    share,
    isTied,
    ...(nextShare && nextShare.total.value >= LEAST && { next }),
    ...(half_N !== undefined && { half_N, without_N: half_N * left }),
  };
}
