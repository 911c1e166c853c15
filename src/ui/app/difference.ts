/** What was changed between two builds, in the words a person would use: `face 3→2 of 30 × 0.15; + 16 × 0.1`. */
import { countOf } from '../../model/expand-shims.ts';
import type { Build, Layout, ShimRow, Valving } from '../../model/project.ts';
import { text } from '../text/en.ts';
import { describeBeside, type LengthWriter, withoutClicks } from './beside-difference.ts';
import { placesOf } from './places.ts';

export type RowChange =
  | {
      readonly kind: 'count';
      readonly row: ShimRow;
      readonly from: number;
      readonly to: number;
      readonly face: boolean;
    }
  | { readonly kind: 'thickness'; readonly row: ShimRow; readonly from_mm: number; readonly face: boolean }
  | { readonly kind: 'added' | 'removed' | 'moved'; readonly row: ShimRow; readonly face: boolean };

/** What a shim has beside its sizes and its count, such as a bore, a dish or notches. */
const extrasOf = ({ outerDiameter_mm: _d, thickness_mm: _t, count: _c, ...extras }: ShimRow): string =>
  JSON.stringify(extras);

const sameShim = (a: ShimRow, b: ShimRow): boolean =>
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

/** Length of the longest common subsequence of the tails of two lists, by start index. */
function commonTails(before: readonly ShimRow[], after: readonly ShimRow[]): number[][] {
  const tails = Array.from({ length: before.length + 1 }, () => new Array<number>(after.length + 1).fill(0));
  for (let i = before.length - 1; i >= 0; i--)
    for (let j = after.length - 1; j >= 0; j--)
      tails[i][j] = sameShim(before[i], after[j])
        ? tails[i + 1][j + 1] + 1
        : Math.max(tails[i + 1][j], tails[i][j + 1]);
  return tails;
}

function alignRows(before: readonly ShimRow[], after: readonly ShimRow[]): RowChange[] {
  const tails = commonTails(before, after);
  const changes: RowChange[] = [];
  let i = 0;
  let j = 0;
  while (i < before.length || j < after.length) {
    if (i < before.length && j < after.length && sameShim(before[i], after[j])) {
      const [from, to] = [countOf(before[i]), countOf(after[j])];
      if (from !== to) changes.push({ kind: 'count', row: after[j], from, to, face: j === 0 });
      i++;
      j++;
    } else if (j >= after.length || (i < before.length && tails[i + 1][j] >= tails[i][j + 1])) {
      changes.push({ kind: 'removed', row: before[i], face: i === 0 });
      i++;
    } else {
      changes.push({ kind: 'added', row: after[j], face: j === 0 });
      j++;
    }
  }
  return changes;
}

/** A row removed in one place and added whole in another was moved. */
function joinMoves(changes: readonly RowChange[]): RowChange[] {
  const left = [...changes];
  for (const removed of changes) {
    if (removed.kind !== 'removed') continue;
    const added = left.find(
      (c) => c.kind === 'added' && sameShim(c.row, removed.row) && countOf(c.row) === countOf(removed.row),
    );
    if (!added || !left.includes(removed)) continue;
    left.splice(left.indexOf(removed), 1);
    left[left.indexOf(added)] = { ...added, kind: 'moved' } as RowChange;
  }
  return left;
}

/** A row removed where one of the same diameter and count was added has changed its thickness. */
function joinThicknesses(changes: readonly RowChange[]): RowChange[] {
  const left = [...changes];
  for (const removed of changes) {
    if (removed.kind !== 'removed') continue;
    const added = left.find(
      (c) =>
        c.kind === 'added' &&
        c.row.outerDiameter_mm === removed.row.outerDiameter_mm &&
        countOf(c.row) === countOf(removed.row),
    );
    if (!added) continue;
    left.splice(left.indexOf(removed), 1);
    left[left.indexOf(added)] = { ...added, kind: 'thickness', from_mm: removed.row.thickness_mm } as RowChange;
  }
  return left;
}

export const compareRows = (before: readonly ShimRow[], after: readonly ShimRow[]): RowChange[] =>
  joinThicknesses(joinMoves(alignRows(joinEqualRows(before), joinEqualRows(after))));

function describeRow(change: RowChange, length: LengthWriter): string {
  const size = text.difference.size(length(change.row.outerDiameter_mm), length(change.row.thickness_mm));
  if (change.kind === 'count') return text.difference.count(change.from, change.to, size, change.face);
  const count = countOf(change.row);
  if (change.kind === 'thickness') {
    if (change.from_mm === change.row.thickness_mm)
      return text.difference.altered(length(change.row.outerDiameter_mm), length(change.from_mm));
    const thicknesses = text.difference.change(length(change.from_mm), length(change.row.thickness_mm));
    const changed = text.difference.size(length(change.row.outerDiameter_mm), thicknesses);
    return text.difference.thickness(count === 1 ? changed : text.difference.several(count, changed), change.face);
  }
  return text.difference[change.kind](count === 1 ? size : text.difference.several(count, size), change.face);
}

function describeValving(before: Valving, after: Valving, length: LengthWriter): string[] {
  const parts = compareRows(before.shims, after.shims).map((change) => describeRow(change, length));
  const setting = (name: string, from: number | undefined, to: number | undefined): void => {
    if (from === to) return;
    const write = (value: number | undefined): string => (value === undefined ? text.difference.none : length(value));
    parts.push(text.difference.setting(name, write(from), write(to)));
  };
  setting(text.stack.clampShort, before.clampDiameter_mm, after.clampDiameter_mm);
  setting(text.stack.seatHeightShort, before.seatHeight_mm, after.seatHeight_mm);
  setting(text.stack.floatShort, before.float?.travel_mm, after.float?.travel_mm);
  setting(text.stack.plateGapShort, before.backingPlate?.gap_mm, after.backingPlate?.gap_mm);
  if (othersOf(before) !== othersOf(after)) parts.push(text.difference.other);
  return parts;
}

/** What a valving has beside all that is told by name; the clicks of its spring are told with those of the other adjusters. */
function othersOf({
  shims: _s,
  clampDiameter_mm: _c,
  seatHeight_mm: _h,
  backingPlate,
  float,
  ...others
}: Valving): string {
  const check = float && [float.rate_N_mm, float.preload_N];
  return JSON.stringify([withoutClicks(others), check ?? null, { ...backingPlate, gap_mm: 0 }.outerDiameter_mm]);
}

const EVERY_PLACE = placesOf('cartridge');

/** A build of another layout may have no stack there. */
function describePlace(before: Valving | undefined, after: Valving | undefined, length: LengthWriter): string[] {
  if (before && after) return describeValving(before, after, length);
  if (before === after) return [];
  return [
    after ? text.difference.added(text.difference.stack, false) : text.difference.removed(text.difference.stack, false),
  ];
}

/** One line; empty when the two builds are the same valving. @param layout whose words are used */
export function describeDifference(baseline: Build, build: Build, layout: Layout, length: LengthWriter): string {
  const byPlace = EVERY_PLACE.map((place) => ({
    place,
    parts: describePlace(baseline.valves[place], build.valves[place], length),
  })).filter(({ parts }) => parts.length > 0);
  const lines = byPlace.map(({ place, parts }) =>
    text.difference.inPlace(text.placeOf(layout, place).letter, parts.join('; ')),
  );
  return [...lines, ...describeBeside(baseline, build, layout, length)].join(' · ');
}

export type { LengthWriter };
