/**
 * Lines of one level on a ring grid, and the regions above a level, by marching through the cells between two rings and two
 * angles: a line enters and leaves a cell where the level lies between the values of two neighbouring corners, straight
 * between them.
 */
import type { RingGrid } from './ring-grid.ts';

export interface RingPoint {
  readonly r: number;
  readonly theta: number;
}

export interface LevelLine {
  readonly points: readonly RingPoint[];
  /** It comes back to its start; an open line ends on the innermost or outermost ring. */
  readonly closed: boolean;
}

/** Edges of the grid by number: along ring i from angle j, or from ring i outwards at angle j. */
interface Edges {
  readonly round: (i: number, j: number) => number;
  readonly outward: (i: number, j: number) => number;
}

const edgesOf = ({ angles }: RingGrid): Edges => ({
  round: (i, j) => 2 * (i * angles + (j % angles)),
  outward: (i, j) => 2 * (i * angles + (j % angles)) + 1,
});

/** Share of the way from a to b at which the level lies; below everything, the line runs along the other corner. */
function shareOf(a: number, b: number, level: number): number {
  if (a === Number.NEGATIVE_INFINITY) return 1;
  return b === Number.NEGATIVE_INFINITY ? 0 : (level - a) / (b - a);
}

function pointOn(grid: RingGrid, edge: number, level: number): RingPoint {
  const { radii, angles, values } = grid;
  const node = edge >> 1;
  const [i, j] = [Math.floor(node / angles), node % angles];
  const step = (2 * Math.PI) / angles;
  if (edge % 2 === 1) {
    const share = shareOf(values[node], values[node + angles], level);
    return { r: radii[i] + (radii[i + 1] - radii[i]) * share, theta: j * step };
  }
  const share = shareOf(values[node], values[i * angles + ((j + 1) % angles)], level);
  return { r: radii[i], theta: (j + share) * step };
}

/** Edges of one cell that the level crosses, in pairs. */
function crossings(grid: RingGrid, { round, outward }: Edges, i: number, j: number, level: number): [number, number][] {
  const { angles, values } = grid;
  const next = (j + 1) % angles;
  const corners = [
    values[i * angles + j],
    values[i * angles + next],
    values[(i + 1) * angles + next],
    values[(i + 1) * angles + j],
  ];
  const edges = [round(i, j), outward(i, next), round(i + 1, j), outward(i, j)];
  const isUp = corners.map((value) => value >= level);
  const cut = edges.filter((_, k) => isUp[k] !== isUp[(k + 1) % 4]);
  if (cut.length < 4) return cut.length === 2 ? [[cut[0], cut[1]]] : [];
  // Two opposite corners stand above: the mean of all four says whether they hang together.
  const together = corners.reduce((sum, value) => sum + value, 0) / 4 >= level;
  const [a, b, c, d] = cut;
  return together === isUp[0]
    ? [
        [a, b],
        [c, d],
      ]
    : [
        [d, a],
        [b, c],
      ];
}

/** Each crossed edge with the one or two edges that a line goes on to. */
function chains(grid: RingGrid, level: number): Map<number, number[]> {
  const edges = edgesOf(grid);
  const next = new Map<number, number[]>();
  const join = (from: number, to: number): void => {
    next.set(from, [...(next.get(from) ?? []), to]);
  };
  for (let i = 0; i + 1 < grid.radii.length; i++) {
    for (let j = 0; j < grid.angles; j++) {
      for (const [from, to] of crossings(grid, edges, i, j, level)) {
        join(from, to);
        join(to, from);
      }
    }
  }
  return next;
}

/** Follows a line from one edge, taking every edge out of `next` that it passes. */
function follow(next: Map<number, number[]>, start: number): { passed: number[]; closed: boolean } {
  const passed: number[] = [];
  let at: number | undefined = start;
  let before: number | undefined;
  while (at !== undefined && next.has(at)) {
    passed.push(at);
    const ways: number[] = next.get(at) ?? [];
    next.delete(at);
    const onward: number | undefined = ways.find((way) => way !== before && next.has(way));
    before = at;
    at = onward;
    if (onward === undefined && passed.length > 2 && ways.includes(start)) return { passed, closed: true };
  }
  return { passed, closed: false };
}

/** Lines on which the grid has the value `level`. */
export function levelLines(grid: RingGrid, level: number): LevelLine[] {
  const next = chains(grid, level);
  const ends = [...next].filter(([, ways]) => ways.length === 1).map(([edge]) => edge);
  const lines: LevelLine[] = [];
  for (const start of [...ends, ...next.keys()]) {
    if (!next.has(start)) continue;
    const { passed, closed } = follow(next, start);
    lines.push({ points: passed.map((edge) => pointOn(grid, edge, level)), closed });
  }
  return lines;
}

/** Outlines of where the grid has `level` or more, all closed: what lies inside an odd number of them. */
export function regionAbove({ radii, angles, values }: RingGrid, level: number): LevelLine[] {
  const below = new Array<number>(angles).fill(Number.NEGATIVE_INFINITY);
  return levelLines(
    {
      radii: [radii[0], ...radii, radii[radii.length - 1]],
      angles,
      values: Float64Array.from([...below, ...values, ...below]),
    },
    level,
  );
}
