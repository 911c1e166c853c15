/**
 * Use of a shim that swings between closed and one open state: the worst over every node, face and direction.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | use | - | reciprocal of the reserve, 1 at the limit; see goodman.ts |
 *
 * The two stresses of a swing are those of one and the same place: the worst place need not be where either state has
 * its peak. Assumed: between the two states no stress leaves the range between them.
 */
import type { ShimInput, ShimStress, ShimUse, Strength } from '../types.ts';
import { goodmanUse, swingBetween, trescaStress } from './goodman.ts';
import { strengthOf } from './strength.ts';

const FACES = ['piston', 'far'] as const;
const DIRECTIONS = ['radial', 'hoop'] as const;

/** @param closed, open profiles of the same shim on the same mesh */
export function shimUse(closed: ShimStress, open: ShimStress, strength: Strength): ShimUse {
  return {
    fatigue: fatigueUse(closed, open, strength),
    yield: Math.max(yieldUse(closed, strength), yieldUse(open, strength)),
  };
}

/** One use a shim; null for a shim whose strength is not known. */
export function shimUses(
  shims: readonly ShimInput[],
  closed: readonly ShimStress[],
  open: readonly ShimStress[],
): (ShimUse | null)[] {
  return shims.map((shim, s) => {
    const strength = strengthOf(shim);
    return strength ? shimUse(closed[s], open[s], strength) : null;
  });
}

function fatigueUse(closed: ShimStress, open: ShimStress, strength: Strength): number {
  let worst = 0;
  for (const face of FACES) {
    for (const direction of DIRECTIONS) {
      const before = closed[face][`${direction}_Pa`];
      const after = open[face][`${direction}_Pa`];
      for (let i = 0; i < after.length; i++) {
        worst = Math.max(worst, goodmanUse(swingBetween(before[i], after[i]), strength));
      }
    }
  }
  return worst;
}

function yieldUse(stress: ShimStress, { yield_Pa }: Strength): number {
  let worst = 0;
  for (const face of FACES) {
    const { radial_Pa, hoop_Pa } = stress[face];
    for (let i = 0; i < radial_Pa.length; i++) worst = Math.max(worst, trescaStress(radial_Pa[i], hoop_Pa[i]));
  }
  return worst / yield_Pa;
}
