/** Fewer points that still say the same: the peak of every half cycle, or one point that stands for its neighbours. */

export interface Points {
  readonly speed_m_s: readonly number[];
  readonly force_N: readonly number[];
  readonly position_m?: readonly number[];
  readonly time_s?: readonly number[];
}

/** The points at these places. */
export function picked(points: Points, places: readonly number[]): Points {
  const pick = (values: readonly number[]): number[] => places.map((at) => values[at]);
  return {
    speed_m_s: pick(points.speed_m_s),
    force_N: pick(points.force_N),
    ...(points.position_m && { position_m: pick(points.position_m) }),
    ...(points.time_s && { time_s: pick(points.time_s) }),
  };
}

/** Half cycles that never get this share of the greatest speed are the rest before and after the run. */
const LEAST_PEAK = 0.02;

/** Place of the greatest speed of every half cycle, one direction after the other: the peak-velocity plot. */
export function peakPlaces(speed_m_s: readonly number[]): number[] {
  const greatest = Math.max(...speed_m_s.map(Math.abs));
  const places: number[] = [];
  let best = 0;
  const keep = (): void => {
    if (Math.abs(speed_m_s[best]) >= LEAST_PEAK * greatest) places.push(best);
  };
  for (let i = 1; i < speed_m_s.length; i++) {
    if (Math.sign(speed_m_s[i]) !== Math.sign(speed_m_s[best])) {
      keep();
      best = i;
    } else if (Math.abs(speed_m_s[i]) > Math.abs(speed_m_s[best])) best = i;
  }
  keep();
  return places;
}

/** Evenly taken places, first and last among them, so that `most` stand for all. */
export function thinnedPlaces(count: number, most: number): number[] {
  if (count <= most) return Array.from({ length: count }, (_, i) => i);
  return Array.from({ length: most }, (_, i) => Math.round((i * (count - 1)) / (most - 1)));
}
