/** Stress profile of every single shim of a solved stack: the strains of its plate, at the faces of its own thickness. */
import { cutLoads, sectionStrains } from '../plate/section-strains.ts';
import { stressProfile } from '../plate/stress-profile.ts';
import type { ShimInput, ShimStress } from '../types.ts';
import { loadedPlate } from './laid-stack.ts';
import type { StackSystem } from './stack-system.ts';

/** @returns reads one profile a single shim, piston side first, equal shims of a plate sharing one, when the system is in balance under p [Pa] */
export function stressReader({ plates, merged, stack, tables, ring }: StackSystem): (p: number) => ShimStress[] {
  const loads = plates.map((plate) => cutLoads(plate, ring, (element) => loadedPlate(plates, element) === plate));
  const radii = plates.map(({ first, nodes }) => tables.radius_m.slice(first, first + nodes));
  return (p) =>
    plates.flatMap((plate, k) => {
      const strains = sectionStrains(plate, p, loads[k]);
      const known: { shim: ShimInput; stress: ShimStress }[] = [];
      return stack.shims.slice(merged[k].from, merged[k].to).map((shim) => {
        const equal = known.find((other) => isEqual(other.shim, shim));
        if (equal) return equal.stress;
        const stress = stressProfile(radii[k], strains, shim);
        known.push({ shim, stress });
        return stress;
      });
    });
}

const isEqual = (a: ShimInput, b: ShimInput): boolean =>
  a.thickness_m === b.thickness_m && a.youngsModulus_Pa === b.youngsModulus_Pa && a.poissonsRatio === b.poissonsRatio;
