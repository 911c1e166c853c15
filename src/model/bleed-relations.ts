/** What the needle of a bleed must keep. */
import type { InputFault } from '../units/fault.ts';
import { clickFaults } from './adjuster-relations.ts';
import { child, numberAt, type Place } from './place.ts';

/** One needle closes one hole, and stands no further out than its adjuster goes. */
export function bleedFaults(bleed: Place): InputFault[] {
  const needle = child(bleed, 'needle');
  if (needle.value === undefined) return [];
  const count = child(bleed, 'count');
  const holes = numberAt(count);
  const wanted = '1, since a needle closes one hole';
  return [
    ...(holes === undefined || holes === 1
      ? []
      : [{ code: 'bleed.needle.one-hole', path: count.path, got: String(holes), wanted }]),
    ...clickFaults(needle, 'bleed.needle.clicks'),
  ];
}
