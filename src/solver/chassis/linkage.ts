/**
 * Motion ratio of a linkage, shaft travel per wheel travel: r(x) = ds/dx, s(x) = integral of r from 0 to x.
 * A guard against the reciprocal is in the words, not here: both are possible ratios.
 *
 * symbol  unit  meaning
 * x, s    m     wheel travel and shaft travel from full extension
 * r       -     motion ratio
 */
import { smoothTable } from './smooth-table.ts';
import type { Linkage } from './types.ts';

export const constantLinkage =
  (ratio: number): Linkage =>
  (x) => ({ shaftTravel_m: ratio * x, ratio, ratioSlope_1_m: 0 });

/**
 * Through measured points; outside them the end values hold.
 * @param wheelTravel_m strictly rising, length n >= 2  @param ratio length n
 */
export function tableLinkage(wheelTravel_m: readonly number[], ratio: readonly number[]): Linkage {
  const curve = smoothTable(wheelTravel_m, ratio, 'hold');
  const start = curve(0).integral;
  return (x) => {
    const { value, slope, integral } = curve(x);
    return { shaftTravel_m: integral - start, ratio: value, ratioSlope_1_m: slope };
  };
}
