/** A line of the comparison in words: each shim, and what became of it. */

import type { RowPair } from '../../model/align-rows.ts';
import { countOf } from '../../model/expand-shims.ts';
import type { ShimRow } from '../../model/project.ts';
import { differingSettings, settingsIn, type Writer } from '../../sheet/settings.ts';
import { compare as words } from '../text/compare.ts';
import { text } from '../text/en.ts';

/** `3 of 30 × 0.15 mm, bore 14 mm`. */
export function shimInWords(row: ShimRow, write: Writer, bare: Writer): string {
  const { outerDiameter_mm, thickness_mm, count: _, ...extras } = row;
  const size = text.difference.size(bare('length', outerDiameter_mm), write('length', thickness_mm));
  const told = settingsIn(extras, write).map(({ name, value }) => words.extra(name, value));
  return words.withExtras(words.shim(countOf(row), size), told);
}

/** What of a shim was changed; the diameter never is, or it would be another shim. */
function changesInWords(before: ShimRow, after: ShimRow, write: Writer, bare: Writer): string {
  const parts = ({ count: _, ...rest }: ShimRow): object => rest;
  const [from, to] = [countOf(before), countOf(after)];
  const counts = from === to ? [] : [words.change(words.changeCount, String(from), String(to))];
  const others = differingSettings(parts(before), parts(after), write, bare).map((s) =>
    words.change(s.name, s.from, s.to),
  );
  return words.changes([...counts, ...others]);
}

export interface RowWords {
  readonly sign: string;
  readonly mark: string;
  /** Where it went, or what of it changed; empty when the mark says all. */
  readonly note: string;
}

function noteOf(pair: RowPair, write: Writer, bare: Writer): string {
  if (pair.mark === 'changed') return changesInWords(pair.before.row, pair.after.row, write, bare);
  if (pair.mark !== 'moved') return '';
  return pair.side === 'before' ? words.movedTo(pair.after.at + 1) : words.movedFrom(pair.before.at + 1);
}

export const wordsOf = (pair: RowPair, write: Writer, bare: Writer): RowWords => ({
  sign: words.signs[pair.mark],
  mark: words.marks[pair.mark],
  note: noteOf(pair, write, bare),
});

/** Change of a place in words: `+1 shim · 0.10 mm higher`. @param length of a height, with its unit */
export function riseInWords(
  before: { readonly shims: number; readonly height_mm: number },
  after: { readonly shims: number; readonly height_mm: number },
  length: (length_mm: number) => string,
): string {
  const rise_mm = after.height_mm - before.height_mm;
  const [written, nothing] = [length(Math.abs(rise_mm)), length(0)];
  const sign = written === nothing ? 0 : rise_mm > 0 ? 1 : -1;
  return words.rise(words.shimsMore(after.shims - before.shims), words.heightMore(written, sign));
}
