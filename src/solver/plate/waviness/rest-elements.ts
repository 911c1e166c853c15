/**
 * Element matrices of an unloaded flat plate against waves round the circle, for unit rigidities.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle |
 * | W, U, V | m | w = W(r) cos nθ, u = U(r) cos nθ, v = V(r) sin nθ |
 * | kr, kt, kx | 1/m | curvatures W″, W′/r - n²W/r², and twist n (W/r² - W′/r) |
 * | er, et, g | - | strains U′, (U + n V)/r, and shear V′ - V/r - n U/r |
 * | nu | - | Poisson's ratio |
 *
 * bending:  π ∫ [kr² + kt² + 2ν kr kt + 2 (1 - ν) kx²] r dr      (times D)
 * membrane: π ∫ [er² + et² + 2ν er et + (1 - ν)/2 g²] r dr       (times C)
 * π is ∫cos² nθ dθ = ∫sin² nθ dθ. Source: strains and curvatures in polar coordinates, Timoshenko & Woinowsky-Krieger
 * 1959, sections 62 and 100 (section numbers from memory); docs/theory-waviness.md.
 */
import type { HermiteTables } from '../hermite-tables.ts';
import { GAUSS_POINTS } from '../hermite-tables.ts';

/** Shapes of U and V together: 4 of U, then 4 of V. */
export const IN_PLANE_SHAPES = 8;

/** Numbers an element in `restBendingParts`: 16 without n, 16 with n² and 16 with n⁴. */
export const BENDING_PARTS = 48;

/**
 * Bending for every number of waves at once: the sum of its three parts, the second times n² and the third times n⁴.
 * @param first mesh element of the plate's inner edge
 * @returns BENDING_PARTS numbers an element, rows by shape of W (value, slope inside; value, slope outside)
 */
export function restBendingParts(t: HermiteTables, first: number, elements: number, nu: number): Float64Array {
  const k = new Float64Array(elements * BENDING_PARTS);
  for (let point = 0; point < elements * GAUSS_POINTS; point++) {
    const q = first * GAUSS_POINTS + point;
    const ri = t.rinv[q];
    const weight = t.rw[q] / 2;
    for (let i = 0; i < 4; i++) {
      const at = Math.floor(point / GAUSS_POINTS) * BENDING_PARTS + i * 4;
      const kr = t.d2[q * 4 + i];
      const slope = t.d1[q * 4 + i] * ri;
      const lift = t.d0[q * 4 + i] * ri * ri;
      for (let j = 0; j < 4; j++) {
        const krJ = t.d2[q * 4 + j];
        const slopeJ = t.d1[q * 4 + j] * ri;
        const liftJ = t.d0[q * 4 + j] * ri * ri;
        const twist = 2 * (1 - nu) * (lift - slope) * (liftJ - slopeJ);
        k[at + j] += weight * (kr * krJ + slope * slopeJ + nu * (kr * slopeJ + slope * krJ));
        k[at + 16 + j] += weight * (twist - slope * liftJ - lift * slopeJ - nu * (kr * liftJ + lift * krJ));
        k[at + 32 + j] += weight * lift * liftJ;
      }
    }
  }
  return k;
}

/** @param first as above @returns 64 numbers an element, rows by shape: 4 of U, then 4 of V */
export function restMembrane(t: HermiteTables, first: number, elements: number, nu: number, n: number): Float64Array {
  const k = new Float64Array(elements * IN_PLANE_SHAPES ** 2);
  const shear = (1 - nu) / 2;
  for (let point = 0; point < elements * GAUSS_POINTS; point++) {
    const q = first * GAUSS_POINTS + point;
    const weight = t.rw[q] / 2;
    for (let i = 0; i < 4; i++) {
      const at = (Math.floor(point / GAUSS_POINTS) * IN_PLANE_SHAPES + i) * IN_PLANE_SHAPES;
      const a = t.d0[q * 4 + i] * t.rinv[q];
      const a1 = t.d1[q * 4 + i];
      for (let j = 0; j < 4; j++) {
        const b = t.d0[q * 4 + j] * t.rinv[q];
        const b1 = t.d1[q * 4 + j];
        const uv = weight * n * (a * b + nu * a1 * b - shear * a * (b1 - b));
        k[at + j] += weight * (a1 * b1 + nu * (a1 * b + a * b1) + (1 + shear * n * n) * a * b);
        k[at + 4 + j] += uv;
        k[at - i * IN_PLANE_SHAPES + (4 + j) * IN_PLANE_SHAPES + i] += uv;
        k[at + 4 * IN_PLANE_SHAPES + 4 + j] += weight * (n * n * a * b + shear * (a1 - a) * (b1 - b));
      }
    }
  }
  return k;
}
