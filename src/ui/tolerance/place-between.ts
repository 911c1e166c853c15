/** Where a speed lies between the speeds of a study, so that all that is known there is taken by the same share. */

export interface PlaceBetween {
  /** Numbers of the two nearest speeds of that direction, of which `high` is the faster; the same beyond the ends. */
  readonly low: number;
  readonly high: number;
  /** How much of `high`, from 0 to 1. */
  readonly weight: number;
}

/** @returns undefined where there is no speed of that direction */
export function placeBetween(speeds_m_s: readonly number[], way: 1 | -1, speed_m_s: number): PlaceBetween | undefined {
  const along = speeds_m_s.flatMap((v, i) => (v * way > 0 ? [{ i, v: Math.abs(v) }] : [])).sort((p, q) => p.v - q.v);
  if (along.length === 0) return undefined;
  const next = along.findIndex(({ v }) => v >= speed_m_s);
  const high = along[next < 0 ? along.length - 1 : next];
  const low = next < 1 ? high : along[next - 1];
  return { low: low.i, high: high.i, weight: high === low ? 0 : (speed_m_s - low.v) / (high.v - low.v) };
}

/** Straight between the two; nothing where one of them has none. */
export function valueAt({ low, high, weight }: PlaceBetween, read: (place: number) => number | null | undefined) {
  const [a, b] = [read(low), read(high)];
  if (a === null || a === undefined || b === null || b === undefined) return undefined;
  return a + (b - a) * weight;
}
