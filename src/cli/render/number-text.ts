/** Numbers in a table for people: no finer than they are known or measured. JSON and CSV carry every digit. */

/** By unit, so that the numbers of a column stand point under point. */
const DECIMALS: Readonly<Record<string, number>> = {
  N: 1,
  bar: 2,
  'bar gauge': 2,
  'bar absolute': 2,
  MPa: 1,
  GPa: 3,
  mm: 3,
  'm/s': 3,
  'L/min': 2,
  mL: 2,
  '%': 1,
  'vol %': 2,
  J: 2,
  W: 2,
  'K/min': 2,
  cSt: 2,
  'mPa s': 2,
  'kg/m3': 1,
};

/** Of what has no unit of the above. */
const DIGITS = 4;

/** A number that is exactly 0 is told from one that the decimals round away: `0` and `0.00`. */
export function numberText(value: number, unit = ''): string {
  const decimals = DECIMALS[unit];
  if (value === 0) return '0';
  if (decimals === undefined) return String(Number.isInteger(value) ? value : Number(value.toPrecision(DIGITS)));
  return value.toFixed(decimals).replace(/^-(0\.0+)$/, '$1');
}
