/** Where the name of each line goes: beside its line, near the right end, clear of the other names and as far as may be of all lines. */
import type { ShownLine } from './chart-model.ts';
import { type Box, heightsWithin, lengthWithin, type Stroke, strokesOf } from './strokes.ts';

/** From the baseline of one name to that of the next, at the least, and from a line to the baseline of its name [px]. */
const NAME_GAP = 14;
const ABOVE_LINE = -7;
const BELOW_LINE = 15;
/** What the letters take above and below their baseline [px]. */
const ASCENT = 10;
const DESCENT = 3;
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

interface Scales {
  readonly x: (value: number) => number;
  readonly y: (value: number) => number;
}

/** Where a name may be: its end between left and right, its baseline between top and bottom [px]. */
export type Room = Box;

export interface LineName {
  readonly line: ShownLine;
  /** The end of the name, and its baseline [px]. */
  readonly x: number;
  readonly y: number;
}

/** A place that a name may take, and what is against it, in pixels of a name that a line crosses. */
interface Place {
  readonly x: number;
  readonly y: number;
  readonly box: Box;
  readonly cost: number;
}

/** How far a name moves along its line at a time, and at most as a share of the chart [px, 1]. */
const STEP = 24;
const FARTHEST = 0.55;
/** Names that stand on one another beside the same lines. */
const MOST_IN_A_PILE = 4;

/** Each in pixels of a name that a line crosses: to be a pixel from the right end, on the other side of the line, one up in a pile, above the name of a line that runs higher, on another name. */
const AWAY = 0.12;
const OTHER_SIDE = 8;
const PILED = 14;
const REVERSED = 20;
const ON_A_NAME = 1000;

const boxOf = (x: number, y: number, width: number): Box => ({
  left: x - width,
  right: x,
  top: y - ASCENT,
  bottom: y + DESCENT,
});

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom + 1 > b.top && b.bottom + 1 > a.top;

interface Drawn {
  readonly line: ShownLine;
  readonly strokes: readonly Stroke[];
}

function drawn(line: ShownLine, { x, y }: Scales): Drawn {
  const heights = line.y.map((value) => (value === null ? undefined : y(value)));
  return { line, strokes: strokesOf(line.x.map(x), heights) };
}

/** What a name has to do with: all lines, the chart, the other words in it, and the side of its line that it prefers. */
interface Board {
  readonly all: readonly Drawn[];
  readonly room: Room;
  readonly taken: readonly Box[];
  readonly sideOf: (drawn: Drawn) => 1 | -1;
}

function placesOf(named: Drawn, { all, room, taken, sideOf }: Board): Place[] {
  const width = named.line.label.length * LETTER;
  const places: Place[] = [];
  const chart = { ...room, top: room.top - ASCENT, bottom: room.bottom + DESCENT };
  const farthest = FARTHEST * (room.right - room.left);
  for (let away = 0; away <= farthest && room.right - away - width >= room.left; away += STEP) {
    const x = room.right - away;
    const heights = heightsWithin(named.strokes, { ...chart, left: x - width, right: x });
    if (!heights) continue;
    for (const side of [-1, 1] as const) {
      for (let pile = 0; pile < MOST_IN_A_PILE; pile++) {
        const y = side * pile * NAME_GAP + (side < 0 ? heights.high + ABOVE_LINE : heights.low + BELOW_LINE);
        if (y < room.top || y > room.bottom) continue;
        const box = boxOf(x, y, width);
        const crossed = all.reduce((length, { strokes }) => length + lengthWithin(strokes, box), 0);
        const covered = taken.some((each) => overlap(each, box)) ? ON_A_NAME : 0;
        const turned = side === sideOf(named) ? 0 : OTHER_SIDE;
        places.push({ x, y, box, cost: crossed + covered + AWAY * away + turned + PILED * pile });
      }
    }
  }
  return places.length > 0 ? places : [atTheEdge(named, room, width)];
}

/** Of a line that is nowhere in the chart, or leaves no room: as near as its end comes. */
function atTheEdge({ strokes }: Drawn, room: Room, width: number): Place {
  const end = strokes.at(-1)?.y2 ?? room.top;
  const y = Math.min(room.bottom, Math.max(room.top, end + ABOVE_LINE));
  return { x: room.right, y, box: boxOf(room.right, y, width), cost: 0 };
}

/** What two names cost one another; the line of the first runs above that of the second. */
function costBetween(upper: Box, lower: Box): number {
  if (overlap(upper, lower)) return ON_A_NAME;
  const isBeside = upper.left < lower.right && lower.left < upper.right;
  return isBeside && upper.top > lower.top ? REVERSED : 0;
}

interface Settled {
  readonly places: readonly Place[];
  readonly cost: number;
}

/**
 * Each name in turn takes its best place among the others, until none would move.
 * @param choices of each name, that of the uppermost line first
 * @param order in which they choose
 */
function settle(choices: readonly (readonly Place[])[], order: readonly number[]): Settled {
  const taken: (Place | undefined)[] = choices.map(() => undefined);
  const costOfOthers = ({ box }: Place, own: number): number =>
    taken.reduce((cost, other, i) => {
      if (!other || i === own) return cost;
      return cost + (i < own ? costBetween(other.box, box) : costBetween(box, other.box));
    }, 0);
  const costAt = (place: Place, own: number): number => place.cost + costOfOthers(place, own);
  for (let moved = true, round = 0; moved && round <= choices.length; round++) {
    moved = false;
    for (const own of order) {
      const best = choices[own].reduce((least, each) => (costAt(each, own) < costAt(least, own) ? each : least));
      moved ||= best !== taken[own];
      taken[own] = best;
    }
  }
  const places = taken.flatMap((place) => place ?? []);
  // Every pair is counted from both its sides.
  return { places, cost: places.reduce((sum, each, i) => sum + each.cost + costOfOthers(each, i) / 2, 0) };
}

const endOf = ({ strokes }: Drawn): number => strokes.at(-1)?.y2 ?? 0;

/**
 * Of each line with a name of its own: the upper ones rather above their lines, the lower ones rather below.
 * @param taken by other words of the chart
 */
export function placeNames(
  lines: readonly ShownLine[],
  scales: Scales,
  room: Room,
  taken: readonly Box[] = [],
): LineName[] {
  const all = lines.map((line) => drawn(line, scales));
  const named = all.filter(({ line, strokes }) => line.named && strokes.length > 0).sort((a, b) => endOf(a) - endOf(b));
  const half = Math.ceil(named.length / 2);
  const sideOf = (each: Drawn): 1 | -1 => (named.indexOf(each) < half ? -1 : 1);
  const choices = named.map((each) => placesOf(each, { all, room, taken, sideOf }));
  const down = [...choices.keys()];
  const [first, second] = [settle(choices, down), settle(choices, down.toReversed())];
  const { places } = second.cost < first.cost ? second : first;
  return named.map(({ line }, i) => ({ line, x: places[i].x, y: places[i].y }));
}
