/** Units that a person picks for one kind of quantity, apart from the family of the rest. */
import { displayOf, type Family } from './format.ts';
import { isUnitOf, type Kind, type UnitOf, unit } from './unit-table.ts';

export type OwnUnits = { readonly [K in Kind]?: UnitOf<K> };

export interface Units {
  readonly family: Family;
  readonly own?: OwnUnits;
}

/** What a gauge, a rule or a data sheet of the trade is marked in. A kind that is not here has one unit. */
const CHOICES: { readonly [K in Kind]?: readonly UnitOf<K>[] } = {
  length: ['mm', 'in', 'thou'],
  distance: ['km', 'mi'],
  area: ['mm²', 'cm²', 'in²'],
  volume: ['mL', 'cm³', 'fl oz', 'in³'],
  mass: ['kg', 'lb'],
  force: ['N', 'lbf', 'kgf'],
  pressure: ['bar', 'psi', 'kPa', 'MPa'],
  stress: ['MPa', 'ksi'],
  modulus: ['GPa', 'MPa', 'ksi'],
  speed: ['m/s', 'mm/s', 'in/s', 'ft/s'],
  temperature: ['°C', '°F'],
  torque: ['N·m', 'ft·lbf', 'in·lbf'],
  energy: ['J', 'ft·lbf'],
  density: ['kg/m³', 'g/cm³', 'lb/ft³'],
  springRate: ['N/mm', 'lbf/in', 'kgf/mm'],
  viscousFriction: ['N·s/m', 'lbf·s/in'],
  flow: ['L/min', 'mL/s', 'in³/s'],
};

// The kind and its units come as a pair from the table, which the compiler cannot follow through the index.
export const unitChoices = <K extends Kind>(kind: K): readonly UnitOf<K>[] =>
  (CHOICES[kind] as readonly UnitOf<K>[] | undefined) ?? [displayOf('metric', kind).unit];

/** A difference is read in the unit of what it is between. */
const PICKED_AS: { readonly [K in Kind]?: Kind } = { temperatureDifference: 'temperature' };

export const unitIn = <K extends Kind>({ family, own }: Units, kind: K): UnitOf<K> =>
  (own?.[PICKED_AS[kind] ?? kind] as UnitOf<K> | undefined) ?? displayOf(family, kind).unit;

/** Digits behind the point of a reading, by family. */
export interface Digits {
  readonly metric: number;
  readonly imperial: number;
}

const sizeOf = <K extends Kind>(kind: K, symbol: UnitOf<K>): number => {
  const { numerator, denominator } = unit(kind, symbol);
  return numerator / denominator;
};

/** As fine as in the family that has the unit; in any other unit about as fine as in metric ones. */
export function digitsIn(units: Units, kind: Kind, digits: Digits): number {
  const symbol = unitIn(units, kind);
  const families: readonly Family[] = [units.family, 'metric', 'imperial'];
  const family = families.find((each) => displayOf(each, kind).unit === symbol);
  if (family) return digits[family];
  const finer = Math.log10(sizeOf(kind, symbol) / sizeOf(kind, displayOf('metric', kind).unit));
  return Math.max(0, digits.metric + Math.round(finer));
}

/** What was kept on this machine: a unit that this version does not offer is left out. */
export function readOwnUnits(kept: unknown): OwnUnits {
  if (typeof kept !== 'object' || kept === null) return {};
  const known = Object.entries(kept).filter(
    ([kind, symbol]) =>
      Object.hasOwn(CHOICES, kind) &&
      isUnitOf(kind as Kind, String(symbol)) &&
      (CHOICES[kind as Kind] as readonly string[]).includes(String(symbol)),
  );
  return Object.fromEntries(known) as OwnUnits;
}
