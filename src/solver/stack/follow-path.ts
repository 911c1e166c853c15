/**
 * From one load to another, in halved steps where a whole one does not converge.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure on the zone |
 * | ramp | - | share of every interference that is enforced |
 * | rise | m | rise of the hub on its float |
 */

import type { BalancedSystem } from './balanced-system.ts';
import { type Equilibrium, equilibrate } from './equilibrate.ts';

/** Halvings of a load step before it is given up. */
const HALVING_LIMIT = 6;

/** What a stack is under: pressure [Pa], share of every interference enforced, and rise of the hub [m]. */
export interface LoadState {
  readonly p: number;
  readonly ramp: number;
  readonly rise: number;
}

/**
 * Goes from one load to another, in halved steps where a whole one does not converge; on failure the state goes back.
 * @param start the state at `from`, where it is known already
 * @param guess puts the plates near the end of the path, which is tried first; what does not converge from there starts
 *   at `from`
 */
export function followPath(
  system: BalancedSystem,
  from: LoadState,
  to: LoadState,
  start: SavedState = saveState(system, from.p),
  guess?: () => void,
): Equilibrium {
  guess?.();
  let at = from;
  let share = 1;
  let iterations = 0;
  for (;;) {
    const saved = at === from ? start : saveState(system, at.p);
    const next = between(at, to, share);
    system.hubRise_m = next.rise;
    const end = equilibrate(system, next.p, next.ramp);
    iterations += end.iterations;
    if (end.status === 'converged') {
      if (share === 1) return { ...end, iterations };
      at = next;
      share = Math.min(1, share * 2);
      continue;
    }
    restoreState(system, saved);
    share /= 2;
    if (share < 2 ** -HALVING_LIMIT) {
      restoreState(system, start);
      return { ...end, iterations };
    }
  }
}

function between(a: LoadState, b: LoadState, share: number): LoadState {
  const part = (x: number, y: number) => (share === 1 ? y : x + (y - x) * share);
  return { p: part(a.p, b.p), ramp: part(a.ramp, b.ramp), rise: part(a.rise, b.rise) };
}

/** A solved state: the unknowns of every plate, the closed contacts with their forces and the rise of the hub. */
export interface SavedState {
  readonly p: number;
  readonly hubRise_m: number;
  readonly x: Float64Array[];
  readonly closed: Uint8Array;
  readonly force: Float64Array;
}

export function saveState(system: BalancedSystem, p: number): SavedState {
  const { hubRise_m, bodies, contact } = system;
  const x = bodies.map((body) => body.x.slice());
  return { p, hubRise_m, x, closed: contact.closed.slice(), force: contact.force.slice() };
}

export function restoreState(system: BalancedSystem, saved: SavedState): void {
  for (const [k, body] of system.bodies.entries()) body.x.set(saved.x[k]);
  system.contact.closed.set(saved.closed);
  // The next solve holds contact forces near the last ones, which a failed one may have left as no numbers.
  system.contact.force.set(saved.force);
  system.hubRise_m = saved.hubRise_m;
}
