/**
 * Lays two stacks side by side in stack order: which shim of the one is which of the other. A longest common subsequence of
 * equal shims comes first; between them, shims of one diameter lie beside one another as changed.
 */
import { countOf } from './expand-shims.ts';
import type { ShimRow } from './project.ts';

/** A row of a stack and its place in it, counted from 0 at the piston. */
export interface PlacedRow {
  readonly row: ShimRow;
  readonly at: number;
}

export type RowPair =
  | { readonly mark: 'kept' | 'changed'; readonly before: PlacedRow; readonly after: PlacedRow }
  | { readonly mark: 'removed'; readonly before: PlacedRow }
  | { readonly mark: 'added'; readonly after: PlacedRow }
  /** Told twice, once on each side: where it was, and where it is. */
  | {
      readonly mark: 'moved';
      readonly side: 'before' | 'after';
      readonly before: PlacedRow;
      readonly after: PlacedRow;
    };

/** What a shim has beside its sizes and its count, such as a bore, a dish or notches. */
const extrasOf = ({ outerDiameter_mm: _d, thickness_mm: _t, count: _c, ...extras }: ShimRow): string =>
  JSON.stringify(extras);

export const sameShim = (a: ShimRow, b: ShimRow): boolean =>
  a.outerDiameter_mm === b.outerDiameter_mm && a.thickness_mm === b.thickness_mm && extrasOf(a) === extrasOf(b);

/** Rows of equal shims lying on one another are one row: how a person split them does not matter. */
export function joinEqualRows(rows: readonly ShimRow[]): ShimRow[] {
  const joined: ShimRow[] = [];
  for (const row of rows) {
    const last = joined.at(-1);
    if (last && sameShim(last, row)) joined[joined.length - 1] = { ...last, count: countOf(last) + countOf(row) };
    else joined.push({ ...row, count: countOf(row) });
  }
  return joined;
}

/** One equal shim outweighs every pair of a 200-row stack that only shares its diameter. */
const EQUAL = 10_000;
const EQUAL_COUNT = 10;
const SAME_DIAMETER = 2;
const SAME_COUNT = 1;

/** How much two shims are worth beside one another; 0 when they have nothing to do with one another. */
function likeness(a: ShimRow, b: ShimRow): number {
  const isCount = countOf(a) === countOf(b);
  if (sameShim(a, b)) return EQUAL + (isCount ? EQUAL_COUNT : 0);
  if (a.outerDiameter_mm !== b.outerDiameter_mm) return 0;
  return SAME_DIAMETER + (isCount ? SAME_COUNT : 0);
}

/** The most that the tails of two stacks are worth beside one another, by start index. */
function worthOfTails(before: readonly ShimRow[], after: readonly ShimRow[]): number[][] {
  const worth = Array.from({ length: before.length + 1 }, () => new Array<number>(after.length + 1).fill(0));
  for (let i = before.length - 1; i >= 0; i--)
    for (let j = after.length - 1; j >= 0; j--) {
      const like = likeness(before[i], after[j]);
      const beside = like > 0 ? like + worth[i + 1][j + 1] : 0;
      worth[i][j] = Math.max(beside, worth[i + 1][j], worth[i][j + 1]);
    }
  return worth;
}

function layBeside(before: readonly ShimRow[], after: readonly ShimRow[]): RowPair[] {
  const worth = worthOfTails(before, after);
  const pairs: RowPair[] = [];
  let [i, j] = [0, 0];
  while (i < before.length || j < after.length) {
    const like = i < before.length && j < after.length ? likeness(before[i], after[j]) : 0;
    if (like > 0 && worth[i][j] === like + worth[i + 1][j + 1]) {
      const mark = like === EQUAL + EQUAL_COUNT ? 'kept' : 'changed';
      pairs.push({ mark, before: { row: before[i], at: i++ }, after: { row: after[j], at: j++ } });
    } else if (j >= after.length || (i < before.length && worth[i + 1][j] >= worth[i][j + 1]))
      pairs.push({ mark: 'removed', before: { row: before[i], at: i++ } });
    else pairs.push({ mark: 'added', after: { row: after[j], at: j++ } });
  }
  return pairs;
}

/** A row removed in one place and added whole in another was moved. */
function joinMoves(pairs: readonly RowPair[]): RowPair[] {
  const joined = [...pairs];
  for (const [from, removed] of pairs.entries()) {
    if (removed.mark !== 'removed') continue;
    const { before } = removed;
    const isSame = ({ row }: PlacedRow): boolean => sameShim(row, before.row) && countOf(row) === countOf(before.row);
    const to = joined.findIndex((pair) => pair.mark === 'added' && isSame(pair.after));
    const added = joined[to];
    if (added?.mark !== 'added') continue;
    joined[from] = { mark: 'moved', side: 'before', before, after: added.after };
    joined[to] = { mark: 'moved', side: 'after', before, after: added.after };
  }
  return joined;
}

/** Every row of both stacks, each once but for those that moved, in stack order; equal neighbours are joined first. */
export const alignRows = (before: readonly ShimRow[], after: readonly ShimRow[]): RowPair[] =>
  joinMoves(layBeside(joinEqualRows(before), joinEqualRows(after)));
