/** Tables as text: comma-separated for a file, tab-separated for a clipboard. */

/** `undefined` and numbers that are none become empty cells. */
export type Cell = string | number | undefined;
export type Row = readonly Cell[];

/** Digits of a number in a table: more than any input is known to, few enough to hide the noise of a conversion. */
const DIGITS = 7;

/** Spreadsheets run a text that begins like a formula; names come from files of other people. */
const LIKE_FORMULA = /^[=@+\-\t\r]/;
const NUMBER = /^[+-]?\d+([.,]\d+)?( %)?$/;
const guarded = (words: string): string => (LIKE_FORMULA.test(words) && !NUMBER.test(words) ? `'${words}` : words);

function written(cell: Cell): string {
  if (cell === undefined) return '';
  if (typeof cell === 'string') return guarded(cell);
  return Number.isFinite(cell) ? String(Number(cell.toPrecision(DIGITS))) : '';
}

const quoted = (words: string): string => (/[",\r\n]/.test(words) ? `"${words.replaceAll('"', '""')}"` : words);

/** After RFC 4180: comma, CR LF, quotes doubled; numbers with a decimal point, whatever the locale. */
export const csvOf = (rows: readonly Row[]): string =>
  rows.map((row) => `${row.map((cell) => quoted(written(cell))).join(',')}\r\n`).join('');

/** One line a row; tabs and line ends inside a cell become spaces, since nothing quotes them. */
export const tsvOf = (rows: readonly Row[]): string =>
  rows.map((row) => `${row.map((cell) => written(cell).replace(/\s+/g, ' ')).join('\t')}\n`).join('');
