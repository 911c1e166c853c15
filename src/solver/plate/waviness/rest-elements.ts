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

/** @param first mesh element of the plate's inner edge @returns 16 numbers an element, rows by shape of W (value, slope inside; value, slope outside) */
export function restBending(t: HermiteTables, first: number, elements: number, nu: number, n: number): Float64Array {
  const k = new Float64Array(elements * 16);
  const [kr, kt, kx] = [0, 1, 2].map(() => new Float64Array(4));
  for (let point = 0; point < elements * GAUSS_POINTS; point++) {
    const q = first * GAUSS_POINTS + point;
    const ri = t.rinv[q];
    for (let i = 0; i < 4; i++) {
      const [a, a1] = [t.d0[q * 4 + i] * ri, t.d1[q * 4 + i]];
      kr[i] = t.d2[q * 4 + i];
      kt[i] = (a1 - n * n * a) * ri;
      kx[i] = n * (a - a1) * ri;
    }
    const at = Math.floor(point / GAUSS_POINTS) * 16;
    addForm(k, at, 4, t.rw[q] / 2, kr, kt, nu, 2 * (1 - nu), kx);
  }
  return k;
}

/** @param first as above @returns 64 numbers an element, rows by shape: 4 of U, then 4 of V */
export function restMembrane(t: HermiteTables, first: number, elements: number, nu: number, n: number): Float64Array {
  const k = new Float64Array(elements * IN_PLANE_SHAPES ** 2);
  const [er, et, g] = [0, 1, 2].map(() => new Float64Array(IN_PLANE_SHAPES));
  for (let point = 0; point < elements * GAUSS_POINTS; point++) {
    const q = first * GAUSS_POINTS + point;
    for (let i = 0; i < 4; i++) {
      const [a, a1] = [t.d0[q * 4 + i] * t.rinv[q], t.d1[q * 4 + i]];
      er[i] = a1;
      et[i] = a;
      et[4 + i] = n * a;
      g[i] = -n * a;
      g[4 + i] = a1 - a;
    }
    const at = Math.floor(point / GAUSS_POINTS) * IN_PLANE_SHAPES ** 2;
    addForm(k, at, IN_PLANE_SHAPES, t.rw[q] / 2, er, et, nu, (1 - nu) / 2, g);
  }
  return k;
}

/** k += weight [p pᵀ + s sᵀ + ν (p sᵀ + s pᵀ) + c z zᵀ], a square block of m rows from `at` on. */
function addForm(
  k: Float64Array,
  at: number,
  m: number,
  weight: number,
  p: Float64Array,
  s: Float64Array,
  nu: number,
  c: number,
  z: Float64Array,
): void {
  for (let i = 0; i < m; i++) {
    const [pi, si, zi] = [weight * (p[i] + nu * s[i]), weight * (s[i] + nu * p[i]), weight * c * z[i]];
    for (let j = 0; j < m; j++) k[at + i * m + j] += pi * p[j] + si * s[j] + zi * z[j];
  }
}
