/**
 * Radial surface stress of a plate: at the clamp from its reactions, elsewhere from the curvature of the elements.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | k | 1/m | w″ + ν w′/r; a shim of thickness t bends to the stress E t k / 2 (1 - ν²) at its surfaces |
 * | e | - | er + ν et; its membrane stress is E e / (1 - ν²), the same in all shims of a plate |
 * | Mr, Nr | N, N/m | radial moment and membrane force a unit length |
 *
 * At the clamp the reactions of the held unknowns give 2π r Mr and 2π r Nr with the accuracy of the energy, a better
 * one than that of the derivatives; source: Hughes, The Finite Element Method, 2000, section 2.12 (consistent fluxes).
 */
import { GAUSS_POINTS } from './hermite-tables.ts';
import type { Plate } from './plate.ts';
import { membraneStrains } from './stretching.ts';

export interface RadialStrain {
  readonly k: number;
  readonly e: number;
}

/** Curvature and membrane measure at the inner edge, from the reactions of `plate.internal` less pressure p. */
export function clampStrain(plate: Plate, p: number): RadialStrain {
  const { internal, unitLoad, tables, D, C, d, first } = plate;
  const circumference = 2 * Math.PI * tables.radius_m[first];
  const Mr = -(internal[1] - p * unitLoad[1]) / circumference;
  const Nr = d === 4 ? -internal[2] / circumference : 0;
  return { k: Mr / D, e: Nr / C };
}

/** Curvature at both ends of every element, with the membrane measure of its nearest Gauss point. */
export function elementStrains(plate: Plate): RadialStrain[] {
  const { x, d, nu, first, tables } = plate;
  const r = tables.radius_m;
  const strains: RadialStrain[] = [];
  for (let e = 0; e < plate.nodes - 1; e++) {
    const h = r[first + e + 1] - r[first + e];
    const rise = (6 * (x[(e + 1) * d] - x[e * d])) / h;
    const [inner, outer] = [x[e * d + 1], x[(e + 1) * d + 1]];
    // Second derivatives of the Hermite cubic at its ends.
    const inside = (rise - 4 * inner - 2 * outer) / h;
    const outside = (2 * inner + 4 * outer - rise) / h;
    strains.push({ k: inside + (nu * inner) / r[first + e], e: membraneMeasure(plate, e, 0) });
    strains.push({ k: outside + (nu * outer) / r[first + e + 1], e: membraneMeasure(plate, e, 1) });
  }
  return strains;
}

function membraneMeasure(plate: Plate, e: number, end: 0 | 1): number {
  if (plate.d === 2) return 0;
  const q = (plate.first + e) * GAUSS_POINTS + (end === 0 ? 0 : GAUSS_POINTS - 1);
  const { er, et } = membraneStrains(plate, e, q);
  return er + plate.nu * et;
}

/** Largest of the two radial surface stresses [Pa]. */
export function surfaceStress({ k, e }: RadialStrain, thickness_m: number, modulus_Pa: number, nu: number): number {
  return (modulus_Pa / (1 - nu * nu)) * (e + (thickness_m / 2) * Math.abs(k));
}
