/** Stacks with one single shim changed. */

import type { ValveInput } from '../damper/types.ts';
import type { ShimInput } from '../types.ts';

type Stack = ValveInput['stack'];

/** @param shim  its place, 0 next to the piston */
export const withShim = (stack: Stack, shim: number, change: (each: ShimInput) => ShimInput): Stack => ({
  ...stack,
  shims: stack.shims.map((each, s) => (s === shim ? change(each) : each)),
});

export const thicker = (stack: Stack, shim: number, by_m: number): Stack =>
  withShim(stack, shim, (each) => ({ ...each, thickness_m: each.thickness_m + by_m }));

export const wider = (stack: Stack, shim: number, byDiameter_m: number): Stack =>
  withShim(stack, shim, (each) => ({ ...each, outerRadius_m: each.outerRadius_m + byDiameter_m / 2 }));

export const without = (stack: Stack, shim: number): Stack => ({
  ...stack,
  shims: stack.shims.filter((_, s) => s !== shim),
});
