/** A value of a coefficient of a fit in words. */
import type { FitCoefficientName } from '../../model/fit.ts';
import { show, showNumber } from '../app/quantities.ts';

const DIGITS = 3;

/** In the person's unit; factors and discharge coefficients have none. */
export function coefficientInWords(name: FitCoefficientName, value: number): string {
  if (name === 'forceOffset_N') return show('force', value);
  if (name.endsWith('_m')) return show('lift', value);
  return showNumber(value, DIGITS);
}
