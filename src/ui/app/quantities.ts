/** Numbers between document or solver and person, in the units and with the decimal sign the person chose. Conversions live in src/units. */

import { fromSI, toSI } from '../../units/convert.ts';
import { withDecimalPoints, withSign } from '../../units/decimal-sign.ts';
import { InputError } from '../../units/fault.ts';
import { formatNumber, formatQuantity } from '../../units/format.ts';
import { quantitiesInText } from '../../units/in-text.ts';
import { digitsIn, unitIn } from '../../units/own-units.ts';
import { metresFromMillimetres } from '../../units/si.ts';
import type { Kind, UnitOf } from '../../units/unit-table.ts';
import { decimalSign, units } from './preferences.ts';

/** The fields of the document by what they hold, each with the unit it is saved in. A suffix is told and never converted. */
const FIELDS = {
  length: { kind: 'length', saved: 'mm' },
  area: { kind: 'area', saved: 'mm²' },
  volume: { kind: 'volume', saved: 'mL' },
  force: { kind: 'force', saved: 'N' },
  gasPressure: { kind: 'pressure', saved: 'bar' },
  temperature: { kind: 'temperature', saved: '°C' },
  temperatureDifference: { kind: 'temperatureDifference', saved: 'K' },
  density: { kind: 'density', saved: 'kg/m³' },
  viscosity: { kind: 'kinematicViscosity', saved: 'cSt' },
  speed: { kind: 'speed', saved: 'm/s' },
  springRate: { kind: 'springRate', saved: 'N/mm' },
  mass: { kind: 'mass', saved: 'kg' },
  torque: { kind: 'torque', saved: 'N·m' },
  runTime: { kind: 'number', saved: '', suffix: 'h' },
  distance: { kind: 'distance', saved: 'km' },
  modulus: { kind: 'modulus', saved: 'GPa' },
  strength: { kind: 'stress', saved: 'MPa' },
  frequency: { kind: 'frequency', saved: 'Hz' },
  duration: { kind: 'time', saved: 's' },
  count: { kind: 'number', saved: '' },
  plain: { kind: 'number', saved: '' },
  angle: { kind: 'number', saved: '', suffix: '°' },
  percent: { kind: 'number', saved: '', suffix: '%' },
  viscousFriction: { kind: 'viscousFriction', saved: 'N·s/m' },
} as const satisfies Record<string, { kind: Kind; saved: string; suffix?: string }>;

export type FieldKind = keyof typeof FIELDS;

/** Significant digits of a number that was converted for reading: more than a rule or a gauge can tell. */
const CONVERTED_DIGITS = 5;

// A field's kind and unit come as a pair from the table above, which the compiler cannot follow through the index.
export const kindOf = (field: FieldKind): Kind => FIELDS[field].kind;
const savedUnit = <K extends Kind>(field: FieldKind): UnitOf<K> => FIELDS[field].saved as UnitOf<K>;
const shownUnit = (field: FieldKind): UnitOf<Kind> => unitIn(units.value, kindOf(field)) as UnitOf<Kind>;

/** As the charts library takes it: the decimal sign, and a space that would part thousands. */
export const chartSeparators = (): string => `${decimalSign.value} `;

/** A number of the program as the person reads it. */
export const inLocale = (written: string): string => withSign(written, decimalSign.value);

/** A sentence of the solver, with its quantities in the person's units. */
export const inReaderUnits = (sentence: string): string => quantitiesInText(sentence, units.value, decimalSign.value);

/** The unit behind a box. */
export function unitOf(field: FieldKind): string {
  const entry: { readonly kind: Kind; readonly suffix?: string } = FIELDS[field];
  return entry.suffix ?? shownUnit(field);
}

/** The number for a box. */
export function writeField(field: FieldKind, value: number): string {
  if (shownUnit(field) === savedUnit(field)) return inLocale(String(value));
  const shown = fromSI(toSI(value, kindOf(field), savedUnit(field)), kindOf(field), shownUnit(field));
  return inLocale(String(Number(shown.toPrecision(CONVERTED_DIGITS))));
}

export const showField = (field: FieldKind, value: number): string =>
  `${writeField(field, value)} ${unitOf(field)}`.trim();

/** A precision: one digit of it is meant. */
export function showRounded(field: FieldKind, value: number): string {
  const rounded = Number(Number(writeField(field, value)).toPrecision(1));
  return `± ${rounded} ${unitOf(field)}`.trim();
}

type Parser = typeof import('../../units/expression.ts');
let parser: Parser | undefined;

/** The reader of expressions is large and waits until the first view stands. */
export async function loadParser(): Promise<void> {
  parser ??= await import('../../units/expression.ts');
}
export const parserIsReady = (): boolean => parser !== undefined;

