/** Shims and what stands over them: diameters halved, counts expanded in order, piston side first. */
import { preloadAt } from '../../model/preload.ts';
import type { CoilSpring, Material, ShimRow, StackSprings } from '../../model/project.ts';
import { InputError } from '../../units/fault.ts';
import {
  metresFromMillimetres as metres,
  newtonsPerMetreFromNewtonsPerMillimetre as newtonsPerMetre,
  pascalsFromGigapascals,
  pascalsFromMegapascals,
} from '../../units/si.ts';
import type { ShimInput, Strength } from '../types.ts';

/**
 * Spring steel strip where a document names no material: E = 206 GPa, nu = 0.3, the values of DIN 2093 / EN 16984
 * for disc springs (from memory) and common practice for carbon spring strip.
 */
export const SPRING_STEEL: Readonly<Material> = { youngsModulus_GPa: 206, poissonsRatio: 0.3 };

/** @throws InputError `stack.shim.count` when a count is not a whole number of at least 1. */
export function expandShims(rows: readonly ShimRow[], ofStack: Material = SPRING_STEEL): ShimInput[] {
  return rows.flatMap((row, index) => {
    const shim = shimFrom(row, ofStack);
    return Array.from({ length: wholeCount(row, index) }, () => shim);
  });
}

function shimFrom({ outerDiameter_mm, thickness_mm, ...row }: ShimRow, ofStack: Material): ShimInput {
  const { youngsModulus_GPa, poissonsRatio, ...limits } = row.material ?? ofStack;
  const strength = strengthFrom(limits);
  return {
    outerRadius_m: radius(outerDiameter_mm),
    thickness_m: metres(thickness_mm),
    youngsModulus_Pa: pascalsFromGigapascals(youngsModulus_GPa),
    poissonsRatio,
    ...(row.innerDiameter_mm !== undefined && { innerRadius_m: radius(row.innerDiameter_mm) }),
    ...(row.dish_mm !== undefined && { dish_m: metres(row.dish_mm) }),
    ...(Object.keys(strength).length > 0 && { strength }),
  };
}

function strengthFrom(material: Partial<Material>): Partial<Strength> {
  const { yieldStrength_MPa: Sy, tensileStrength_MPa: Su, enduranceLimit_MPa: Se } = material;
  return {
    ...(Sy !== undefined && { yield_Pa: pascalsFromMegapascals(Sy) }),
    ...(Su !== undefined && { tensile_Pa: pascalsFromMegapascals(Su) }),
    ...(Se !== undefined && { endurance_Pa: pascalsFromMegapascals(Se) }),
  };
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

export function springsFrom({ backingPlate: plate, coilSpring: coil, float }: StackSprings) {
  const edge_mm = plate?.outerDiameter_mm;
  return {
    ...(plate && {
      backingPlate: { gap_m: metres(plate.gap_mm), ...(edge_mm !== undefined && { outerRadius_m: radius(edge_mm) }) },
    }),
    ...(coil && { coilSpring: { radius_m: radius(coil.diameter_mm), ...springFrom(coil) } }),
    ...(float && { float: { travel_m: metres(float.travel_mm), ...springFrom(float) } }),
  };
}

/** Rate, and the preload that the adjuster leaves. */
export const springFrom = (spring: Pick<CoilSpring, 'rate_N_mm' | 'preload_N' | 'adjuster'>) => ({
  rate_N_m: newtonsPerMetre(spring.rate_N_mm),
  preload_N: preloadAt(spring),
});

export const radius = (diameter_mm: number): number => metres(diameter_mm) / 2;

export const ring = (zone: { innerDiameter_mm: number; outerDiameter_mm: number }) => ({
  innerRadius_m: radius(zone.innerDiameter_mm),
  outerRadius_m: radius(zone.outerDiameter_mm),
});
