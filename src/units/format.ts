/** Numbers for people: the two unit families, with digits that fit how finely each quantity can be known. */
import { fromSI } from './convert.ts';
import type { Kind, UnitOf } from './unit-table.ts';

export type Family = 'metric' | 'imperial';

export interface Display<K extends Kind> {
  readonly unit: UnitOf<K>;
  /** Digits behind the decimal point. */
  readonly digits: number;
}

type DisplayTable = { readonly [K in Kind]: Display<K> };

const METRIC: DisplayTable = {
  length: { unit: 'mm', digits: 2 },
  distance: { unit: 'km', digits: 0 },
  area: { unit: 'mm²', digits: 1 },
  volume: { unit: 'mL', digits: 1 },
  mass: { unit: 'kg', digits: 1 },
  force: { unit: 'N', digits: 0 },
  pressure: { unit: 'bar', digits: 1 },
  stress: { unit: 'MPa', digits: 0 },
  modulus: { unit: 'GPa', digits: 1 },
  speed: { unit: 'm/s', digits: 2 },
  temperature: { unit: '°C', digits: 0 },
  temperatureDifference: { unit: '°C', digits: 0 },
  torque: { unit: 'N·m', digits: 1 },
  energy: { unit: 'J', digits: 1 },
  power: { unit: 'W', digits: 0 },
  kinematicViscosity: { unit: 'cSt', digits: 1 },
  dynamicViscosity: { unit: 'mPa·s', digits: 1 },
  density: { unit: 'kg/m³', digits: 0 },
  springRate: { unit: 'N/mm', digits: 1 },
  viscousFriction: { unit: 'N·s/m', digits: 1 },
  flow: { unit: 'L/min', digits: 2 },
  frequency: { unit: 'Hz', digits: 2 },
  time: { unit: 's', digits: 2 },
  number: { unit: '', digits: 2 },
};

const IMPERIAL: DisplayTable = {
  ...METRIC,
  length: { unit: 'in', digits: 4 },
  distance: { unit: 'mi', digits: 0 },
  area: { unit: 'in²', digits: 4 },
  volume: { unit: 'fl oz', digits: 2 },
  mass: { unit: 'lb', digits: 1 },
  force: { unit: 'lbf', digits: 1 },
  pressure: { unit: 'psi', digits: 0 },
  stress: { unit: 'ksi', digits: 1 },
  modulus: { unit: 'ksi', digits: 0 },
  speed: { unit: 'in/s', digits: 1 },
  temperature: { unit: '°F', digits: 0 },
  temperatureDifference: { unit: '°F', digits: 0 },
  torque: { unit: 'ft·lbf', digits: 1 },
  energy: { unit: 'ft·lbf', digits: 1 },
  density: { unit: 'lb/ft³', digits: 2 },
  springRate: { unit: 'lbf/in', digits: 1 },
  viscousFriction: { unit: 'lbf·s/in', digits: 3 },
  flow: { unit: 'in³/s', digits: 2 },
};

const FAMILIES: Readonly<Record<Family, DisplayTable>> = { metric: METRIC, imperial: IMPERIAL };

/** The unit and digits in which a family shows a kind. */
export const displayOf = <K extends Kind>(family: Family, kind: K): Display<K> => FAMILIES[family][kind];

const MINUS = '−';

/** The number alone, such as `−12.5`; a value that rounds to nothing has no sign. */
export function formatNumber(value: number, digits: number): string {
  if (!Number.isFinite(value)) return '–';
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `${MINUS}${text}` : text;
}

/** `0.15 mm`. A number that is none shows as a dash. */
export function formatQuantity<K extends Kind>(si: number, kind: K, symbol: UnitOf<K>, digits: number): string {
  const text = formatNumber(fromSI(si, kind, symbol), digits);
  return symbol === '' ? text : `${text} ${symbol}`;
}

/** The same in the unit and with the digits of a family. */
export function formatIn<K extends Kind>(si: number, kind: K, family: Family): string {
  const { unit, digits } = displayOf(family, kind);
  return formatQuantity(si, kind, unit, digits);
}

/** For an input box: the number with all digits that a person may have typed, and no more. */
export const editText = <K extends Kind>(si: number, kind: K, symbol: UnitOf<K>): string =>
  String(fromSI(si, kind, symbol));