/** What was typed, in the document's unit. @throws InputError from src/units */
export function readField(field: FieldKind, typed: string): number {
  if (!parser) throw new Error('the reader of expressions is not loaded');
  const pointed = withDecimalPoints(typed, decimalSign.value, field);
  const read = parser.parseInto(pointed, kindOf(field), savedUnit(field), shownUnit(field), field);
  if (!read.ok) throw new InputError(read.fault);
  return read.value;
}

/** What the solver computed, by how it is read. */
const SHOWN = {
  length: { kind: 'length', digits: { metric: 2, imperial: 4 } },
  lift: { kind: 'length', digits: { metric: 3, imperial: 4 } },
  speed: { kind: 'speed', digits: { metric: 2, imperial: 1 } },
  jet: { kind: 'speed', digits: { metric: 1, imperial: 0 } },
  flow: { kind: 'flow', digits: { metric: 2, imperial: 2 } },
  force: { kind: 'force', digits: { metric: 0, imperial: 1 } },
  pressure: { kind: 'pressure', digits: { metric: 1, imperial: 0 } },
  stress: { kind: 'stress', digits: { metric: 0, imperial: 1 } },
  position: { kind: 'length', digits: { metric: 1, imperial: 2 } },
  energy: { kind: 'energy', digits: { metric: 2, imperial: 2 } },
  power: { kind: 'power', digits: { metric: 1, imperial: 1 } },
  volume: { kind: 'volume', digits: { metric: 3, imperial: 4 } },
  temperature: { kind: 'temperature', digits: { metric: 0, imperial: 0 } },
} as const satisfies Record<string, { kind: Kind; digits: { metric: number; imperial: number } }>;

export type ShownKind = keyof typeof SHOWN;

const unitShown = (shown: ShownKind): UnitOf<Kind> => unitIn(units.value, SHOWN[shown].kind) as UnitOf<Kind>;
const digitsShown = (shown: ShownKind): number => digitsIn(units.value, SHOWN[shown].kind, SHOWN[shown].digits);
export const unitOfShown = (shown: ShownKind): string => unitShown(shown);

/** A solver's number as a plain number in the shown unit, for axes. */
export const inShown = (shown: ShownKind, si: number): number =>
  fromSI(si, SHOWN[shown].kind as Kind, unitShown(shown));

export const fromShown = (shown: ShownKind, value: number): number =>
  toSI(value, SHOWN[shown].kind as Kind, unitShown(shown));

/** `0.15 mm`, from SI. */
export function show(shown: ShownKind, si: number): string {
  const { kind } = SHOWN[shown];
  return inLocale(formatQuantity(si, kind as Kind, unitShown(shown), digitsShown(shown)));
}

/** `0.15 mm`, from the document's millimetres. */
export const showLength = (length_mm: number): string => show('length', metresFromMillimetres(length_mm));

/** The number without its unit, for table columns whose head has the unit. */
export const showBare = (shown: ShownKind, si: number): string => showNumber(inShown(shown, si), digitsShown(shown));

/** The same with its sign, as a difference is read. */
export const showBareSigned = (shown: ShownKind, si: number): string => withPlus(showBare(shown, si), si);

const withPlus = (number: string, value: number): string => (value > 0 && /[1-9]/.test(number) ? `+${number}` : number);

/** A plain number that has its unit elsewhere. */
export const showNumber = (value: number, digits: number): string => inLocale(formatNumber(value, digits));
export const showRatio = (ratio: number): string => showNumber(ratio, 1);
export const showPercent = (share: number, signed = false): string => {
  const number = formatNumber(share * 100, 0);
  return `${signed ? withPlus(number, share) : number} %`;
};

const KIND_OF_UNIT: Readonly<Record<string, Kind>> = {
  mm: 'length',
  'mm²': 'area',
  mm2: 'area',
  mL: 'volume',
  N: 'force',
  'N/mm': 'springRate',
  bar: 'pressure',
  '°C': 'temperature',
  'kg/m³': 'density',
  kg: 'mass',
  N·m: 'torque',
  GPa: 'modulus',
  MPa: 'stress',
  'm/s': 'speed',
  'N·s/m': 'viscousFriction',
};

const NUMBERS = /-?\d+(?:\.\d+)?(?:e-?\d+)?/g;

/** A sentence with numbers in a saved unit, in the person's unit: `at least 12` mm to `at least 0.47244 in`. */
export function inFamily(words: string, savedIn: string): string {
  const kind = KIND_OF_UNIT[savedIn];
  if (!/\d/.test(words)) return words;
  const unit = kind && unitIn(units.value, kind);
  if (!unit || unit === savedIn) return `${inLocale(words)} ${savedIn}`;
  const convert = (number: string): string => {
    const si = toSI(Number(number), kind, savedIn as UnitOf<Kind>);
    return inLocale(String(Number(fromSI(si, kind, unit as UnitOf<Kind>).toPrecision(CONVERTED_DIGITS))));
  };
  return `${words.replace(NUMBERS, convert)} ${unit}`;
}
