/**
 * Columns of a file to the units and signs of the document: metres, seconds, newtons; speed and force positive in compression. A cell
 * that is no number is a fault at its line and column; nothing is skipped in silence.
 */
import { tidy, toSI } from '../units/convert.ts';
import type { InputFault } from '../units/fault.ts';
import { isUnitOf, type Kind, type UnitOf } from '../units/unit-table.ts';
import { type Column, columnOf, isMotion, KIND_OF, type Mapping, type Quantity, type Sign } from './mapping.ts';
import { numberIn, type Table, type TableRow } from './table.ts';

/** One entry a point, all lists of one length. */
export interface Samples {
  readonly force_N: readonly number[];
  /** Absent where it has to come from the position. */
  readonly speed_m_s?: readonly number[];
  readonly position_m?: readonly number[];
  readonly time_s?: readonly number[];
}

export type Read<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly faults: readonly InputFault[] };

/** Beyond these the file is not what the person thinks it is, and more of the same tells nothing. */
const MOST_FAULTS = 20;

const fault = (code: string, path: string, got: string, wanted: string): InputFault => ({
  code: `measured.${code}`,
  path,
  got,
  wanted,
});

/** What has to be said before a number can be read. */
function mappingFaults(table: Table, mapping: Mapping): InputFault[] {
  const has = (quantity: Quantity): boolean => columnOf(mapping, quantity) !== undefined;
  const bothForces = has('compressionForce') && has('reboundForce');
  const unsure = mapping.columns.filter(({ quantity, unit }) => !isUnitOf(KIND_OF[quantity] as Kind, unit ?? ''));
  const outside = mapping.columns.filter(({ at }) => !(at >= 0 && at < table.headings.length));
  const nameless = 'a column of speed, or one of position and one of time';
  const unsigned = mapping.speedSign === 'none' && mapping.forceSign === 'none' && has('force') && has('speed');
  return [
    ...(has('force') || bothForces
      ? []
      : [fault('column.force', 'columns', 'none', 'a column of force, or one for each direction')]),
    ...(has('speed') || isMotion(mapping) ? [] : [fault('column.speed', 'columns', 'none', nameless)]),
    ...(bothForces && !has('speed')
      ? [fault('column.speed', 'columns', 'a force for each direction', 'a column of speed')]
      : []),
    ...unsure.map(({ quantity, unit }) =>
      fault('unit', `columns.${quantity}`, unit ?? 'none', `a unit of ${KIND_OF[quantity]}`),
    ),
    ...outside.map(({ quantity, at }) =>
      fault('column.place', `columns.${quantity}`, `column ${at + 1}`, `1 to ${table.headings.length}`),
    ),
    ...(unsigned ? [fault('sign', 'signs', 'neither speed nor force has a sign', 'a sign of one of them')] : []),
  ];
}

function valuesOf(table: Table, column: Column, faults: InputFault[]): number[] {
  const { settings, headings } = table;
  const kind = KIND_OF[column.quantity] as Kind;
  return table.rows.map(({ line, cells }) => {
    const cell = cells[column.at] ?? '';
    const value = numberIn(cell, settings.decimalMark);
    if (Number.isFinite(value)) return tidy(toSI(value, kind, column.unit as UnitOf<Kind>));
    const heading = headings[column.at]?.name;
    const where = `line ${line}, column ${column.at + 1}${heading ? ` (${heading})` : ''}`;
    faults.push(fault('number', where, cell === '' ? 'nothing' : JSON.stringify(cell), 'a number'));
    return Number.NaN;
  });
}

const FACTOR = { compression: 1, rebound: -1 } as const;

/** Numbers with a sign of their own; those without take that of the other column, since a damper works against its motion. */
const signed = (values: readonly number[], sign: Sign, other: readonly number[], otherSign: Sign): number[] =>
  values.map((value, i) => {
    if (sign !== 'none') return value * FACTOR[sign];
    return otherSign === 'none' ? value : Math.abs(value) * Math.sign(other[i] * FACTOR[otherSign]);
  });

/** A force for each direction at one speed: each row gives two points. */
function fromBothForces(speed: readonly number[], compression: readonly number[], rebound: readonly number[]): Samples {
  const along = speed.map(Math.abs);
  const [up, down] = [compression.map(Math.abs), rebound.map(Math.abs)];
  return { speed_m_s: [...along, ...along.map((v) => -v)], force_N: [...up, ...down.map((f) => -f)] };
}

function risingFaults(rows: readonly TableRow[], time_s: readonly number[]): InputFault[] {
  const at = time_s.findIndex((time, i) => i > 0 && !(time > time_s[i - 1]));
  if (at < 0) return [];
  return [
    fault('time', `line ${rows[at].line}, time`, `${time_s[at]} s`, `more than ${time_s[at - 1]} s of the line before`),
  ];
}

/** @returns the samples, or every reason why there are none, up to 20 of them */
export function normalise(table: Table, mapping: Mapping): Read<Samples> {
  const faults = mappingFaults(table, mapping);
  if (faults.length > 0) return { ok: false, faults };
  const read = (quantity: Quantity): number[] | undefined => {
    const column = columnOf(mapping, quantity);
    return column && valuesOf(table, column, faults);
  };
  const [speed, force, up, down] = [read('speed'), read('force'), read('compressionForce'), read('reboundForce')];
  const [position, time] = [read('position'), read('time')];
  if (isMotion(mapping) && time && faults.length === 0) faults.push(...risingFaults(table.rows, time));
  if (faults.length > 0) return { ok: false, faults: faults.slice(0, MOST_FAULTS) };
  if (speed && up && down) return { ok: true, value: fromBothForces(speed, up, down) };
  const { speedSign, forceSign, positionSign } = mapping;
  const samples = {
    force_N: signed(force ?? [], forceSign, speed ?? [], speedSign),
    ...(speed && { speed_m_s: signed(speed, speedSign, force ?? [], forceSign) }),
    ...(position && { position_m: position.map((at) => at * FACTOR[positionSign]) }),
    ...(time && { time_s: time }),
  };
  return { ok: true, value: samples };
}
