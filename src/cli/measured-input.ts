/** Reads a file of a test bench for a command: columns, units and signs out of the options, else out of the file's headings. */
import {
  type Column,
  guessColumns,
  KIND_OF,
  QUANTITIES,
  type Quantity,
  SIGNS,
  type Sign,
  unitIn,
} from '../measured/mapping.ts';
import {
  asMeasurement,
  DEFAULT_MOST_POINTS,
  type Measured,
  type MeasureSettings,
  measure,
  usualWindow,
} from '../measured/measure.ts';
import { normalise } from '../measured/normalise.ts';
import { guessSettings, readTable, type Table } from '../measured/table.ts';
import type { Measurement } from '../model/measurement.ts';
import { UsageError, type Values } from './command.ts';
import { faultLines, readInput } from './input.ts';

export const MEASURED = 'measured';
export const COLUMNS = 'columns';
export const MEASURED_SIGNS = 'signs';
export const GAS = 'gas';
export const FRICTION = 'friction';
export const WINDOW = 'window-s';
export const PEAKS = 'peaks';

export interface MeasuredFile {
  readonly measurement: Measurement;
  readonly read: Measured;
}

const pairsOf = (list: string): (readonly [string, string])[] =>
  list.split(',').map((pair) => {
    const at = pair.indexOf('=');
    return [pair.slice(0, at).trim(), pair.slice(at + 1).trim()];
  });

const wrong = (option: string, got: string, wanted: string): UsageError =>
  new UsageError(`--${option}: got ${JSON.stringify(got)}, wanted ${wanted}`);

function quantityOf(name: string): Quantity {
  const found = QUANTITIES.find((quantity) => quantity.toLowerCase() === name.toLowerCase());
  if (found) return found;
  throw wrong(COLUMNS, name, `one of ${QUANTITIES.join(', ')}, each with = and its column`);
}

/** `2:mm/s` is the second column in mm/s; `Speed` the column of that heading, in the unit that it says. */
function columnFrom(quantity: Quantity, written: string, { headings }: Table): Column {
  const [place, said] = written.split(':', 2);
  const byName = headings.findIndex(({ name }) => name.toLowerCase() === place.toLowerCase());
  const at = byName >= 0 ? byName : Number(place) - 1;
  if (!(Number.isInteger(at) && at >= 0 && at < headings.length)) {
    throw wrong(COLUMNS, written, `a heading or a number from 1 to ${headings.length}`);
  }
  const unit = unitIn(said ?? headings[at].unit, quantity);
  if (said !== undefined && unit === undefined) throw wrong(COLUMNS, said, `a unit of ${KIND_OF[quantity]}`);
  return { quantity, at, ...(unit !== undefined && { unit }) };
}

function columnsOf(values: Values, table: Table): Column[] {
  const list = values.get(COLUMNS);
  if (list === undefined) return guessColumns(table.headings);
  return pairsOf(list).map(([name, place]) => columnFrom(quantityOf(name), place, table));
}

function signsOf(values: Values): Readonly<Record<string, Sign>> {
  const list = values.get(MEASURED_SIGNS);
  return Object.fromEntries(
    (list === undefined ? [] : pairsOf(list)).map(([name, written]) => {
      const sign = SIGNS.find((each) => each === written);
      if (!['speed', 'force', 'position'].includes(name) || !sign || (name === 'position' && sign === 'none'))
        throw wrong(MEASURED_SIGNS, `${name}=${written}`, 'speed, force or position = compression, rebound or none');
      return [name, sign];
    }),
  );
}

function numberOf(values: Values, option: string, otherwise: number): number {
  const written = values.get(option);
  if (written === undefined) return otherwise;
  const value = Number(written);
  if (Number.isFinite(value) && value >= 0) return value;
  throw wrong(option, written, 'a number of at least 0');
}

function gasOf(values: Values): MeasureSettings['gas'] {
  const written = values.get(GAS) ?? 'kept';
  if (written === 'kept' || written === 'bench' || written === 'slowest-points') return written;
  const value = Number(written);
  if (Number.isFinite(value)) return value;
  throw wrong(GAS, written, 'kept, bench, slowest-points or a force in N');
}

/** @throws UsageError with every fault, each at its line and column */
export async function readMeasured(file: string, values: Values): Promise<MeasuredFile> {
  const text = await readInput(file);
  const table = readTable(text, guessSettings(text));
  const signs = signsOf(values);
  const mapping = {
    columns: columnsOf(values, table),
    speedSign: signs.speed ?? 'compression',
    forceSign: signs.force ?? 'compression',
    positionSign: signs.position === 'rebound' ? 'rebound' : 'compression',
  } as const;
  const samples = normalise(table, mapping);
  const window = samples.ok && samples.value.time_s ? usualWindow(samples.value.time_s) : 0;
  const gas = gasOf(values);
  const read = measure(table, {
    mapping,
    gas,
    friction_N: numberOf(values, FRICTION, 0),
    window_s: numberOf(values, WINDOW, window),
    keep: values.has(PEAKS) ? 'peaks' : 'all',
    mostPoints: DEFAULT_MOST_POINTS,
  });
  if (!read.ok) throw new UsageError(faultLines(file, read.faults).join('\n'));
  const about = { id: 'file', name: file, notes: '', sourceFile: file.slice(-300), conditions: {} };
  return { measurement: asMeasurement(read.value, about, gas === 'bench'), read: read.value };
}
