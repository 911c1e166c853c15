/**
 * Every unit a person can type or read, by kind of quantity. A unit is `numerator / denominator` SI units, which keeps
 * whole powers of ten exact. Inch, pound and pound-force: international definitions of 1959 with standard gravity
 * 9.80665 m/s2; mile of 5280 ft; fluid ounce: US, 1/128 of a gallon of 231 cubic inches. All from memory, exact by definition.
 */
import { CELSIUS_ZERO_K } from './si.ts';

/** SI value = (value + shift) * numerator / denominator. */
export interface Unit {
  readonly numerator: number;
  readonly denominator: number;
  /** Only temperatures count from another zero. */
  readonly shift?: number;
}

const by = (numerator: number, denominator = 1): Unit => ({ numerator, denominator });

const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const GRAVITY = 9.80665;
const POUND_FORCE = POUND * GRAVITY;
const PSI = POUND_FORCE / (INCH * INCH);
const CUBIC_INCH = INCH ** 3;

const PRESSURES = {
  Pa: by(1),
  kPa: by(1e3),
  MPa: by(1e6),
  GPa: by(1e9),
  mbar: by(100),
  bar: by(1e5),
  psi: by(PSI),
  ksi: by(1000 * PSI),
};

export const UNITS = {
  length: {
    mm: by(1, 1000),
    in: by(254, 10_000),
    thou: by(254, 10_000_000),
    m: by(1),
    cm: by(1, 100),
    µm: by(1, 1e6),
    ft: by(FOOT),
  },
  /** That a vehicle has gone. */
  distance: { km: by(1000), mi: by(5280 * FOOT) },
  area: { 'mm²': by(1, 1e6), 'cm²': by(1, 1e4), 'm²': by(1), 'in²': by(INCH * INCH) },
  volume: {
    mL: by(1, 1e6),
    cc: by(1, 1e6),
    L: by(1, 1000),
    'mm³': by(1, 1e9),
    'cm³': by(1, 1e6),
    'm³': by(1),
    'in³': by(CUBIC_INCH),
    'ft³': by(FOOT ** 3),
    'fl oz': by((231 / 128) * CUBIC_INCH),
  },
  mass: { kg: by(1), g: by(1, 1000), lb: by(POUND) },
  force: { N: by(1), kN: by(1000), lbf: by(POUND_FORCE), kgf: by(GRAVITY) },
  pressure: PRESSURES,
  stress: PRESSURES,
  modulus: PRESSURES,
  speed: { 'm/s': by(1), 'mm/s': by(1, 1000), 'in/s': by(254, 10_000), 'ft/s': by(FOOT) },
  temperature: {
    K: by(1),
    '°C': { ...by(1), shift: CELSIUS_ZERO_K },
    '°F': { ...by(5, 9), shift: 459.67 },
  },
  /** Of two temperatures: it counts from no zero. */
  temperatureDifference: { K: by(1), '°C': by(1), '°F': by(5, 9) },
  torque: { N·m: by(1), ft·lbf: by(FOOT * POUND_FORCE), in·lbf: by(INCH * POUND_FORCE) },
  energy: { J: by(1), kJ: by(1000), ft·lbf: by(FOOT * POUND_FORCE) },
  power: { W: by(1), kW: by(1000) },
  kinematicViscosity: { cSt: by(1, 1e6), 'mm²/s': by(1, 1e6), 'm²/s': by(1) },
  dynamicViscosity: { mPa·s: by(1, 1000), cP: by(1, 1000), Pa·s: by(1) },
  density: { 'kg/m³': by(1), 'g/cm³': by(1000), 'lb/ft³': by(POUND / FOOT ** 3) },
  springRate: { 'N/mm': by(1000), 'N/m': by(1), 'lbf/in': by(POUND_FORCE / INCH), 'kgf/mm': by(1000 * GRAVITY) },
  viscousFriction: { 'N·s/m': by(1), 'lbf·s/in': by(POUND_FORCE / INCH) },
  flow: { 'L/min': by(1, 60_000), 'm³/s': by(1), 'L/s': by(1, 1000), 'mL/s': by(1, 1e6), 'in³/s': by(CUBIC_INCH) },
  frequency: { Hz: by(1) },
  time: { s: by(1), ms: by(1, 1000), min: by(60) },
  number: { '': by(1) },
} as const satisfies Record<string, Record<string, Unit>>;

export type Kind = keyof typeof UNITS;
/** The units that a kind can be shown in. */
export type UnitOf<K extends Kind> = keyof (typeof UNITS)[K] & string;

/** @returns the unit of that kind. The compiler keeps other units out; where a text arrives, use isUnitOf first. */
export const unit = <K extends Kind>(kind: K, symbol: UnitOf<K>): Unit => (UNITS[kind] as Record<string, Unit>)[symbol];

export const isUnitOf = <K extends Kind>(kind: K, symbol: string): symbol is UnitOf<K> =>
  Object.hasOwn(UNITS[kind], symbol);
