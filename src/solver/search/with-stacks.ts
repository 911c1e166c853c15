/** The damper with the stacks of an arrangement in it. */
import { valveAt } from '../damper/damper-valves.ts';
import type { DamperInput, StackPlace, ValveInput } from '../damper/types.ts';
import type { Arrangement, SupplyItem } from './types.ts';

export function valveWith(
  damper: DamperInput,
  place: StackPlace,
  sizes: readonly number[],
  supply: readonly SupplyItem[],
): ValveInput {
  const valve = valveAt(damper, place);
  return { ...valve, stack: { ...valve.stack, shims: sizes.map((size) => supply[size].shim) } };
}

export function withStacks(
  damper: DamperInput,
  { compression, rebound, base }: Arrangement,
  supply: readonly SupplyItem[],
): DamperInput {
  return {
    ...damper,
    ...(compression && { compression: valveWith(damper, 'compression', compression, supply) }),
    ...(rebound && { rebound: valveWith(damper, 'rebound', rebound, supply) }),
    ...(base && damper.base && { base: { ...damper.base, compression: valveWith(damper, 'base', base, supply) } }),
  };
}
