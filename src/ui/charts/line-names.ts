/** Where the name of each line goes: near its right end, beside the line, clear of the other names. */
import type { ShownLine } from './chart-model.ts';

/** Least distance between two names, and from a name to its line [px]. */
const NAME_GAP = 14;
const ABOVE_LINE = -7;
const BELOW_LINE = 15;
/** Width of a letter, enough to know how far a name reaches back along its line [px]. */
const LETTER = 6.5;

export interface LineName {
  readonly line: ShownLine;
  readonly y: number;
}

interface Scales {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

interface Stretch {
  readonly line: ShownLine;
  /** Highest and lowest place of the line along its name; y grows downwards [px]. */
  readonly high: number;
  readonly low: number;
}

function stretchUnderName(line: ShownLine, { x, y }: Scales): Stretch[] {
  const end = x(line.x[line.x.length - 1] ?? 0);
  const from = end - line.label.length * LETTER;
  const heights = line.y.flatMap((value, i) => (value !== null && x(line.x[i]) >= from ? [y(value)] : []));
  return heights.length === 0 ? [] : [{ line, high: Math.min(...heights), low: Math.max(...heights) }];
}

/** From one name to the next, never nearer than the gap, going up (-1) or down (1) the chart. */
function spread(names: readonly LineName[], way: 1 | -1): LineName[] {
  const placed: LineName[] = [];
  for (const name of names) {
    const before = placed[placed.length - 1];
    const nearest = before ? before.y + way * NAME_GAP : name.y;
    placed.push({ ...name, y: way === 1 ? Math.max(name.y, nearest) : Math.min(name.y, nearest) });
  }
  return placed;
}

/** Names of the upper lines above them, of the lower lines below them. */
export function placeNames(lines: readonly ShownLine[], scales: Scales, top: number): LineName[] {
  const stretches = lines.filter(({ named }) => named).flatMap((line) => stretchUnderName(line, scales));
  const sorted = stretches.sort((a, b) => a.high - b.high);
  const half = Math.ceil(sorted.length / 2);
  const above = sorted.slice(0, half).map(({ line, high }) => ({ line, y: high + ABOVE_LINE }));
  const below = sorted.slice(half).map(({ line, low }) => ({ line, y: low + BELOW_LINE }));
  return [...spread(above.reverse(), -1), ...spread(below, 1)].map((name) => ({ ...name, y: Math.max(top, name.y) }));
}
