/**
 * One stack of a force curve, kept ready while its table grows, then judged: where it ruffles and what its shims bear.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure across the shims |
 */
import type { StackTable } from '../damper/types.ts';
import { stackLife } from '../life/stack-life.ts';
import { stackStresses } from '../life/stack-stresses.ts';
import { loadPeriodicUnderMean, withoutPorts } from '../stack/load-under-mean.ts';
import { createLoadedStack } from '../stack/loaded-stack.ts';
import { stopIfAsked } from '../stopped.ts';
import type { LiftPoint, ShimStress, SolveHooks, StackInput, Theory } from '../types.ts';
import type { LiftSolver } from './stack-samples.ts';
import { findWavesOnset } from './waves-onset.ts';

export interface FollowedStack {
  /** Solves one pressure; its stress profiles stay here, since a table with them all would be several times its size. */
  readonly at: (p: number) => LiftPoint;
  /** The table with the onset of waves (large deflection only), the stresses and the uses of its shims. */
  readonly judge: (table: StackTable) => StackTable;
}

/** @throws InputError `stack.*` for a stack outside the model */
export function followStack(stack: StackInput, theory: Theory): FollowedStack {
  const options = { landPressure: 'falling', profiles: true } as const;
  const round = theory === 'port-periodic' ? undefined : createLoadedStack(withoutPorts(stack), { ...options, theory });
  const loaded = round ?? loadPeriodicUnderMean(stack, options);
  const profiles = new Map<number, readonly ShimStress[]>();
  const at = (p: number): LiftPoint => {
    const point = loaded.at(p);
    if (point.status !== 'converged') return point;
    const { stress, ...rest } = point;
    if (stress) profiles.set(p, stress);
    return rest;
  };
  const judge = (table: StackTable): StackTable => {
    const states = table.pressure_Pa.map((p) => profiles.get(p)).filter((stress) => stress !== undefined);
    if (states.length !== table.pressure_Pa.length) throw new Error('every pressure of the table was solved here');
    const life = stackLife(stack.shims, states);
    const waves = round && theory === 'large-deflection' ? findWavesOnset(table.pressure_Pa, round) : undefined;
    const stresses = stackStresses(stack.shims, states);
    return { ...table, ...(waves && { waves }), ...(life && { life }), stresses };
  };
  return { at, judge };
}

export interface FollowedStacks {
  readonly lift: LiftSolver;
  /** As `FollowedStack.judge`; a table of a stack that was never solved here comes back as it is. */
  readonly judge: (stack: StackInput, table: StackTable) => StackTable;
}

/** How the stacks of a run are followed: afresh, or from what earlier runs have solved. */
export type FollowStacks = (theory: Theory, hooks: SolveHooks) => FollowedStacks;

/** Every stack of a run, each followed from where it was asked for first. `lift` throws SolveStopped when the caller stops the run. */
export function followStacks(theory: Theory, hooks: SolveHooks, follow = followStack): FollowedStacks {
  const stacks = new Map<StackInput, FollowedStack>();
  const lift: LiftSolver = (stack, pressures_Pa) => {
    stopIfAsked(hooks);
    const followed = stacks.get(stack) ?? follow(stack, theory);
    stacks.set(stack, followed);
    return { theory, points: pressures_Pa.map(followed.at) };
  };
  return { lift, judge: (stack, table) => stacks.get(stack)?.judge(table) ?? table };
}
