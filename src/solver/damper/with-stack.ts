/** A damper with another stack in one of its valves. */
import { valveAt } from './damper-valves.ts';
import type { DamperInput, StackPlace, ValveInput } from './types.ts';

/** @throws Error for the base of a damper without one */
export function withStack(damper: DamperInput, place: StackPlace, stack: ValveInput['stack']): DamperInput {
  const valve: ValveInput = { ...valveAt(damper, place), stack };
  if (place !== 'base') return { ...damper, [place]: valve };
  return { ...damper, ...(damper.base && { base: { ...damper.base, compression: valve } }) };
}
