/**
 * The plate constants of Roark's Table 11.2, shared by the closed forms of an annulus clamped inside and free outside.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | k | - | inner radius over the radius looked at |
 * | s | - | load radius over the radius looked at; L vanish for s >= 1, where the load has not begun |
 * | L | - | ln(1/k) or ln(1/s) |
 * | nu | - | Poisson's ratio |
 * | C2, C3 | - | deflection per clamp moment and clamp shear |
 * | C5, C6 | - | slope per clamp moment and clamp shear |
 * | C8, C9 | - | radial moment per clamp moment and clamp shear |
 * | L3, L6, L9 | - | deflection, slope, moment per line load at s |
 * | L11, L14, L17 | - | deflection, slope, moment per pressure from s outwards |
 *
 * With k = b/a these are Roark's C and L; with k = b/r his F and G at radius r, which have the same form.
 * Source: Young & Budynas, Roark's Formulas for Stress and Strain, 7th ed. 2002, Table 11.2 (in part from memory;
 * every constant recomputed from the exact Kirchhoff solution).
 */

export interface ClampConstants {
  readonly C2: number;
  readonly C3: number;
  readonly C5: number;
  readonly C6: number;
  readonly C8: number;
  readonly C9: number;
}

/** Response to what the clamp exerts. @param k clamp radius over radius, 0 < k <= 1 [-] @param nu Poisson's ratio [-] */
export function clampConstants(k: number, nu: number): ClampConstants {
  const L = -Math.log(k);
  const k2 = k * k;
  return {
    C2: (1 - k2 * (1 + 2 * L)) / 4,
    C3: (k / 4) * ((k2 + 1) * L + k2 - 1),
    C5: (1 - k2) / 2,
    C6: (k / 4) * (k2 - 1 + 2 * L),
    C8: (1 + nu + (1 - nu) * k2) / 2,
    C9: k * (((1 + nu) / 2) * L + ((1 - nu) / 4) * (1 - k2)),
  };
}

/** What a load adds to deflection, slope and radial moment at a radius. */
export interface LoadConstants {
  readonly deflection: number;
  readonly slope: number;
  readonly moment: number;
}

const NO_LOAD_YET: LoadConstants = { deflection: 0, slope: 0, moment: 0 };

/** L3, L6, L9. @param s load radius over radius, > 0 [-] @param nu Poisson's ratio [-] */
export function lineLoadConstants(s: number, nu: number): LoadConstants {
  if (s >= 1) return NO_LOAD_YET;
  const { C3, C6, C9 } = clampConstants(s, nu);
  return { deflection: C3, slope: C6, moment: C9 };
}

/** L11, L14, L17. @param s radius where the pressure begins over radius, > 0 [-] @param nu Poisson's ratio [-] */
export function pressureConstants(s: number, nu: number): LoadConstants {
  if (s >= 1) return NO_LOAD_YET;
  const L = -Math.log(s);
  const s2 = s * s;
  const s4 = s2 * s2;
  return {
    deflection: (1 + 4 * s2 - 5 * s4 - 4 * s2 * (2 + s2) * L) / 64,
    slope: (1 - s4 - 4 * s2 * L) / 16,
    moment: (1 - ((1 - nu) / 4) * (1 - s4) - s2 * (1 + (1 + nu) * L)) / 4,
  };
}
