/** Numbers of the document for the sheet: in the units of one family, or of both. */
import { fromSI, toSI } from '../units/convert.ts';
import { type Family, formatNumber } from '../units/format.ts';
import type { Kind, UnitOf } from '../units/unit-table.ts';
import type { SettingKind } from './settings.ts';

interface Shown {
  readonly unit: string;
  /** Behind the point; in the unit that the document saves, all that were typed, up to so many. */
  readonly digits: number;
  /** What a person calls the unit, where the table's sign is not clear on paper. */
  readonly called?: string;
}

interface Quantity {
  readonly kind: Kind;
  readonly saved: string;
  readonly metric: Shown;
  readonly imperial: Shown;
}

const QUANTITIES = {
  length: {
    kind: 'length',
    saved: 'mm',
    metric: { unit: 'mm', digits: 3 },
    imperial: { unit: 'in', digits: 4 },
  },
  volume: {
    kind: 'volume',
    saved: 'mL',
    metric: { unit: 'mL', digits: 1 },
    imperial: { unit: 'fl oz', digits: 2, called: 'fl oz US' },
  },
  gasPressure: {
    kind: 'pressure',
    saved: 'bar',
    metric: { unit: 'bar', digits: 2 },
    imperial: { unit: 'psi', digits: 0 },
  },
  torque: {
    kind: 'torque',
    saved: 'N·m',
    metric: { unit: 'N·m', digits: 2 },
    imperial: { unit: 'ft·lbf', digits: 1 },
  },
  temperature: {
    kind: 'temperature',
    saved: '°C',
    metric: { unit: '°C', digits: 1 },
    imperial: { unit: '°F', digits: 0 },
  },
  force: { kind: 'force', saved: 'N', metric: { unit: 'N', digits: 0 }, imperial: { unit: 'lbf', digits: 1 } },
  speed: {
    kind: 'speed',
    saved: 'm/s',
    metric: { unit: 'm/s', digits: 2 },
    imperial: { unit: 'in/s', digits: 1 },
  },
  springRate: {
    kind: 'springRate',
    saved: 'N/mm',
    metric: { unit: 'N/mm', digits: 3 },
    imperial: { unit: 'lbf/in', digits: 2 },
  },
  modulus: {
    kind: 'modulus',
    saved: 'GPa',
    metric: { unit: 'GPa', digits: 1 },
    imperial: { unit: 'ksi', digits: 0 },
  },
  strength: {
    kind: 'stress',
    saved: 'MPa',
    metric: { unit: 'MPa', digits: 0 },
    imperial: { unit: 'ksi', digits: 1 },
  },
} as const satisfies Readonly<Record<string, Quantity>>;

export type QuantityKind = keyof typeof QUANTITIES;

/** What has no unit of a family. */
const PLAIN: Readonly<Record<Exclude<SettingKind, QuantityKind>, string>> = { angle: '°', count: '', plain: '' };

export const otherFamily = (family: Family): Family => (family === 'metric' ? 'imperial' : 'metric');

/** The number in a family's unit. @param value in the unit of the document */
export function inUnit(kind: QuantityKind, value: number, family: Family): number {
  const { kind: of, saved, [family]: shown }: Quantity = QUANTITIES[kind];
  // Kind and units come as a set from the table above, which the compiler cannot follow through the index.
  return fromSI(toSI(value, of, saved as UnitOf<Kind>), of, shown.unit as UnitOf<Kind>);
}

export function bare(kind: QuantityKind, value: number, family: Family): string {
  const { saved, [family]: shown }: Quantity = QUANTITIES[kind];
  const written = formatNumber(inUnit(kind, value, family), shown.digits);
  // A size stands as it was typed; what was converted keeps its digits, which say how finely it is meant.
  return shown.unit === saved && written.includes('.') ? written.replace(/\.?0+$/, '') : written;
}

export function unitName(kind: QuantityKind, family: Family): string {
  const { [family]: shown }: Quantity = QUANTITIES[kind];
  return shown.called ?? shown.unit;
}

export const one = (kind: QuantityKind, value: number, family: Family): string =>
  `${bare(kind, value, family)} ${unitName(kind, family)}`;

/** `0.15 mm (0.0059 in)`, the family of the reader first. */
export const both = (kind: QuantityKind, value: number, family: Family): string =>
  `${one(kind, value, family)} (${one(kind, value, otherFamily(family))})`;

const isQuantity = (kind: SettingKind): kind is SettingKind & QuantityKind => Object.hasOwn(QUANTITIES, kind);

/** A setting of a build, in both families where it has a unit. */
export const settingIn =
  (family: Family) =>
  (kind: SettingKind, value: number): string =>
    isQuantity(kind) ? both(kind, value, family) : `${value}${PLAIN[kind]}`;
