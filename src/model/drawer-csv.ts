/** The drawer as a table in a file: a header with units, one size a line. */
import { fromSI, toSI } from '../units/convert.ts';
import type { InputFault } from '../units/fault.ts';
import { type DrawerShim, sizeKey } from './drawer.ts';

const COLUMNS = ['outerDiameter', 'thickness', 'count', 'bore'] as const;
type Column = (typeof COLUMNS)[number];

/** Units a header may name. */
const UNITS = ['mm', 'cm', 'm', 'µm', 'in', 'thou'] as const;
type LengthUnit = (typeof UNITS)[number];

const WANTED_HEADER = 'outerDiameter [mm], thickness [mm], count and, where bores are known, bore [mm]';
/** Digits of a millimetre that are kept when another unit is read: a nanometre. */
const KEPT_DIGITS = 6;

export interface ReadDrawer {
  /** Sizes in the order written; a size that comes twice is one with both counts. */
  readonly drawer: readonly DrawerShim[];
  /** One for each line that could not be read; path is `line 3`. */
  readonly faults: readonly InputFault[];
}

/** `outerDiameter [mm],thickness [mm],count,bore [mm]` and a line for each size; an unknown bore is empty. */
export function drawerCsv(drawer: readonly DrawerShim[]): string {
  const head = COLUMNS.map((column) => (column === 'count' ? column : `${column} [mm]`)).join(',');
  const lines = drawer.map(({ outerDiameter_mm, thickness_mm, count, innerDiameter_mm }) =>
    [outerDiameter_mm, thickness_mm, count, innerDiameter_mm ?? ''].join(','),
  );
  return [head, ...lines, ''].join('\r\n');
}

interface Header {
  readonly at: ReadonlyMap<Column, number>;
  readonly unit: ReadonlyMap<Column, LengthUnit>;
}

/** Reads such a table, with its columns in any order, lengths in any of the usual units, and a decimal comma where no comma separates. */
export function readDrawerCsv(text: string): ReadDrawer {
  const lines = text
    .replace(/^\uFEFF/, '')
    .split(/\r\n|\r|\n/)
    .map((line, i) => ({ line, path: `line ${i + 1}` }))
    .filter(({ line }) => line.trim() !== '');
  const [first, ...rest] = lines;
  const separator = /[;\t]/.exec(first?.line ?? '')?.[0] ?? ',';
  const cellsOf = (line: string): string[] =>
    line.split(separator).map((cell) => cell.trim().replace(/^"(.*)"$/, '$1'));
  const header = headerOf(cellsOf(first?.line ?? ''));
  if (!header) return { drawer: [], faults: [headerFault(first)] };
  const faults: InputFault[] = [];
  const shims: DrawerShim[] = [];
  for (const { line, path } of rest) {
    const read = shimOf(cellsOf(line), header, separator !== ',', path);
    if ('code' in read) faults.push(read);
    else shims.push(read);
  }
  return { drawer: addShims([], shims), faults };
}

const headerFault = (first: { line: string; path: string } | undefined): InputFault => ({
  code: 'drawer.csv.header',
  path: first?.path ?? 'line 1',
  got: JSON.stringify((first?.line ?? '').slice(0, 80)),
  wanted: WANTED_HEADER,
});

function headerOf(cells: readonly string[]): Header | undefined {
  const at = new Map<Column, number>();
  const unit = new Map<Column, LengthUnit>();
  for (const [i, cell] of cells.entries()) {
    const [, name, written] = /^([A-Za-z]+)\s*(?:[[(](\S+)[\])])?$/.exec(cell) ?? [];
    const column = COLUMNS.find((each) => each.toLowerCase() === name?.toLowerCase());
    if (!column) continue;
    const known = UNITS.find((each) => each === written?.replace('μ', 'µ'));
    if (column !== 'count' && !known) return undefined;
    at.set(column, i);
    if (known) unit.set(column, known);
  }
  return (['outerDiameter', 'thickness', 'count'] as const).every((column) => at.has(column))
    ? { at, unit }
    : undefined;
}

function shimOf(
  cells: readonly string[],
  { at, unit }: Header,
  decimalComma: boolean,
  path: string,
): DrawerShim | InputFault {
  const cell = (column: Column): string => cells[at.get(column) ?? -1] ?? '';
  const number = (column: Column): number => {
    const written = decimalComma ? cell(column).replace(',', '.') : cell(column);
    return written === '' ? Number.NaN : Number(written);
  };
  const length = (column: Column): number => {
    const from = unit.get(column) ?? 'mm';
    if (from === 'mm') return number(column);
    const length_mm = fromSI(toSI(number(column), 'length', from), 'length', 'mm');
    return Number(length_mm.toFixed(KEPT_DIGITS));
  };
  const wrong = (column: Column, wanted: string): InputFault => ({
    code: 'drawer.csv.number',
    path,
    got: `${column} ${JSON.stringify(cell(column))}`,
    wanted,
  });
  for (const column of ['outerDiameter', 'thickness'] as const)
    if (!(length(column) > 0 && Number.isFinite(length(column)))) return wrong(column, 'a length above 0');
  const count = number('count');
  if (!(Number.isInteger(count) && count >= 0)) return wrong('count', 'a whole number of at least 0');
  const size = { outerDiameter_mm: length('outerDiameter'), thickness_mm: length('thickness'), count };
  if (cell('bore') === '') return size;
  return length('bore') > 0
    ? { ...size, innerDiameter_mm: length('bore') }
    : wrong('bore', 'a length above 0, or nothing');
}

/** The drawer with these added: more of a size that is there, a new entry for one that is not. */
export function addShims(drawer: readonly DrawerShim[], added: readonly DrawerShim[]): DrawerShim[] {
  const bySize = new Map(drawer.map((shim) => [sizeKey(shim), shim] as const));
  for (const shim of added) {
    const key = sizeKey(shim);
    bySize.set(key, { ...shim, count: (bySize.get(key)?.count ?? 0) + shim.count });
  }
  return [...bySize.values()];
}
