/** Numbers of the proof for people: as many digits as the tolerance can tell apart, and powers of ten where they are shorter. */
import type { ReportedQuantity, Tolerance } from '../../../workers/proof-client.ts';

const MINUS = '−';
const SUPERSCRIPTS = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** Between these powers of ten a number is written out. */
const LOWEST = -3;
const HIGHEST = 5;

const signed = (digits: string): string => digits.replaceAll('-', MINUS);

const power = (exponent: number): string =>
  `10${exponent < 0 ? '⁻' : ''}${[...String(Math.abs(exponent))].map((digit) => SUPERSCRIPTS[Number(digit)]).join('')}`;

const isWrittenOut = (value: number): boolean =>
  value === 0 || (Math.abs(value) >= 10 ** LOWEST && Math.abs(value) < 10 ** (HIGHEST + 1));

function asPower(exponential: string): string {
  const [mantissa, exponent] = exponential.split('e');
  return `${signed(mantissa)} × ${power(Number(exponent))}`;
}

/** With all digits that are stored: `0.00231`, `1.060507 × 10⁻⁴`. */
export const showStored = (value: number): string =>
  isWrittenOut(value) ? signed(String(value)) : asPower(value.toExponential());

/** Rounded to significant digits: `2.1548`, `1.0605 × 10⁻⁴`; what is no number is a dash. */
export function showSignificant(value: number, digits: number): string {
  if (!Number.isFinite(value)) return '–';
  if (!isWrittenOut(value)) return asPower(value.toExponential(digits - 1));
  const decimals = value === 0 ? 0 : digits - 1 - Math.floor(Math.log10(Math.abs(value)));
  return signed(value.toFixed(Math.max(0, decimals)));
}

const FEWEST_DIGITS = 4;
const MOST_DIGITS = 15;

/** So many digits that a hundredth of the tolerance shows. */
export function showComputed({ computed, allowed }: ReportedQuantity): string {
  if (computed === undefined || !Number.isFinite(computed)) return '–';
  const digits = Math.ceil(Math.log10(Math.abs(computed || allowed) / allowed)) + 2;
  return showSignificant(computed, Math.min(MOST_DIGITS, Math.max(FEWEST_DIGITS, digits)));
}

const inPercent = (share: number): number => Number((100 * share).toPrecision(6));

/** `1.5 %` of the expected value, or `±0.05 mm`. */
export const showTolerance = (tolerance: Tolerance, unit: string): string =>
  'absolute' in tolerance
    ? `±${showStored(tolerance.absolute)}${unitBehind(unit)}`
    : `${showStored(inPercent(tolerance.relative))} %`;

const DEVIATION_DIGITS = 2;

/** In the terms of its tolerance, so that the two can be compared: a share of the expected value, or an amount in its unit. */
export function showDeviation({ deviation, expected, unit }: ReportedQuantity, tolerance: Tolerance): string {
  if (!Number.isFinite(deviation)) return '–';
  if ('absolute' in tolerance) return `${showSignificant(deviation, DEVIATION_DIGITS)}${unitBehind(unit)}`;
  return `${showSignificant((100 * deviation) / Math.abs(expected), DEVIATION_DIGITS)} %`;
}

const unitBehind = (unit: string): string => (unit === '-' ? '' : ` ${unit}`);

/** Up to here a share of a tolerance is read in per cent; far beyond, in multiples. */
const MOST_PERCENT = 10;

/** Rounded up, so that what is shown as 100 % still passes: `37 %`, `12 ×`. */
export function showShare(share: number): string {
  if (!Number.isFinite(share)) return '–';
  if (share > MOST_PERCENT) return `${showSignificant(Number(share.toPrecision(2)), 2)} ×`;
  return `${Math.ceil(100 * share)} %`;
}
