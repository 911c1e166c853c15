/** A drawn line as the straight strokes it is made of, and how much of them lies in a part of the board. All in px; y grows downwards. */

export interface Stroke {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The strokes between neighbours; a point that is missing leaves a gap. */
export function strokesOf(xs: readonly number[], ys: readonly (number | undefined)[]): Stroke[] {
  return xs.slice(1).flatMap((x2, i): Stroke[] => {
    const [y1, y2] = [ys[i], ys[i + 1]];
    return y1 === undefined || y2 === undefined ? [] : [{ x1: xs[i], y1, x2, y2 }];
  });
}

/** From where to where a stroke is within the box, as shares of its length (Liang and Barsky); nothing when it is not. */
function sharesWithin({ x1, y1, x2, y2 }: Stroke, { left, right, top, bottom }: Box): [number, number] | undefined {
  // Most strokes are far off: told without a division.
  if (Math.max(x1, x2) < left || Math.min(x1, x2) > right) return undefined;
  if (Math.max(y1, y2) < top || Math.min(y1, y2) > bottom) return undefined;
  let from = 0;
  let to = 1;
  const sides = [
    [x1 - x2, x1 - left],
    [x2 - x1, right - x1],
    [y1 - y2, y1 - top],
    [y2 - y1, bottom - y1],
  ];
  for (const [outwards, room] of sides) {
    if (outwards < 0) from = Math.max(from, room / outwards);
    if (outwards > 0) to = Math.min(to, room / outwards);
  }
  return from < to ? [from, to] : undefined;
}

/** How long the strokes are within the box. */
export function lengthWithin(strokes: readonly Stroke[], box: Box): number {
  let length = 0;
  for (const stroke of strokes) {
    const shares = sharesWithin(stroke, box);
    if (shares) length += (shares[1] - shares[0]) * Math.hypot(stroke.x2 - stroke.x1, stroke.y2 - stroke.y1);
  }
  return length;
}

/** The highest and the lowest place of the strokes within the box. */
export function heightsWithin(strokes: readonly Stroke[], box: Box): { high: number; low: number } | undefined {
  let [high, low] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const stroke of strokes) {
    for (const share of sharesWithin(stroke, box) ?? []) {
      const y = stroke.y1 + share * (stroke.y2 - stroke.y1);
      high = Math.min(high, y);
      low = Math.max(low, y);
    }
  }
  return high <= low ? { high, low } : undefined;
}
