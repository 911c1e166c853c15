/** Which column holds what, in which unit and with which sign: guessed from the heading, confirmed by the person. */
import type { Kind } from '../units/unit-table.ts';
import { UNITS } from '../units/unit-table.ts';
import type { Heading } from './table.ts';

/** A force in one column, or one column for each direction; a speed, or a position over time that gives one. */
export const QUANTITIES = ['speed', 'force', 'compressionForce', 'reboundForce', 'position', 'time'] as const;
export type Quantity = (typeof QUANTITIES)[number];

/** Which way numbers above 0 point, or that they have no sign at all. */
export const SIGNS = ['compression', 'rebound', 'none'] as const;
export type Sign = (typeof SIGNS)[number];

export interface Column {
  readonly quantity: Quantity;
  /** Place of the column, the first is 0. */
  readonly at: number;
  /** A unit of the kind of the quantity; undefined until it is known. */
  readonly unit?: string;
}

export interface Mapping {
  readonly columns: readonly Column[];
  readonly speedSign: Sign;
  readonly forceSign: Sign;
  /** Positions grow as the damper gets shorter (`compression`) or longer (`rebound`). */
  readonly positionSign: Exclude<Sign, 'none'>;
}

export const KIND_OF = {
  speed: 'speed',
  force: 'force',
  compressionForce: 'force',
  reboundForce: 'force',
  position: 'length',
  time: 'time',
} as const satisfies Record<Quantity, Kind>;

/** Units that a bench may write. */
export const unitsOf = (quantity: Quantity): readonly string[] => Object.keys(UNITS[KIND_OF[quantity]]);

const WORDS: readonly (readonly [Quantity, RegExp])[] = [
  [
    'compressionForce',
    /(compr|bump|jounce|druck).*(force|load|kraft)|(force|load|kraft).*(compr|bump|druck)|^(compression|bump)$/i,
  ],
  [
    'reboundForce',
    /(rebound|extension|zug).*(force|load|kraft)|(force|load|kraft).*(rebound|extens|zug)|^(rebound|extension)$/i,
  ],
  ['speed', /veloc|speed|geschw|vitesse/i],
  ['force', /force|load|kraft/i],
  ['position', /posit|displ|stroke|travel|^weg$|hub|deplac/i],
  ['time', /^(time|t|zeit|temps)$|elapsed|timestamp/i],
];

const ALIASES: Readonly<Record<string, string>> = {
  lb: 'lbf',
  lbs: 'lbf',
  klb: '',
  kg: 'kgf',
  inch: 'in',
  inches: 'in',
  ips: 'in/s',
  sec: 's',
  'in/sec': 'in/s',
  'mm/sec': 'mm/s',
  'm/sec': 'm/s',
};

/** The unit of the quantity that a text means, however it is written; undefined for any other. */
export function unitIn(text: string, quantity: Quantity): string | undefined {
  const plain = text.trim().toLowerCase().replace(/\s+/g, '').replace('_s', '/s').replace('_', '/');
  const wanted = ALIASES[plain] ?? plain;
  return unitsOf(quantity).find((unit) => unit.toLowerCase() === wanted);
}

/** What a heading says; each quantity is given to the first column that tells of it. */
export function guessColumns(headings: readonly Heading[]): Column[] {
  const taken = new Set<Quantity>();
  const columns = headings.flatMap(({ name, unit }, at): Column[] => {
    const quantity = WORDS.find(([each, pattern]) => pattern.test(name) && !taken.has(each))?.[0];
    if (!quantity || (quantity === 'force' && taken.has('compressionForce'))) return [];
    taken.add(quantity);
    const known = unitIn(unit, quantity);
    return [{ quantity, at, ...(known !== undefined && { unit: known }) }];
  });
  return columns;
}

export const columnOf = ({ columns }: Mapping, quantity: Quantity): Column | undefined =>
  columns.find((column) => column.quantity === quantity);

/** Position over time gives the speed only where no column has it. */
export const isMotion = (mapping: Mapping): boolean =>
  !columnOf(mapping, 'speed') && columnOf(mapping, 'position') !== undefined && columnOf(mapping, 'time') !== undefined;
