/** What was changed between two builds, in the words a person would use: `face 3→2 of 30 × 0.15; + 16 × 0.1`. */

import { alignRows, type PlacedRow, type RowPair, sameShim } from '../../model/align-rows.ts';
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

function changesIn(pair: RowPair): RowChange[] {
  switch (pair.mark) {
    case 'kept':
      return [];
    case 'removed':
      return [{ kind: 'removed', row: pair.before.row, face: pair.before.at === 0 }];
    case 'added':
      return [{ kind: 'added', row: pair.after.row, face: pair.after.at === 0 }];
    case 'moved':
      return pair.side === 'before' ? [] : [{ kind: 'moved', row: pair.after.row, face: pair.after.at === 0 }];
    case 'changed':
      return changesOf(pair.before, pair.after);
  }
}

/** One line has room for one change of a shim: with its count and its thickness changed, it is another shim. */
function changesOf(before: PlacedRow, after: PlacedRow): RowChange[] {
  const [from, to] = [countOf(before.row), countOf(after.row)];
  const { row } = after;
  const face = after.at === 0;
  if (sameShim(before.row, row)) return [{ kind: 'count', row, from, to, face }];
  if (from === to) return [{ kind: 'thickness', row, from_mm: before.row.thickness_mm, face }];
  return [
    { kind: 'removed', row: before.row, face: before.at === 0 },
    { kind: 'added', row, face },
  ];
}

export const compareRows = (before: readonly ShimRow[], after: readonly ShimRow[]): RowChange[] =>
  alignRows(before, after).flatMap(changesIn);

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
