/** Words about units and how numbers are written, in English. */
import type { Kind } from '../../units/unit-table.ts';
import { plural } from './plural.ts';

/** The kinds that can have a unit of their own, in the order in which they are listed. */
const KINDS = {
  length: 'Length',
  distance: 'Distance',
  area: 'Area',
  volume: 'Volume',
  mass: 'Mass',
  force: 'Force',
  pressure: 'Pressure',
  stress: 'Stress',
  modulus: 'Elastic modulus',
  speed: 'Speed',
  temperature: 'Temperature',
  springRate: 'Spring rate',
  viscousFriction: 'Viscous friction',
  density: 'Density',
  flow: 'Flow',
  energy: 'Energy',
} as const satisfies Partial<Record<Kind, string>>;

export type ListedKind = keyof typeof KINDS;
export const LISTED_KINDS = Object.keys(KINDS) as readonly ListedKind[];

const nameOf = (kind: Kind): string => (KINDS as Partial<Record<Kind, string>>)[kind] ?? kind;

export const unitsWords = {
  open: (own: number) =>
    own === 0 ? 'Units and numbers' : `Units and numbers: ${plural(own, 'own unit', 'own units')}`,
  title: 'Units and numbers',
  close: 'Close',
  hint: 'Each kind of quantity can have a unit of its own, here or at the unit behind a number. Kept on this machine; files keep theirs.',
  kinds: KINDS,
  asFamily: (symbol: string) => `${symbol}, as the rest`,
  reset: 'All as the rest',
  pick: (field: string, symbol: string) => `Unit of ${field}: ${symbol}`,
  pickKey: 'Alt+↓ in the field',
  ownWhy: (kind: Kind, symbol: string) => `${nameOf(kind)} is in ${symbol} on this machine, whatever the rest is in.`,
  menu: (kind: Kind) => `Unit of ${nameOf(kind).toLowerCase()}`,
  numbers: 'Decimals are written with',
  numberChoices: { browser: 'as the browser', point: 'a point', comma: 'a comma' },
  numbersExample: (example: string) =>
    `Such as ${example}. Point and comma are both read where they can mean one thing only.`,
  numbersWhy: 'Project files, CSV files and links are the same everywhere: they have a point.',
};
