/** One number from a unit to SI and back. */
import { type Kind, type UnitOf, unit } from './unit-table.ts';

/** Digits that a conversion keeps: all that a person can mean, without the rounding of the last bits. */
const DIGITS = 12;

export const tidy = (value: number): number => Number(value.toPrecision(DIGITS));

/** 25 °C to 298.15 K. */
export function toSI<K extends Kind>(value: number, kind: K, symbol: UnitOf<K>): number {
  const { numerator, denominator, shift = 0 } = unit(kind, symbol);
  return ((value + shift) * numerator) / denominator;
}

/** 298.15 K to 25 °C, to 12 digits. */
export function fromSI<K extends Kind>(si: number, kind: K, symbol: UnitOf<K>): number {
  const { numerator, denominator, shift = 0 } = unit(kind, symbol);
  const value = (si * denominator) / numerator;
  // Near its own zero a shifted scale has lost digits to the shift: those left over are noise.
  return shift === 0 ? tidy(value) : tidy(Math.round((value - shift) * 1e9) / 1e9);
}
