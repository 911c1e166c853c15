/**
 * Stacks of a valve: loaded by the mean pressure on the zone, which the oil of the valve gives, in place of that where
 * the ports open it.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | mean pressure on the zone |
 * | φ | - | share of the zone's circumference that the ports open |
 */
import type { LiftOptions, LiftPoint, StackInput, Theory } from '../types.ts';
import { createLoadedStack } from './loaded-stack.ts';
import {
  createLoadedPeriodicStack,
  type LoadedPeriodicStack,
  type PeriodicStackOptions,
} from './periodic/loaded-periodic-stack.ts';

/** The round theories spread the force of the ports evenly, so that under its mean they do not know of any. */
export function withoutPorts({ ports: _, ...stack }: StackInput): StackInput {
  return stack;
}

/**
 * @param options `round` takes mean pressures, as what is returned does
 * @throws InputError `stack.*` for a stack outside the model
 * @returns solves one mean pressure >= 0 [Pa]
 */
export function loadPeriodicUnderMean(stack: StackInput, options: PeriodicStackOptions): LoadedPeriodicStack {
  const phi = stack.ports?.coveredFraction ?? 1;
  const { round } = options;
  const inPorts = round && {
    at: (p: number): LiftPoint => ({ ...round.at(p * phi), pressure_Pa: p }),
    rufflingAt: (p: number) => round.rufflingAt(p * phi),
  };
  const loaded = createLoadedPeriodicStack(stack, { ...options, ...(inPorts && { round: inPorts }) });
  return { at: (p) => ({ ...loaded.at(p / phi), pressure_Pa: p }) };
}

/** As `loadStack`, for a mean pressure. @throws InputError `stack.*` for a stack outside the model */
export function loadUnderMean(
  stack: StackInput,
  options: LiftOptions & { readonly theory: Theory },
): { readonly at: (p: number) => LiftPoint } {
  const { theory } = options;
  return theory === 'port-periodic'
    ? loadPeriodicUnderMean(stack, options)
    : createLoadedStack(withoutPorts(stack), { ...options, theory });
}
