/**
 * What a drawing shades of a stack: the equivalent stress along every shim at each pressure of its table, and what it is held
 * against.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | σ | Pa | equivalent stress of Tresca, see goodman.ts, on the face of the shim where it is greater |
 */
import type { StackStresses } from '../damper/types.ts';
import type { FaceStress, ShimInput, ShimStress } from '../types.ts';
import { trescaStress } from './goodman.ts';
import { strengthOf } from './strength.ts';

/** @param states stress of every shim at each pressure of the table; shims that share a profile share a list */
export function stackStresses(shims: readonly ShimInput[], states: readonly (readonly ShimStress[])[]): StackStresses {
  return {
    equivalent_Pa: states.map((profiles) => {
      const known = new Map<ShimStress, Float64Array>();
      return profiles.map((profile) => {
        const equivalent = known.get(profile) ?? equivalentStress(profile);
        known.set(profile, equivalent);
        return equivalent;
      });
    }),
    yield_Pa: shims.map((shim) => strengthOf(shim)?.yield_Pa ?? null),
  };
}

/** σ at the nodes of the profile [Pa]. */
function equivalentStress({ piston, far }: ShimStress): Float64Array {
  const at = ({ radial_Pa, hoop_Pa }: FaceStress, i: number): number => trescaStress(radial_Pa[i], hoop_Pa[i]);
  return piston.radial_Pa.map((_, i) => Math.max(at(piston, i), at(far, i)));
}
