/** How the strengths of one material must relate. Broken numbers are skipped here: the schema has already refused them. */
import type { InputFault } from '../units/fault.ts';
import { child, entries, numberAt, type Place } from './place.ts';

/** No metal yields, or tires under reversed bending, above the stress at which it breaks. */
const BELOW_TENSILE = [
  { key: 'yieldStrength_MPa', code: 'stack.material.yield-above-tensile' },
  { key: 'enduranceLimit_MPa', code: 'stack.material.endurance-above-tensile' },
] as const;

/** @param stack a valving or a stack file: its own material, and those of its shims */
export function materialFaults(stack: Place): InputFault[] {
  const rows = entries(child(stack, 'shims'));
  return [stack, ...rows].flatMap((owner) => strengthFaults(child(owner, 'material')));
}

function strengthFaults(material: Place): InputFault[] {
  const tensile = numberAt(child(material, 'tensileStrength_MPa'));
  if (tensile === undefined) return [];
  return BELOW_TENSILE.flatMap(({ key, code }) => {
    const place = child(material, key);
    const strength = numberAt(place);
    if (strength === undefined || strength <= tensile) return [];
    const wanted = `at most the tensile strength ${tensile}`;
    return [{ code, path: place.path, got: String(strength), wanted, unit: 'MPa' }];
  });
}
