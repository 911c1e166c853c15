/**
 * The one adapter from the project document to solver records: millimetres and diameters become metres and radii,
 * gauge pressure becomes absolute, counts become single shims. It computes nothing else.
 */
import type { Material, ShimRow, StackFile } from '../model/project.ts';
import { InputError } from '../units/fault.ts';
import { metresFromMillimetres as metres, pascalsFromGigapascals } from '../units/si.ts';
import type { ShimInput, StackInput } from './types.ts';

/**
 * Spring steel strip where a document names no material: E = 206 GPa, nu = 0.3, the values of DIN 2093 / EN 16984
 * for disc springs (from memory) and common practice for carbon spring strip.
 */
export const SPRING_STEEL: Readonly<Material> = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };

/**
 * Stack file to solver record: diameters halved, counts expanded in order, piston side first.
 * @throws InputError `stack.shim.count` when a count is not a whole number of at least 1.
 */
export function stackFromFile(file: StackFile): StackInput {
  const { clampDiameter_mm, shims, pressureZone, seat, backingPlate, material } = file;
  return {
    clampRadius_m: radius(clampDiameter_mm),
    shims: expandShims(shims, material),
    pressureZone: ring(pressureZone),
    ...(seat && { seat: { ...ring(seat), height_m: metres(seat.height_mm) } }),
    ...(backingPlate && { backingPlate: { gap_m: metres(backingPlate.gap_mm) } }),
  };
}

function expandShims(rows: readonly ShimRow[], material: Material = SPRING_STEEL): ShimInput[] {
  return rows.flatMap((row, index) => {
    const shim: ShimInput = {
      outerRadius_m: radius(row.outerDiameter_mm),
      thickness_m: metres(row.thickness_mm),
      youngsModulus_Pa: pascalsFromGigapascals(material.youngsModulus_GPa),
      poissonsRatio: material.poissonsRatio,
    };
    return Array.from({ length: wholeCount(row, index) }, () => shim);
  });
}

function wholeCount({ count = 1 }: ShimRow, index: number): number {
  if (Number.isInteger(count) && count >= 1) return count;
  throw new InputError({
    code: 'stack.shim.count',
    path: `shims[${index}].count`,
    got: String(count),
    wanted: 'a whole number of at least 1',
  });
}

const radius = (diameter_mm: number): number => metres(diameter_mm) / 2;

const ring = (zone: { innerDiameter_mm: number; outerDiameter_mm: number }) => ({
  innerRadius_m: radius(zone.innerDiameter_mm),
  outerRadius_m: radius(zone.outerDiameter_mm),
});
