/** Tables of numbers that a script wrote into a page, read back from it. */
import { expect } from 'vitest';

export interface Block {
  /** Value of a row, by its first cell, in the column of a heading. */
  readonly at: (row: string, heading: string) => number;
  /** Every row, by heading. */
  readonly rows: readonly Readonly<Record<string, string>>[];
}

/** `1.579·10⁸` is 1.579e8, `−0.5 %` is −0.5. */
export function fromPrinted(text: string): number {
  const plain = text.replaceAll('*', '').replace('−', '-').replace('+', '').replace(/ %$/, '');
  const [, mantissa, power] = /^(-?[\d.]+)·10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+)$/.exec(plain) ?? [];
  if (mantissa === undefined) return plain === '' ? Number.NaN : Number(plain);
  const digits = [...power].map((digit) => (digit === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(digit))).join('');
  return Number(`${mantissa}e${digits}`);
}

/** What stands between the marks of a name. */
export function blockText(page: string, name: string): string {
  const begin = `<!-- ${name}: begin -->`;
  const text = page.slice(page.indexOf(begin) + begin.length, page.indexOf(`<!-- ${name}: end -->`));
  if (!page.includes(begin)) throw new Error(`no block ${name}`);
  return text.trim();
}

/** The table of a block, or the one under a line of bold text in it. */
export function blockOf(page: string, name: string, under = ''): Block {
  const text = blockText(page, name);
  if (!text.includes(under)) throw new Error(`nothing under ${under} in ${name}`);
  const table = text
    .slice(text.indexOf(under))
    .split('\n')
    .slice(under === '' ? 0 : 2);
  const end = table.findIndex((line) => !line.startsWith('|'));
  const [headings, , ...rows] = (end < 0 ? table : table.slice(0, end)).map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
  const at = (row: string, heading: string): number => {
    const cells = rows.find(([first]) => first.replaceAll('*', '') === row);
    const column = headings.indexOf(heading);
    if (!cells || column < 0) throw new Error(`no ${row} under ${heading} in ${name}`);
    return fromPrinted(cells[column]);
  };
  return { at, rows: rows.map((cells) => Object.fromEntries(cells.map((cell, i) => [headings[i], cell]))) };
}

/** A number printed with four digits, out of printed ones. */
export const close = (got: number, wanted: number, share = 2e-3): void =>
  expect(got / wanted - 1).toBeCloseTo(0, -Math.log10(2 * share));
