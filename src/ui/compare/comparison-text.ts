/** The comparison as plain text, for a message or a note. */

import type { RowPair } from '../../model/align-rows.ts';
import type { Build, Layout } from '../../model/project.ts';
import type { SettingDifference, Writer } from '../../sheet/settings.ts';
import { compare as words } from '../text/compare.ts';
import { text } from '../text/en.ts';
import type { Comparison, PlaceComparison, StackTotal } from './comparison.ts';
import { shimInWords, wordsOf } from './row-words.ts';

export interface Writers {
  /** With the unit. */
  readonly write: Writer;
  /** Without it. */
  readonly bare: Writer;
  /** A length that was added up, rounded for reading. */
  readonly length: (length_mm: number) => string;
}

function lineOf(pair: RowPair, { write, bare }: Writers): string {
  const { sign, mark, note } = wordsOf(pair, write, bare);
  const { row } =
    pair.mark === 'removed' || (pair.mark === 'moved' && pair.side === 'before') ? pair.before : pair.after;
  const shim = shimInWords(row, write, bare);
  return `  ${words.row(sign, mark, note === '' ? shim : `${shim} (${note})`)}`;
}

export const totalInWords = (total: StackTotal | undefined, length: Writers['length']): string =>
  total ? words.total(total.shims, length(total.height_mm)) : words.noStack;

const settingLines = (settings: readonly SettingDifference[]): string[] =>
  settings.map(({ name, from, to }) => `  ${words.copyOther(name, from, to)}`);

function placeLines(compared: PlaceComparison, layout: Layout, writers: Writers): string[] {
  const { place, pairs, before, after, settings } = compared;
  return [
    text.placeOf(layout, place).stack,
    ...pairs.map((pair) => lineOf(pair, writers)),
    `  ${words.copyTotal(totalInWords(before, writers.length), totalInWords(after, writers.length))}`,
    ...settingLines(settings),
    '',
  ];
}

export function comparisonText(
  { places, besides }: Comparison,
  [from, to]: readonly [Build, Build],
  layout: Layout,
  writers: Writers,
): string {
  return [
    words.copyTitle(from.name, to.name),
    '',
    ...places.flatMap((compared) => placeLines(compared, layout, writers)),
    ...besides.flatMap(({ name, settings }) => [name, ...settingLines(settings), '']),
  ]
    .join('\n')
    .trimEnd();
}
