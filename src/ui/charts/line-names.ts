/** Where the name of each line goes: near its right end, beside the line, clear of the other names. */
import type { ShownLine } from './chart-model.ts';

/** Least distance between two names, and from a name to its line [px]. */
const NAME_GAP = 14;
const ABOVE_LINE = -7;
const BELOW_LINE = 15;
/** Width of a letter, enough to know how far a name reaches back along its line [px]. */
const LETTER = 6.5;

/** A name may reach back over this share of the chart. */
const LONGEST = 0.6;

/** The lines as a chart of some width [px] has room to name them: all of them whole, or all of them briefly. */
export function namedBriefly(lines: readonly ShownLine[], width: number): readonly ShownLine[] {
  const isLong = ({ label, brief }: ShownLine): boolean =>
    brief !== undefined && label.length * LETTER > LONGEST * width;
  return lines.some(isLong) ? lines.map((line) => ({ ...line, label: line.brief ?? line.label })) : lines;
}

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

/** Baselines of the highest and the lowest name that stand within the chart [px]. */
export interface Room {
  readonly top: number;
  readonly bottom: number;
}

/** Rising names within the room, none nearer to the next than the gap. */
function within(names: readonly LineName[], { top, bottom }: Room): LineName[] {
  const down = spread(
    names.map((name) => ({ ...name, y: Math.max(top, name.y) })),
    1,
  );
  const up = down.reverse().map((name) => ({ ...name, y: Math.min(bottom, name.y) }));
  return spread(up, -1).reverse();
}

/** Names of the upper lines above them, of the lower lines below them, or above where they would stand under the axis. */
export function placeNames(lines: readonly ShownLine[], scales: Scales, room: Room): LineName[] {
  const stretches = lines.filter(({ named }) => named).flatMap((line) => stretchUnderName(line, scales));
  const sorted = stretches.sort((a, b) => a.high - b.high);
  const half = Math.ceil(sorted.length / 2);
  const nameAbove = ({ line, high }: Stretch): LineName => ({ line, y: high + ABOVE_LINE });
  const above = spread(sorted.slice(0, half).map(nameAbove).reverse(), -1).reverse();
  const lower = sorted.slice(half);
  const below = spread(
    lower.map(({ line, low }) => ({ line, y: low + BELOW_LINE })),
    1,
  );
  const isUnderAxis = (below.at(-1)?.y ?? 0) > room.bottom;
  const rest = isUnderAxis ? spread(lower.map(nameAbove).reverse(), -1).reverse() : below;
  return within([...above, ...rest], room);
}
