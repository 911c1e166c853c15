/** The words that name a unit inside an expression. Compound units are built from these by * and /. */
import type { Kind, UnitOf } from './unit-table.ts';

export type TypedUnit = { readonly [K in Kind]: { readonly kind: K; readonly symbol: UnitOf<K> } }[Kind];

const SPELLINGS: readonly (readonly [TypedUnit, ...string[]])[] = [
  [{ kind: 'length', symbol: 'mm' }, 'mm'],
  [{ kind: 'length', symbol: 'in' }, 'inch', 'inches'],
  [{ kind: 'length', symbol: 'thou' }, 'thou'],
  [{ kind: 'length', symbol: 'm' }, 'm'],
  [{ kind: 'length', symbol: 'cm' }, 'cm'],
  [{ kind: 'length', symbol: 'µm' }, 'um'],
  [{ kind: 'length', symbol: 'ft' }, 'ft'],
  [{ kind: 'distance', symbol: 'km' }, 'km'],
  [{ kind: 'distance', symbol: 'mi' }, 'mi', 'mile', 'miles'],
  [{ kind: 'area', symbol: 'mm²' }, 'mm2'],
  [{ kind: 'area', symbol: 'cm²' }, 'cm2'],
  [{ kind: 'area', symbol: 'm²' }, 'm2'],
  [{ kind: 'area', symbol: 'in²' }, 'inch2'],
  [{ kind: 'volume', symbol: 'mm³' }, 'mm3'],
  [{ kind: 'volume', symbol: 'cm³' }, 'cm3'],
  [{ kind: 'volume', symbol: 'm³' }, 'm3'],
  [{ kind: 'volume', symbol: 'in³' }, 'inch3'],
  [{ kind: 'volume', symbol: 'ft³' }, 'ft3'],
  [{ kind: 'volume', symbol: 'mL' }, 'mL', 'ml'],
  [{ kind: 'volume', symbol: 'cc' }, 'cc'],
  [{ kind: 'volume', symbol: 'L' }, 'L', 'l'],
  [{ kind: 'volume', symbol: 'fl oz' }, 'floz'],
  [{ kind: 'mass', symbol: 'kg' }, 'kg'],
  [{ kind: 'mass', symbol: 'g' }, 'g'],
  [{ kind: 'mass', symbol: 'lb' }, 'lb', 'lbs'],
  [{ kind: 'force', symbol: 'N' }, 'N'],
  [{ kind: 'force', symbol: 'kN' }, 'kN'],
  [{ kind: 'force', symbol: 'lbf' }, 'lbf'],
  [{ kind: 'force', symbol: 'kgf' }, 'kgf'],
  [{ kind: 'pressure', symbol: 'Pa' }, 'Pa'],
  [{ kind: 'pressure', symbol: 'kPa' }, 'kPa'],
  [{ kind: 'pressure', symbol: 'MPa' }, 'MPa'],
  [{ kind: 'pressure', symbol: 'GPa' }, 'GPa'],
  [{ kind: 'pressure', symbol: 'mbar' }, 'mbar'],
  [{ kind: 'pressure', symbol: 'bar' }, 'bar'],
  [{ kind: 'pressure', symbol: 'psi' }, 'psi'],
  [{ kind: 'pressure', symbol: 'ksi' }, 'ksi'],
  [{ kind: 'energy', symbol: 'J' }, 'J'],
  [{ kind: 'energy', symbol: 'kJ' }, 'kJ'],
  [{ kind: 'power', symbol: 'W' }, 'W'],
  [{ kind: 'power', symbol: 'kW' }, 'kW'],
  [{ kind: 'kinematicViscosity', symbol: 'cSt' }, 'cSt'],
  [{ kind: 'dynamicViscosity', symbol: 'cP' }, 'cP'],
  [{ kind: 'dynamicViscosity', symbol: 'mPa·s' }, 'mPas'],
  [{ kind: 'frequency', symbol: 'Hz' }, 'Hz'],
  [{ kind: 'time', symbol: 's' }, 's'],
  [{ kind: 'time', symbol: 'ms' }, 'ms'],
  [{ kind: 'time', symbol: 'min' }, 'min'],
];

const BY_SPELLING = new Map(SPELLINGS.flatMap(([typed, ...words]) => words.map((word) => [word, typed] as const)));

const TEMPERATURES = new Map<string, UnitOf<'temperature'>>([
  ['degC', '°C'],
  ['C', '°C'],
  ['degF', '°F'],
  ['F', '°F'],
  ['K', 'K'],
]);

export const symbolOf = (word: string): TypedUnit | undefined => BY_SPELLING.get(word);

export const temperatureSymbolOf = (word: string): UnitOf<'temperature'> | undefined => TEMPERATURES.get(word);
