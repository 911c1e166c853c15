/**
 * Columns of a table for people, numbers to the right; null shows as a dash. In a table that is wider than the screen the headings are
 * stacked, and where that is not enough the columns stand in blocks, each behind the columns that name the row.
 */
import { fold } from './fold.ts';
import { numberText } from './number-text.ts';

export type Cell = string | number | boolean | null;

/** A name alone, or with its unit. */
export type Heading = string | readonly [name: string, unit: string];

export interface Layout {
  /** Columns of the screen; none to break, unless given. */
  readonly width?: number;
  /** How many of the first columns name the row: as it was asked for, so their numbers are written out. */
  readonly names?: number;
}

interface Column {
  /** Lines of the heading. */
  readonly heading: readonly string[];
  readonly texts: readonly string[];
  readonly isText: boolean;
  readonly width: number;
}

const GAP = '  ';

const widest = (texts: readonly string[]): number => Math.max(0, ...texts.map((text) => text.length));

const widthOf = (columns: readonly Column[]): number =>
  columns.reduce((sum, { width }) => sum + width, GAP.length * (columns.length - 1));

function textOf(cell: Cell, numberText: (value: number) => string): string {
  if (cell === null) return '-';
  if (typeof cell === 'boolean') return cell ? 'yes' : 'no';
  return typeof cell === 'number' ? numberText(cell) : cell;
}

/** Whole numbers are counts, or round as they come: they stay whole. */
const isWhole = (cells: readonly Cell[]): boolean =>
  cells.every((cell) => typeof cell !== 'number' || Number.isInteger(cell));

/** The same column under its heading in one line, and under the heading stacked as narrow as the cells or its longest word allow. */
function columnUnder(heading: Heading, cells: readonly Cell[], isName: boolean): { flat: Column; stacked: Column } {
  const [name, unit] = typeof heading === 'string' ? [heading] : heading;
  const asItIs = isName || isWhole(cells);
  const texts = cells.map((cell) => textOf(cell, (value) => (asItIs ? String(value) : numberText(value, unit))));
  const isText = cells.some((cell) => typeof cell === 'string');
  const units = unit === undefined ? [] : [unit];
  const under = (lines: readonly string[]): Column => ({
    ...{ heading: lines, texts, isText },
    width: widest([...lines, ...texts]),
  });
  const needed = widest([...name.split(' '), ...units, ...texts]);
  return { flat: under([[name, ...units].join(' ')]), stacked: under([...fold(name, needed), ...units]) };
}

/** Every block begins with the names and holds as many of the rest as fit, one at the least. */
function blocksOf(columns: readonly Column[], { width, names }: Required<Layout>): Column[][] {
  const named = columns.slice(0, names);
  const blocks = [[...named]];
  for (const column of columns.slice(names)) {
    const last = blocks[blocks.length - 1];
    if (last.length === named.length || widthOf([...last, column]) <= width) last.push(column);
    else blocks.push([...named, column]);
  }
  return blocks;
}

function linesOf(columns: readonly Column[]): string {
  const height = Math.max(...columns.map(({ heading }) => heading.length));
  const padded = columns.map(({ heading, texts, isText, width }) =>
    [...Array<string>(height - heading.length).fill(''), ...heading, ...texts].map((text) =>
      isText ? text.padEnd(width) : text.padStart(width),
    ),
  );
  const lines = padded[0].map((_, i) => padded.map((column) => column[i]).join(GAP));
  return lines.map((line) => `${line.trimEnd()}\n`).join('');
}

export function textTable(
  header: readonly Heading[],
  rows: readonly (readonly Cell[])[],
  { width = Number.POSITIVE_INFINITY, names = 1 }: Layout = {},
): string {
  const columns = header.map((heading, index) =>
    columnUnder(
      heading,
      rows.map((row) => row[index]),
      index < names,
    ),
  );
  const flat = columns.map((column) => column.flat);
  if (widthOf(flat) <= width) return linesOf(flat);
  const stacked = columns.map((column) => column.stacked);
  return blocksOf(stacked, { width, names }).map(linesOf).join('\n');
}
