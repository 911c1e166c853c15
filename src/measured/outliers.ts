/**
 * Points that lie off what their neighbours in speed say. Each is held against three readings of its neighbours (without itself): a
 * line that one wrong neighbour cannot turn, a parabola that follows a bend and reaches the fast end of the run, and the straight line
 * between the two next to it, which follows a knee. The nearest counts, so that a point is off only where all say so. The slowest point of
 * a direction is not judged: nothing lies on its other side, where a damper's curve is steepest. The distance is held against the median
 * of all distances; less than a quarter of what the force changes from one neighbour to the other is a bend that the points are too far
 * apart to show:
 *   M = 0.6745 d / median(|d|),   outlier where |M| > 3.5
 * Source: the modified z-score of Iglewicz & Hoaglin, How to Detect and Handle Outliers (1993), also in the NIST/SEMATECH handbook,
 * 1.3.5.17 (from memory); the line is that of Theil and Sen, the median of all slopes; the parabola is that of least squares.
 *
 * symbol  unit  meaning
 * d       N     distance of a point from what its neighbours say
 * M       -     modified z-score
 */
import { parabolaValue } from './local-parabola.ts';

export const OUTLIER_LIMIT = 3.5;
const TO_DEVIATION = 0.6745;
const BEND_SHARE = 0.25;
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
function saidByLine(neighbours: readonly Point[], v: number): number {
  const slopes: number[] = [];
  for (const [i, a] of neighbours.entries())
    for (const b of neighbours.slice(i + 1)) if (b.v !== a.v) slopes.push((b.F - a.F) / (b.v - a.v));
  const slope = slopes.length === 0 ? 0 : median(slopes);
  return median(neighbours.map((each) => each.F - slope * (each.v - v)));
}

const chordAt = (a: Point, b: Point, v: number): number =>
  a.v === b.v ? (a.F + b.F) / 2 : a.F + ((v - a.v) / (b.v - a.v)) * (b.F - a.F);

interface Distance {
  readonly d: number;
  /** No distance below this is told from a bend [N]. */
  readonly bend: number;
}

function distancesOf(points: readonly Point[]): Distance[] {
  return points.map((point, i) => {
    const from = Math.max(0, Math.min(i - REACH, points.length - 2 * REACH - 1));
    const neighbours = points.slice(from, from + 2 * REACH + 1).filter((each) => each !== point);
    if (neighbours.length < 3 || i === 0) return { d: 0, bend: 0 };
    const [speeds, forces] = [neighbours.map(({ v }) => v), neighbours.map(({ F }) => F)];
    const fromLine = point.F - saidByLine(neighbours, point.v);
    const fromParabola = point.F - parabolaValue(speeds, forces, point.v);
    const beside = [points[i - 1], points[i + 1]];
    const fromChord = beside.every(Boolean) ? point.F - chordAt(beside[0], beside[1], point.v) : Number.NaN;
    const d = [fromLine, fromParabola, fromChord].reduce((best, each) =>
      Math.abs(each) < Math.abs(best) ? each : best,
    );
    const [before, after] = [points[i - 1], points[i + 1] ?? points[i - 2]];
    return { d, bend: BEND_SHARE * Math.abs(after.F - before.F) };
  });
}

/** Places of the outliers, rising. Each direction is looked at by itself, since friction parts them with a step. */
export function outliersOf(speed_m_s: readonly number[], force_N: readonly number[]): number[] {
  const all = speed_m_s.map((v, at): Point => ({ at, v, F: force_N[at] }));
  const sides = [all.filter(({ v }) => v >= 0), all.filter(({ v }) => v < 0)];
  const judged = sides.flatMap((side) => {
    const sorted = [...side].sort((a, b) => Math.abs(a.v) - Math.abs(b.v));
    const distances = distancesOf(sorted);
    return sorted.map(({ at }, i) => ({ at, ...distances[i] }));
  });
  const floor = FINEST * Math.max(0, ...force_N.map(Math.abs));
  const spread = Math.max(median(judged.map(({ d }) => Math.abs(d))), floor);
  if (!(spread > 0)) return [];
  return judged
    .filter(({ d, bend }) => Math.abs(d) >= bend && (TO_DEVIATION * Math.abs(d)) / spread > OUTLIER_LIMIT)
    .map(({ at }) => at)
    .sort((a, b) => a - b);
}
