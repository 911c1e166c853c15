/** A size that must relate to another size of the document. */
import type { InputFault } from '../units/fault.ts';
import { numberAt, type Place } from './place.ts';

export interface Limit {
  readonly code: string;
  /** `more than the clamp diameter`; the number is put behind it. */
  readonly wanted: string;
  readonly limit: number | undefined;
  readonly unit?: string;
  readonly holds: (value: number, limit: number) => boolean;
}

export const moreThan = (value: number, limit: number): boolean => value > limit;
export const atLeast = (value: number, limit: number): boolean => value >= limit;
export const atMost = (value: number, limit: number): boolean => value <= limit;
export const lessThan = (value: number, limit: number): boolean => value < limit;

/** One fault when the size at `place` and its limit are both numbers and do not relate as they must. */
export function relationFault(place: Place, { code, wanted, limit, unit = 'mm', holds }: Limit): InputFault[] {
  const value = numberAt(place);
  if (value === undefined || limit === undefined || holds(value, limit)) return [];
  return [{ code, path: place.path, got: String(value), wanted: `${wanted} ${limit}`, unit }];
}
