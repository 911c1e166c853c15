/**
 * One stack of a force curve, kept ready while its table grows, then judged: where it ruffles and what its shims bear.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure across the shims |
 */
import type { StackTable } from '../damper/types.ts';
import { stackLife } from '../life/stack-life.ts';
import { createLoadedStack } from '../stack/loaded-stack.ts';
import type { LiftPoint, ShimStress, StackInput, Theory } from '../types.ts';
import { findWavesOnset } from './waves-onset.ts';

export interface FollowedStack {
  /** Solves one pressure; its stress profiles stay here, since a table with them would be many times its size. */
  readonly at: (p: number) => LiftPoint;
  /** The table with the onset of waves (large deflection only) and the uses of its shims. */
  readonly judge: (table: StackTable) => StackTable;
}

/** @throws InputError `stack.*` for a stack outside the model */
export function followStack(stack: StackInput, theory: Theory): FollowedStack {
  const loaded = createLoadedStack(stack, { theory, landPressure: 'falling', profiles: true });
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
    const waves = theory === 'large-deflection' ? findWavesOnset(table.pressure_Pa, loaded) : undefined;
    return { ...table, ...(waves && { waves }), ...(life && { life }) };
  };
  return { at, judge };
}
