/**
 * Stiffness of the flat, unloaded periodic plate, element by element: bending of the lifts, stretching of u and v.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | kr, kt, ks | 1/m | curvatures w_rr, w_r/r + w_θθ/r², and twist (w_rθ - w_θ/r)/r |
 * | er, et, g | - | strains u_r, (u + v_θ)/r, (u_θ - v)/r + v_r |
 * | D, C | N·m, N/m | taken as 1 here |
 *
 * 2 E = ∫ D [kr² + kt² + 2ν kr kt + 2(1 - ν) ks²] dA + ∫ C [er² + et² + 2ν er et + (1 - ν)/2 g²] dA.
 * Source: Timoshenko & Woinowsky-Krieger 1959, chapter 9 (polar coordinates); elements own derivation.
 */
import { GAUSS_POINTS, type HermiteTables } from '../hermite-tables.ts';
import type { CircleBasis } from './circle-basis.ts';

/** @returns (4 lifts)² numbers an element, rows by field, then shape */
export function bendingBlocks(
  t: HermiteTables,
  basis: CircleBasis,
  first: number,
  elements: number,
  nu: number,
): Float64Array {
  const { lift, liftTurn, liftTurn2, lifts } = basis;
  const weights = [1, 1, 2 * (1 - nu)];
  return blocks(t, basis, first, elements, 4 * lifts, nu, weights, (q, s, i, out) => {
    const [j, h] = [s * lifts + (i >> 2), q * 4 + (i & 3)];
    const ri = t.rinv[q];
    out[0] = t.d2[h] * lift[j];
    out[1] = (t.d1[h] * lift[j] + t.d0[h] * ri * liftTurn2[j]) * ri;
    out[2] = (t.d1[h] - t.d0[h] * ri) * ri * liftTurn[j];
  });
}

/** @returns (4 (outs + turns))² numbers an element, rows by field (u, then v), then shape */
export function membraneBlocks(
  t: HermiteTables,
  basis: CircleBasis,
  first: number,
  elements: number,
  nu: number,
): Float64Array {
  const { out: cos, outTurn, turn, turnTurn, outs, turns } = basis;
  const weights = [1, 1, (1 - nu) / 2];
  return blocks(t, basis, first, elements, 4 * (outs + turns), nu, weights, (q, s, i, out) => {
    const [m, h] = [i >> 2, q * 4 + (i & 3)];
    const ri = t.rinv[q];
    if (m < outs) {
      out[0] = t.d1[h] * cos[s * outs + m];
      out[1] = t.d0[h] * ri * cos[s * outs + m];
      out[2] = t.d0[h] * ri * outTurn[s * outs + m];
    } else {
      const v = s * turns + m - outs;
      out[0] = 0;
      out[1] = t.d0[h] * ri * turnTurn[v];
      out[2] = (t.d1[h] - t.d0[h] * ri) * turn[v];
    }
  });
}

/** Fills the three strains of shape i at point s of Gauss point q. */
type StrainsOf = (q: number, s: number, i: number, out: Float64Array) => void;

function blocks(
  t: HermiteTables,
  { points }: CircleBasis,
  first: number,
  elements: number,
  size: number,
  nu: number,
  [wr, wt, ws]: readonly number[],
  strainsOf: StrainsOf,
): Float64Array {
  const k = new Float64Array(elements * size * size);
  const strains = Array.from({ length: size }, () => new Float64Array(3));
  for (let g = 0; g < elements * GAUSS_POINTS; g++) {
    const q = first * GAUSS_POINTS + g;
    const at = Math.floor(g / GAUSS_POINTS) * size * size;
    for (let s = 0; s < points; s++) {
      const dA = t.rw[q] / points;
      for (let i = 0; i < size; i++) strainsOf(q, s, i, strains[i]);
      for (let i = 0; i < size; i++) {
        const [a0, a1, a2] = strains[i];
        const [f0, f1, f2] = [dA * (wr * a0 + nu * a1), dA * (wt * a1 + nu * a0), dA * ws * a2];
        for (let j = 0; j < size; j++) {
          const b = strains[j];
          k[at + i * size + j] += f0 * b[0] + f1 * b[1] + f2 * b[2];
        }
      }
    }
  }
  return k;
}
