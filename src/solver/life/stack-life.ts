/**
 * Uses of all shims of a stack along its table of pressures, and at any pressure between.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | p | Pa | pressure across the shims |
 *
 * Between two pressures of the table the uses go straight. Where the stresses do so too, the use, a greatest of several,
 * bends upwards, and the straight line is on the safe side.
 */
import type { PointLife, StackLife, WorstShim } from '../damper/types.ts';
import type { ShimInput, ShimStress, ShimUse } from '../types.ts';
import { shimUses } from './shim-use.ts';

/**
 * @param states stress of every shim at each pressure of the table, the closed stack (no pressure) first
 * @returns undefined for a table without states
 */
export function stackLife(
  shims: readonly ShimInput[],
  states: readonly (readonly ShimStress[])[],
): StackLife | undefined {
  const [closed] = states;
  if (!closed) return undefined;
  const rows = states.map((open) => shimUses(shims, closed, open));
  return { shims: shims.map((_, s) => allKnown(rows.map((row) => row[s]))) };
}

const allKnown = (uses: readonly (ShimUse | null)[]): readonly ShimUse[] | null =>
  uses.every((use) => use !== null) ? uses : null;

/** @param pressures_Pa of the table, rising @returns one use a shim; null for a shim whose strength is not known */
export function usesAt(life: StackLife, pressures_Pa: readonly number[], p: number): (ShimUse | null)[] {
  const last = pressures_Pa.length - 1;
  const reached = pressures_Pa.findIndex((pressure) => pressure >= p);
  const above = reached < 0 ? last : Math.min(last, Math.max(1, reached));
  const below = Math.max(0, above - 1);
  const width = pressures_Pa[above] - pressures_Pa[below];
  const share = width > 0 ? (p - pressures_Pa[below]) / width : 0;
  const between = (uses: readonly ShimUse[], key: keyof ShimUse) =>
    uses[below][key] + share * (uses[above][key] - uses[below][key]);
  return life.shims.map((uses) => uses && { fatigue: between(uses, 'fatigue'), yield: between(uses, 'yield') });
}

/** The shims with the least reserve of life and of yield. @returns undefined when no shim has a known strength */
export function worstOf(uses: readonly (ShimUse | null)[]): PointLife | undefined {
  const fatigue = worstBy(uses, 'fatigue');
  const yields = worstBy(uses, 'yield');
  if (!fatigue || !yields) return undefined;
  return { fatigue, yield: yields, takesSet: yields.use > 1, unknownShims: uses.filter((use) => use === null).length };
}

function worstBy(uses: readonly (ShimUse | null)[], key: keyof ShimUse): WorstShim | undefined {
  let worst: WorstShim | undefined;
  uses.forEach((use, shim) => {
    if (use && (!worst || use[key] > worst.use)) worst = { use: use[key], shim };
  });
  return worst;
}
