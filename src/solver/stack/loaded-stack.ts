/**
 * One stack of axisymmetric plates kept ready for load after load (followed-loads.ts), with what is read of every state.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 */
import type { AxisymmetricTheory, LiftOptions, LiftPoint, StackInput } from '../types.ts';
import { failedLift } from './failed-lift.ts';
import { followLoads } from './followed-loads.ts';
import { readLift } from './read-lift.ts';
import { stressReader } from './read-stress.ts';
import { createStackSystem } from './stack-system.ts';
import { validateStack } from './validate-stack.ts';
import {
  createWavinessTest,
  type RufflingOutcome,
  testRuffling,
  testWaviness,
  type WavinessOutcome,
  type WavinessTest,
  withWaviness,
} from './waviness/stack-waviness.ts';

export interface RoundStackOptions extends LiftOptions {
  readonly theory: AxisymmetricTheory;

  /** Least number of elements from clamp to rim; for convergence studies. */
  readonly elements?: number;
}

export interface LoadedStack {
  /** Solves one pressure >= 0 [Pa]; a failure leaves what was solved before as it was. */
  readonly at: (p: number) => LiftPoint;
  /** Margin against waves at a pressure already solved; large deflection only [-]. */
  readonly wavinessAt: (p: number) => WavinessOutcome;
  /** Whether that margin is below 0, which costs less than the margin. */
  readonly rufflingAt: (p: number) => RufflingOutcome;
}

/** @throws InputError `stack.*` for a stack outside the model */
export function createLoadedStack(stack: StackInput, options: RoundStackOptions): LoadedStack {
  validateStack(stack);
  const system = createStackSystem(stack, options);
  const { solve, returnTo } = followLoads(system, stack.float);
  let test: WavinessTest | undefined;
  const wavinessTest = (): WavinessTest => {
    test ??= createWavinessTest(system);
    return test;
  };
  const readStress = options.profiles ? stressReader(system) : undefined;
  const asked = options.waviness && options.theory === 'large-deflection';
  return {
    at: (p) => {
      const end = solve(p);
      if (end.status !== 'converged') return failedLift(p, end);
      const lift = readLift(system, p, end);
      const read = readStress ? { ...lift, stress: readStress(p) } : lift;
      return withWaviness(read, asked ? wavinessTest() : undefined);
    },
    wavinessAt: (p) => (returnTo(p) ? testWaviness(wavinessTest()) : { status: 'singular' }),
    rufflingAt: (p) => (returnTo(p) ? testRuffling(wavinessTest()) : { status: 'singular' }),
  };
}
