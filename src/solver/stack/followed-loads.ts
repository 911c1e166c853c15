/**
 * One stack system taken from pressure to pressure: every solved state is remembered, and a new one starts from its
 * neighbours.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | ramp | - | share of every interference that is enforced |
 *
 * The preload is raised first. Every other pressure starts from a guess that its solved neighbours point to
 * (guess-state.ts); a load that does not converge from there is reached from the state below it, in halved steps.
 */
import type { FloatInput } from '../types.ts';
import type { BalancedSystem } from './balanced-system.ts';
import type { Equilibrium } from './equilibrate.ts';
import { followPath, restoreState, type SavedState, saveState } from './follow-path.ts';
import { guessState } from './guess-state.ts';
import type { MergedPlate } from './merge-neighbours.ts';
import { settleHub } from './settle-hub.ts';

export interface FollowedLoads {
  /** Brings the system to balance under p; a failure leaves what was solved before as it was. */
  readonly solve: (p: number) => Equilibrium;
  /** Puts a state back as it was solved, or solves it. @returns false where it does not solve */
  readonly returnTo: (p: number) => boolean;
}

export function followLoads(
  system: BalancedSystem & { readonly merged: readonly MergedPlate[] },
  float: FloatInput | undefined,
): FollowedLoads {
  const solved: SavedState[] = [];
  let preload: Equilibrium | undefined;
  const solve = (p: number): Equilibrium => {
    preload ??= followPath(system, { p: 0, ramp: 0, rise: 0 }, { p: 0, ramp: 1, rise: 0 });
    if (preload.status !== 'converged') return preload;
    if (solved.length === 0) solved.push(saveState(system, 0));
    const i = solved.findLastIndex((state) => state.p <= p);
    const below = solved[i];
    restoreState(system, below);
    const rise = below.hubRise_m;
    // Under small deflection the first step is exact wherever it starts.
    const guess = system.isLinear ? undefined : () => guessState(system, solved, i, p);
    const path = followPath(system, { p: below.p, ramp: 1, rise }, { p, ramp: 1, rise }, below, guess);
    const end = float && path.status === 'converged' ? settleHub(system, p, float) : path;
    if (end.status === 'converged') remember(solved, saveState(system, p));
    return end;
  };
  const returnTo = (p: number): boolean => {
    const known = solved.find((state) => state.p === p);
    if (known) restoreState(system, known);
    return known !== undefined || solve(p).status === 'converged';
  };
  return { solve, returnTo };
}

function remember(solved: SavedState[], state: SavedState): void {
  const at = solved.findIndex(({ p }) => p >= state.p);
  if (at < 0) solved.push(state);
  else solved.splice(at, solved[at].p === state.p ? 1 : 0, state);
}
