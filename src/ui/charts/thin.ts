/** A long line for a chart that has fewer pixels than the line has points: no peak of either coordinate is lost. */

/** Of every stretch the ends and the extremes. */
const KEPT_A_STRETCH = 6;

function extremesOf(values: ArrayLike<number>, from: number, to: number): [number, number] {
  let [low, high] = [from, from];
  for (let k = from; k < to; k++) {
    if (values[k] < values[low]) low = k;
    if (values[k] > values[high]) high = k;
  }
  return [low, high];
}

/**
 * @param most  points to be left; a line that has no more stays whole
 * @returns which points are left, rising; the first and the last of all among them
 */
export function thinned(x: ArrayLike<number>, y: ArrayLike<number>, most: number): number[] {
  const count = y.length;
  if (count <= most) return Array.from({ length: count }, (_, k) => k);
  const stretches = Math.max(1, Math.floor(most / KEPT_A_STRETCH));
  const kept: number[] = [];
  for (let s = 0; s < stretches; s++) {
    const [from, to] = [Math.floor((s * count) / stretches), Math.floor(((s + 1) * count) / stretches)];
    const inStretch = new Set([from, ...extremesOf(x, from, to), ...extremesOf(y, from, to), to - 1]);
    kept.push(...[...inStretch].sort((a, b) => a - b));
  }
  return kept;
}
