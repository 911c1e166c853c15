/** One stack kept ready for load after load, whatever the theory. */
import type { LiftOptions, LiftPoint, StackInput, Theory } from '../types.ts';
import { createLoadedStack } from './loaded-stack.ts';
import { createLoadedPeriodicStack } from './periodic/loaded-periodic-stack.ts';

export interface SolveLiftOptions extends LiftOptions {
  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
}

/** @throws InputError `stack.*` for a stack outside the model @returns solves one pressure >= 0 [Pa] */
export function loadStack(
  stack: StackInput,
  options: SolveLiftOptions & { readonly theory: Theory },
): { readonly at: (p: number) => LiftPoint } {
  const { theory } = options;
  return theory === 'port-periodic'
    ? createLoadedPeriodicStack(stack, options)
    : createLoadedStack(stack, { ...options, theory });
}
