/** Refusals of a number of a damper. */
import { InputError } from '../../units/fault.ts';

export function requirePositive(path: string, value: number, unit: string): void {
  if (!(value > 0 && Number.isFinite(value)))
    throw damperFault('damper.not-positive', path, value, 'more than 0', unit);
}

export function requireNotNegative(path: string, value: number, unit: string): void {
  if (!(value >= 0 && Number.isFinite(value))) throw damperFault('damper.negative', path, value, '0 or more', unit);
}

export const damperFault = (code: string, path: string, got: number | string, wanted: string, unit: string) =>
  new InputError({ code, path, got: String(got), wanted, ...(unit && { unit }) });
