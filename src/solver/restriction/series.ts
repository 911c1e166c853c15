/**
 * Two restrictions one behind the other: the drops add up at one flow.
 *   dp(Q) = dp_1(Q) + dp_2(Q);   Q(dp) by the root of x + dp_2(Q_1(x)) = dp for the drop x over the first
 * The first is asked for its flow and the second for its drop: put them so that these are the cheap directions.
 * Neither may be closed: then the whole is.
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { secantRoot } from '../numeric/secant-root.ts';
import { exact, mapSolved, type Solved, valueOrNaN } from '../numeric/solved.ts';
import type { Restriction } from './types.ts';

/** Left over of the drop, relative to it. */
const TOLERANCE = 1e-14;

export function series(first: Restriction, second: Restriction): Restriction {
  const firstFlow = (x: number) => valueOrNaN(first.flow(x));
  const excess = (x: number, dp: number) => x + valueOrNaN(second.drop(firstFlow(x))) - dp;
  const firstDrop = (dp: number): Solved => {
    // Where both drops grew alike, this would be the share of the first at every drop.
    const share = dp / 2 / (dp + excess(dp / 2, dp));
    return secantRoot(
      (x) => excess(x, dp),
      { x: share * dp, slope: share },
      { low: 0, high: dp },
      TOLERANCE * dp,
      () => bracketedRoot((x) => excess(x, dp), 0, dp),
    );
  };
  const flow = (dp: number): Solved => (dp === 0 ? exact(0) : mapSolved(firstDrop(dp), firstFlow));
  const drop = (Q: number): Solved => mapSolved(first.drop(Q), (x) => x + valueOrNaN(second.drop(Q)));
  return { flow, drop, throat_m2: (Q) => Math.min(throat(first, Q), throat(second, Q)) };
}

const throat = ({ throat_m2 }: Restriction, Q: number): number => throat_m2?.(Q) ?? Number.POSITIVE_INFINITY;
