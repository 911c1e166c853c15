/**
 * Points that lie off what their neighbours in speed say. Each is held against the line through the medians of its neighbours (without
 * itself), and its distance against the median of all distances:
 *   M = 0.6745 d / median(|d|),   outlier where |M| > 3.5
 * Source: the modified z-score of Iglewicz & Hoaglin, How to Detect and Handle Outliers (1993), also in the NIST/SEMATECH handbook,
 * 1.3.5.17 (from memory); the line is that of Theil and Sen, the median of all slopes.
 *
 * symbol  unit  meaning
 * d       N     distance of a point from the line of its neighbours
 * M       -     modified z-score
 */
export const OUTLIER_LIMIT = 3.5;
const TO_DEVIATION = 0.6745;
/** Neighbours on each side. */
const REACH = 4;
/** Distances below this share of the largest force are rounding of the file, not scatter. */
const FINEST = 1e-4;

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
}

interface Point {
  readonly at: number;
  readonly v: number;
  readonly F: number;
}

/** Force that the neighbours say: Theil and Sen's line at the speed of the point. */
function saidByNeighbours(neighbours: readonly Point[], v: number): number {
  const slopes: number[] = [];
  for (const [i, a] of neighbours.entries())
    for (const b of neighbours.slice(i + 1)) if (b.v !== a.v) slopes.push((b.F - a.F) / (b.v - a.v));
  const slope = slopes.length === 0 ? 0 : median(slopes);
  return median(neighbours.map((each) => each.F - slope * (each.v - v)));
}

function distancesOf(points: readonly Point[]): number[] {
  return points.map((point, i) => {
    const from = Math.max(0, Math.min(i - REACH, points.length - 2 * REACH - 1));
    const neighbours = points.slice(from, from + 2 * REACH + 1).filter((each) => each !== point);
    return neighbours.length < 3 ? 0 : point.F - saidByNeighbours(neighbours, point.v);
  });
}

/** Places of the outliers, rising. Each direction is looked at by itself, since friction parts them with a step. */
export function outliersOf(speed_m_s: readonly number[], force_N: readonly number[]): number[] {
  const all = speed_m_s.map((v, at): Point => ({ at, v, F: force_N[at] }));
  const sides = [all.filter(({ v }) => v >= 0), all.filter(({ v }) => v < 0)];
  const judged = sides.flatMap((side) => {
    const sorted = [...side].sort((a, b) => a.v - b.v);
    const distances = distancesOf(sorted);
    return sorted.map(({ at }, i) => ({ at, d: distances[i] }));
  });
  const floor = FINEST * Math.max(0, ...force_N.map(Math.abs));
  const spread = Math.max(median(judged.map(({ d }) => Math.abs(d))), floor);
  if (!(spread > 0)) return [];
  return judged
    .filter(({ d }) => (TO_DEVIATION * Math.abs(d)) / spread > OUTLIER_LIMIT)
    .map(({ at }) => at)
    .sort((a, b) => a - b);
}
