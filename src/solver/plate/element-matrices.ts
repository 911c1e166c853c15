/**
 * Element matrices of an annular plate for unit rigidities, from the quadratic parts of its energy.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | a1, a2 | 1/m, 1/m² | first and second derivative of shape a by r |
 * | nu | - | Poisson's ratio |
 *
 * bending:  K_ab = ∫ [a″b″ + a′b′/r² + ν (a″b′ + a′b″)/r] 2π r dr    (times D)
 * membrane: K_ab = ∫ [a′b′ + a b/r² + ν (a′b + a b′)/r] 2π r dr      (times C)
 * Source: second variation of the energy of design section 5.1; Timoshenko & Woinowsky-Krieger 1959, section 16 and 21.
 */
import type { HermiteTables } from './hermite-tables.ts';
import { GAUSS_POINTS } from './hermite-tables.ts';

/** ∫ [p q + p̂ q̂/r² + ν (p q̂ + p̂ q)/r] dA of `elements` elements from mesh element `first` on; p̂ is the low derivative. */
function quadraticForm(
  t: HermiteTables,
  first: number,
  elements: number,
  nu: number,
  high: Float64Array,
  low: Float64Array,
): Float64Array {
  const k = new Float64Array(elements * 16);
  for (let e = 0; e < elements; e++) {
    for (let g = 0; g < GAUSS_POINTS; g++) {
      const q = (first + e) * GAUSS_POINTS + g;
      const ri = t.rinv[q];
      for (let a = 0; a < 4; a++) {
        const pa = high[q * 4 + a];
        const la = low[q * 4 + a] * ri;
        for (let b = 0; b < 4; b++) {
          const pb = high[q * 4 + b];
          const lb = low[q * 4 + b] * ri;
          k[e * 16 + a * 4 + b] += t.rw[q] * (pa * pb + la * lb + nu * (pa * lb + la * pb));
        }
      }
    }
  }
  return k;
}

/** @param first mesh element of the inner edge @returns 16 numbers an element, rows by shape (value, slope inside; value, slope outside) */
export function bendingElementMatrices(t: HermiteTables, first: number, elements: number, nu: number): Float64Array {
  return quadraticForm(t, first, elements, nu, t.d2, t.d1);
}

/** @returns 16 numbers an element, as for bending but of the radial displacement u */
export function membraneElementMatrices(t: HermiteTables, first: number, elements: number, nu: number): Float64Array {
  return quadraticForm(t, first, elements, nu, t.d1, t.d0);
}
