/** Stress profile of every single shim of a solved stack: the strains of its plate, at the faces of its own thickness. */
import { type PlateLoad, sectionStrains } from '../plate/section-strains.ts';
import { stressProfile } from '../plate/stress-profile.ts';
import type { ShimStress } from '../types.ts';
import { loadedPlate, type StackSystem } from './stack-system.ts';

/** @param system in balance under p [Pa] @returns one profile a single shim, piston side first */
export function readStress(system: StackSystem, p: number): ShimStress[] {
  const { plates, merged, stack, tables, ring } = system;
  return plates.flatMap((plate, k) => {
    const load: PlateLoad = { p, ring, isLoaded: (element) => loadedPlate(plates, element) === plate };
    const strains = sectionStrains(plate, load);
    const radius_m = tables.radius_m.slice(plate.first, plate.first + plate.nodes);
    return stack.shims.slice(merged[k].from, merged[k].to).map((shim) => stressProfile(radius_m, strains, shim));
  });
}
