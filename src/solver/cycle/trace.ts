/**
 * A displacement trace out of a text: one line a moment under a header that names a column of time and one of position with their units,
 * `time_s` or `time_ms`, `position_mm`, `position_m` or `position_in`; other columns are left alone. Columns stand between commas,
 * semicolons or tabs; with semicolons or tabs a number may have a decimal comma. Positions count from full extension.
 */
import { InputError } from '../../units/fault.ts';
import { metresFromMillimetres, millimetresFromInches } from '../../units/si.ts';

export interface Trace {
  /** Rising. */
  readonly time_s: Float64Array;
  /** From full extension. */
  readonly position_m: Float64Array;
}

type ToSI = (value: number) => number;

const TIMES: Readonly<Record<string, ToSI>> = { time_s: (time) => time, time_ms: (time) => time / 1000 };
const POSITIONS: Readonly<Record<string, ToSI>> = {
  position_mm: metresFromMillimetres,
  position_m: (x) => x,
  position_in: (x) => metresFromMillimetres(millimetresFromInches(x)),
};

/** More than any trace is written with, and few enough that a conversion leaves no trailing digits. */
const FAULT_DIGITS = 9;

interface Row {
  /** Line of the text, the first is 1. */
  readonly line: number;
  readonly fields: readonly string[];
}

interface Column {
  readonly name: string;
  readonly at: number;
  readonly toSI: ToSI;
}

/**
 * @throws InputError `cycle.trace.header` without the two columns, `cycle.trace.number` for a field that is no number, `cycle.trace.time`
 *   where time does not rise, `cycle.trace.travel` where a position leaves the travel, `cycle.trace.short` with fewer than two moments;
 *   each names line and column
 */
export function parseTrace(text: string, travel_m: number): Trace {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\r|\n/);
  const headerAt = lines.findIndex((line) => line.trim() !== '');
  const header = lines[headerAt] ?? '';
  const separator = [';', '\t', ','].find((mark) => header.includes(mark)) ?? ',';
  const names = fieldsOf(header, separator);
  const [time, position] = [columnOf(names, TIMES), columnOf(names, POSITIONS)];
  const rows = lines
    .map((line, i): Row => ({ line: i + 1, fields: fieldsOf(line, separator) }))
    .slice(headerAt + 1)
    .filter(({ fields }) => fields.some((field) => field !== ''));
  if (rows.length < 2) throw fault('short', 'trace', String(rows.length), 'at least two moments');
  const decimalComma = separator !== ',';
  const time_s = valuesOf(rows, time, decimalComma);
  const position_m = valuesOf(rows, position, decimalComma);
  requireRising(rows, time, time_s);
  requireWithin(rows, position, position_m, travel_m);
  return { time_s, position_m };
}

const fieldsOf = (line: string, separator: string): string[] =>
  line.split(separator).map((field) => field.trim().replace(/^"(.*)"$/, '$1'));

function columnOf(names: readonly string[], known: Readonly<Record<string, ToSI>>): Column {
  const at = names.findIndex((name) => Object.hasOwn(known, name));
  if (at >= 0) return { name: names[at], at, toSI: known[names[at]] };
  throw fault('header', 'trace, header', JSON.stringify(names), `a column ${Object.keys(known).join(' or ')}`);
}

function valuesOf(rows: readonly Row[], { name, at, toSI }: Column, decimalComma: boolean): Float64Array {
  return Float64Array.from(rows, ({ line, fields }) => {
    const field = fields[at] ?? '';
    const value = field === '' ? Number.NaN : Number(decimalComma ? field.replace(',', '.') : field);
    if (Number.isFinite(value)) return toSI(value);
    throw fault('number', placeOf(line, name), JSON.stringify(field), 'a number');
  });
}

/** As it stands in its column, whose name ends in its unit. */
const inColumn = ({ toSI }: Column, si: number): string => String(Number((si / toSI(1)).toPrecision(FAULT_DIGITS)));
const unitOf = ({ name }: Column): string => name.slice(name.indexOf('_') + 1);

function requireRising(rows: readonly Row[], column: Column, time_s: Float64Array): void {
  for (let i = 1; i < rows.length; i++) {
    if (time_s[i] > time_s[i - 1]) continue;
    const [got, before] = [time_s[i], time_s[i - 1]].map((time) => inColumn(column, time));
    throw fault('time', placeOf(rows[i].line, column.name), got, `more than ${before}`, unitOf(column));
  }
}

function requireWithin(rows: readonly Row[], column: Column, position_m: Float64Array, travel_m: number): void {
  for (const [i, x] of position_m.entries()) {
    if (x >= 0 && x <= travel_m) continue;
    const [got, travel] = [x, travel_m].map((position) => inColumn(column, position));
    throw fault('travel', placeOf(rows[i].line, column.name), got, `from 0 to the travel, ${travel}`, unitOf(column));
  }
}

const placeOf = (line: number, column: string): string => `trace, line ${line}, ${column}`;

const fault = (code: string, path: string, got: string, wanted: string, unit?: string) =>
  new InputError({ code: `cycle.trace.${code}`, path, got, wanted, ...(unit && { unit }) });
