/**
 * The stacks of a run, each kept ready under every theory that asks for it while its tables grow, then judged: where it
 * ruffles and what its shims bear.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | mean pressure on the zone |
 */
import type { StackTable, WavesOnset } from '../damper/types.ts';
import { stackLife } from '../life/stack-life.ts';
import { stackStresses } from '../life/stack-stresses.ts';
import { loadPeriodicUnderMean, withoutPorts } from '../stack/load-under-mean.ts';
import { createLoadedStack, type LoadedStack } from '../stack/loaded-stack.ts';
import { rememberedStack } from '../stack/remembered-stack.ts';
import { stopIfAsked } from '../stopped.ts';
import type { LiftPoint, ShimStress, SolveHooks, StackInput, Theory } from '../types.ts';
import type { StackSolver } from './stack-samples.ts';
import { findWavesOnset } from './waves-onset.ts';

/** One stack under every theory; each is set up when first asked for. */
export interface FollowedStack {
  /** Solves one pressure; its stress profiles stay here, since a table with them all would be several times its size. */
  readonly at: (p: number, theory: Theory) => LiftPoint;
  /** Where its round state ruffles among rising pressures. */
  readonly onset: (pressures_Pa: readonly number[]) => WavesOnset;
  /** The table with the stresses and the uses of its shims and, under large deflection, the onset of waves. */
  readonly judge: (table: StackTable) => StackTable;
}

/**
 * @param profiles whether stresses are read along every shim, which `judge` wants
 * @throws InputError `stack.*` for a stack outside the model, at its first solve
 */
export function followStack(stack: StackInput, profiles = true): FollowedStack {
  const options = { landPressure: 'falling', profiles } as const;
  const loaded = new Map<Theory, { readonly at: (p: number) => LiftPoint }>();
  let large: LoadedStack | undefined;
  const largeDeflection = (): LoadedStack => {
    large ??= rememberedStack(createLoadedStack(withoutPorts(stack), { ...options, theory: 'large-deflection' }));
    return large;
  };
  const under = (theory: Theory) => {
    if (theory === 'large-deflection') return largeDeflection();
    if (theory === 'small-deflection') return createLoadedStack(withoutPorts(stack), { ...options, theory });
    return loadPeriodicUnderMean(stack, { ...options, ...(large && { round: large }) });
  };
  const pointAt = (p: number, theory: Theory): LiftPoint => {
    const ready = loaded.get(theory) ?? rememberedStack(under(theory));
    loaded.set(theory, ready);
    return ready.at(p);
  };
  const onsets = new WeakMap<readonly number[], WavesOnset>();
  const onset = (pressures_Pa: readonly number[]): WavesOnset => {
    const found = onsets.get(pressures_Pa) ?? findWavesOnset(pressures_Pa, largeDeflection());
    onsets.set(pressures_Pa, found);
    return found;
  };
  const judge = (table: StackTable): StackTable => {
    const states = table.pressure_Pa.map((p) => stressOf(pointAt(p, table.theory)));
    const life = stackLife(stack.shims, states);
    const waves = table.theory === 'large-deflection' ? onset(table.pressure_Pa) : undefined;
    return { ...table, ...(waves && { waves }), ...(life && { life }), stresses: stackStresses(stack.shims, states) };
  };
  return { at: (p, theory) => withoutProfiles(pointAt(p, theory)), onset, judge };
}

/** Stacks whose stresses nobody asks for: many, and each let go when it is done with. */
export const followUnstressed = (stack: StackInput): FollowedStack => followStack(stack, false);

/** A table with the stress along every shim at every pressure would be several times its size. */
function withoutProfiles(point: LiftPoint): LiftPoint {
  if (point.status !== 'converged') return point;
  const { stress: _, ...rest } = point;
  return rest;
}

function stressOf(point: LiftPoint): readonly ShimStress[] {
  if (point.status === 'converged' && point.stress) return point.stress;
  throw new Error('every pressure of the table was solved here');
}

export interface FollowedStacks extends StackSolver {
  /** As `FollowedStack.judge`. */
  readonly judge: (stack: StackInput, table: StackTable) => StackTable;
}

/** How the stacks of a run are followed: afresh, or from what earlier runs have solved. */
export type FollowStacks = (hooks: Pick<SolveHooks, 'shouldStop'>) => FollowedStacks;

/** Every stack of a run, each followed from where it was asked for first. `lift` throws SolveStopped when the caller stops the run. */
export function followStacks(
  hooks: Pick<SolveHooks, 'shouldStop'>,
  follow: (stack: StackInput) => FollowedStack = followStack,
): FollowedStacks {
  // What is not asked for any more is let go.
  const stacks = new WeakMap<StackInput, FollowedStack>();
  const followed = (stack: StackInput): FollowedStack => {
    const known = stacks.get(stack) ?? follow(stack);
    stacks.set(stack, known);
    return known;
  };
  return {
    lift: (stack, pressures_Pa, theory) => {
      stopIfAsked(hooks);
      const { at } = followed(stack);
      return { theory, points: pressures_Pa.map((p) => at(p, theory)) };
    },
    onset: (stack, pressures_Pa) => followed(stack).onset(pressures_Pa),
    judge: (stack, table) => followed(stack).judge(table),
  };
}
