/**
 * Joins neighbours that move together exactly into one plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | t | m | thickness of one shim |
 * | D, C | N·m, N/m | bending and stretching rigidity of the joined plate, summed over its shims |
 *
 * Shims of equal rim and equal Poisson's ratio that lie on one another have the same w (each carries the share of the
 * load that its D has in ΣD, so the contact between them presses everywhere) and the same u (in-plane equilibrium of
 * a shim does not contain its thickness).
 */
import type { ShimInput } from '../types.ts';

export interface MergedPlate {
  readonly outerRadius_m: number;
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
export function mergeNeighbours(shims: readonly ShimInput[]): MergedPlate[] {
  const plates: MergedPlate[] = [];
  shims.forEach((shim, i) => {
    const last = plates[plates.length - 1];
    const joins =
      last !== undefined && last.outerRadius_m === shim.outerRadius_m && last.poissonsRatio === shim.poissonsRatio;
    const base = joins ? (plates.pop() as MergedPlate) : { from: i, thickness_m: 0, D: 0, C: 0 };
    plates.push({
      outerRadius_m: shim.outerRadius_m,
      poissonsRatio: shim.poissonsRatio,
      from: base.from,
      to: i + 1,
      thickness_m: base.thickness_m + shim.thickness_m,
      D: base.D + bendingRigidity(shim),
      C: base.C + stretchingRigidity(shim),
    });
  });
  return plates;
}
