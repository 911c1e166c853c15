/**
 * Joins neighbours that move together into one plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | t | m | thickness of one shim |
 * | D, C | N·m, N/m | bending and stretching rigidity of the joined plate, summed over its shims |
 *
 * Shims of equal rim and equal Poisson's ratio that lie on one another have the same w (each carries the share of the
 * load that its D has in ΣD, so the contact between them presses everywhere) and the same u (in-plane equilibrium of
 * a shim does not contain its thickness). Shims coned alike nest, and do the same. Under large deflection that is exact
 * for equal thicknesses; docs/theory.md measures what it leaves for others.
 */
import type { ShimInput } from '../types.ts';

export interface MergedPlate {
  readonly outerRadius_m: number;
  /** Inner edge: the clamp radius for every shim on the clamp. */
  readonly innerRadius_m: number;
  /** True when the clamp holds the inner edge; a ring lies free. */
  readonly clamped: boolean;
  readonly dish_m: number;
  readonly thickness_m: number;
  readonly poissonsRatio: number;
  readonly D: number;
  readonly C: number;
  /** First shim of the plate and one past its last, in the order of the stack. */
  readonly from: number;
  readonly to: number;
}

/** Bending rigidity E t³ / 12 (1 - ν²) of one shim [N·m]. */
export function bendingRigidity({ youngsModulus_Pa, thickness_m, poissonsRatio }: ShimInput): number {
  return (youngsModulus_Pa * thickness_m ** 3) / (12 * (1 - poissonsRatio ** 2));
}

/** Stretching rigidity E t / (1 - ν²) of one shim [N/m]. */
export function stretchingRigidity({ youngsModulus_Pa, thickness_m, poissonsRatio }: ShimInput): number {
  return (youngsModulus_Pa * thickness_m) / (1 - poissonsRatio ** 2);
}

/** @param shims single shims, piston side first @returns plates in the same order */
export function mergeNeighbours(shims: readonly ShimInput[], clampRadius_m: number): MergedPlate[] {
  const plates: MergedPlate[] = [];
  shims.forEach((shim, i) => {
    const alone = plateOf(shim, i, clampRadius_m);
    const last = plates[plates.length - 1];
    if (last === undefined || !moveTogether(last, alone)) {
      plates.push(alone);
      return;
    }
    plates[plates.length - 1] = {
      ...last,
      to: i + 1,
      thickness_m: last.thickness_m + alone.thickness_m,
      D: last.D + alone.D,
      C: last.C + alone.C,
    };
  });
  return plates;
}

function plateOf(shim: ShimInput, i: number, clampRadius_m: number): MergedPlate {
  const bore = shim.innerRadius_m ?? clampRadius_m;
  return {
    outerRadius_m: shim.outerRadius_m,
    innerRadius_m: Math.max(bore, clampRadius_m),
    clamped: bore <= clampRadius_m,
    dish_m: shim.dish_m ?? 0,
    poissonsRatio: shim.poissonsRatio,
    from: i,
    to: i + 1,
    thickness_m: shim.thickness_m,
    D: bendingRigidity(shim),
    C: stretchingRigidity(shim),
  };
}

function moveTogether(p: MergedPlate, q: MergedPlate): boolean {
  return (
    p.outerRadius_m === q.outerRadius_m &&
    p.innerRadius_m === q.innerRadius_m &&
    p.dish_m === q.dish_m &&
    p.poissonsRatio === q.poissonsRatio
  );
}
