/**
 * The table in a file of any test bench: which mark parts its columns, whether numbers have a decimal comma, how many lines stand over
 * the numbers, what each column is called and in which unit. Every guess can be overruled; nothing is read as a number here.
 */
import Papa from 'papaparse';

export const DELIMITERS = [';', '\t', '|', ','] as const;
export type Delimiter = (typeof DELIMITERS)[number];
export type DecimalMark = '.' | ',';

export interface TableSettings {
  readonly delimiter: Delimiter;
  readonly decimalMark: DecimalMark;
  /** Lines over the first line of numbers. */
  readonly headerLines: number;
}

export interface TableRow {
  /** Line of the file, the first is 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export interface Heading {
  readonly name: string;
  /** As it is written, without brackets; empty where none is. */
  readonly unit: string;
}

export interface Table {
  readonly settings: TableSettings;
  readonly headings: readonly Heading[];
  /** Lines that are not empty, below the header. */
  readonly rows: readonly TableRow[];
}

/** Lines that the guesses look at. */
const LOOKED_AT = 200;

const NUMBER = /^[-+−]?(\d+([.,]\d*)?|[.,]\d+)([eE][-+]?\d+)?$/;
const isNumber = (cell: string): boolean => NUMBER.test(cell);

const plainText = (text: string): string => text.replace(/^\uFEFF/, '');

function rowsOf(text: string, delimiter: string, preview = 0): TableRow[] {
  const { data } = Papa.parse<string[]>(plainText(text), { delimiter, preview, newline: newlineOf(text) });
  return data
    .map((cells, i) => ({ line: i + 1, cells: cells.map((cell) => cell.trim()) }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

const newlineOf = (text: string): '\r\n' | '\n' | '\r' =>
  text.includes('\r\n') ? '\r\n' : text.includes('\n') ? '\n' : '\r';

/** The mark that parts most lines; a comma only where no other mark does, since it may stand inside numbers. */
function guessDelimiter(text: string): Delimiter {
  const lines = plainText(text)
    .split(/\r\n|\r|\n/)
    .slice(0, LOOKED_AT)
    .filter((line) => /\d/.test(line));
  const share = (mark: string): number =>
    lines.filter((line) => line.includes(mark)).length / Math.max(lines.length, 1);
  return DELIMITERS.find((mark) => share(mark) > 0.5) ?? ',';
}

function guessDecimalMark(rows: readonly TableRow[], delimiter: Delimiter): DecimalMark {
  if (delimiter === ',') return '.';
  const cells = rows.flatMap((row) => row.cells).filter(isNumber);
  const written = (mark: string): number => cells.filter((cell) => cell.includes(mark)).length;
  return written(',') > written('.') ? ',' : '.';
}

/** Numbers begin at the first row that has two of them (one where no row has two) and is not alone with that. */
function guessHeaderLines(rows: readonly TableRow[]): number {
  const counts = rows.map(({ cells }) => cells.filter(isNumber).length);
  const wanted = Math.min(2, Math.max(0, ...counts));
  const first = counts.findIndex((count, i) => count >= wanted && (counts[i + 1] ?? count) > 0);
  return first < 0 ? 0 : rows[first].line - 1;
}

/** @param text  of the whole file; its first lines are looked at */
export function guessSettings(text: string): TableSettings {
  const delimiter = guessDelimiter(text);
  const rows = rowsOf(text, delimiter, LOOKED_AT);
  return { delimiter, decimalMark: guessDecimalMark(rows, delimiter), headerLines: guessHeaderLines(rows) };
}

const BRACKETED = /^(.*?)\s*[[(]\s*([^\])]*)\s*[\])]\s*$/;
const UNDERSCORED = /^(.+?)_((?:[a-z]+|µm|mm)(?:_s)?)$/i;
const COMMA = /^(.+?)\s*,\s*(\S+)$/;

/** `Speed [mm/s]`, `speed_mm_s`, `Speed, mm/s`: the name and its unit. A word alone has none. */
function headingOf(cell: string): Heading {
  const bracketed = BRACKETED.exec(cell);
  if (bracketed) return { name: bracketed[1], unit: bracketed[2] };
  const underscored = UNDERSCORED.exec(cell);
  if (underscored && isUnitText(underscored[2])) return { name: underscored[1], unit: underscored[2] };
  const comma = COMMA.exec(cell);
  if (comma && isUnitText(comma[2])) return { name: comma[1], unit: comma[2] };
  return { name: cell, unit: '' };
}

const UNIT_TEXT =
  /^[[(]?\s*(m|mm|cm|in|inch|inches|ft|s|sec|ms|k?n|k?lbf?s?|kgf?|[a-z]+\s*[/_]\s*s(ec)?|ips|°?[cf]|bar|psi|[mk]?pa|hz|rpm|%|-)\s*[\])]?$/i;
const isUnitText = (cell: string): boolean => UNIT_TEXT.test(cell);

/** A last header line of units alone stands under the names. */
function headingsOf(header: readonly TableRow[], columns: number): Heading[] {
  const last = header.at(-1)?.cells ?? [];
  const written = last.filter((cell) => cell !== '');
  const units = header.length > 1 && written.length > 0 && written.every(isUnitText);
  const names = (units ? header.at(-2)?.cells : last) ?? [];
  return Array.from({ length: columns }, (_, i) => {
    const heading = headingOf(names[i] ?? '');
    return units ? { ...heading, unit: (last[i] ?? '').replace(/[[\]()]/g, '').trim() } : heading;
  });
}

/** @param preview  read no more lines than that, for a first look; 0 reads all */
export function readTable(text: string, settings: TableSettings, preview = 0): Table {
  const all = rowsOf(text, settings.delimiter, preview);
  const rows = all.filter(({ line }) => line > settings.headerLines);
  const header = all.filter(({ line }) => line <= settings.headerLines);
  const columns = Math.max(0, ...rows.slice(0, LOOKED_AT).map(({ cells }) => cells.length));
  return { settings, headings: headingsOf(header, columns), rows };
}

/** The number in a cell, NaN where it is none. */
export function numberIn(cell: string, decimalMark: DecimalMark): number {
  const other = decimalMark === ',' ? '.' : ',';
  if (!isNumber(cell) || cell.includes(other)) return Number.NaN;
  return Number(cell.replace(decimalMark, '.').replace('−', '-'));
}
