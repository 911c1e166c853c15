/** Where the lines, the arrows and the letter of a dimension lie. */
import type { Dimension, Leader, Point, Span } from './sketch.ts';

export const LETTER_RADIUS = 8;
const ARROW = 5.5;
const HALF_ARROW = 2;
/** Of the extension line beyond the edge, and beyond the dimension line. */
const CLEAR = 2;
const BEYOND = 3.5;
/** Room that a letter and two arrows take; below it the arrows stand outside. */
const ROOM = 34;
/** A head with its tip at `tip`, that came from the side of `from`. */
function arrow([x, y]: Point, from: Point): string {
  const length = Math.hypot(x - from[0], y - from[1]) || 1;
  const [ux, uy] = [(x - from[0]) / length, (y - from[1]) / length];
  const [bx, by] = [x - ux * ARROW, y - uy * ARROW];
  const [sx, sy] = [uy * HALF_ARROW, -ux * HALF_ARROW];
  return `M${x} ${y}L${bx + sx} ${by + sy}L${bx - sx} ${by - sy}Z`;
}

/** Paths of lines and of arrow heads, and where the letter stands. */
export interface Laid {
  readonly lines: string;
  readonly heads: string;
  readonly letter: Point;
}

/** Draws along x; along y it is the same with the axes changed. */
function layAlong({ along, from, to, at, letterAt }: Span): Laid {
  const [i, j] = along === 'x' ? [0, 1] : [1, 0];
  const place = (on: number, across: number): Point => (along === 'x' ? [on, across] : [across, on]);
  const text = ([x, y]: Point): string => `${x} ${y}`;
  const extension = (edge: Point): string => {
    const away = Math.sign(at - edge[j]);
    if (away === 0) return '';
    return `M${text(place(edge[i], edge[j] + away * CLEAR))}L${text(place(edge[i], at + away * BEYOND))}`;
  };
  const [low, high] = [from[i], to[i]];
  const way = Math.sign(high - low) || 1;
  const isTight = Math.abs(high - low) < ROOM;
  const letterOn = letterAt ?? (isTight ? high + way * 18 : (low + high) / 2);
  const [start, end] = isTight ? [low - way * 9, high + way * 9] : [low, high];
  const reach = [start, end, letterOn];
  const line = `M${text(place(Math.min(...reach), at))}L${text(place(Math.max(...reach), at))}`;
  const [tailLow, tailHigh] = isTight ? [low - way, high + way] : [low + way, high - way];
  return {
    lines: `${extension(from)}${extension(to)}${line}`,
    heads: `${arrow(place(low, at), place(tailLow, at))}${arrow(place(high, at), place(tailHigh, at))}`,
    letter: place(letterOn, at),
  };
}

const layLeader = ({ letter, points }: Leader): Laid => ({
  lines: `M${letter.join(' ')}L${points.join(' ')}`,
  heads: arrow(points, letter),
  letter,
});

export const layDimension = (dimension: Dimension): Laid =>
  'along' in dimension ? layAlong(dimension) : layLeader(dimension);
