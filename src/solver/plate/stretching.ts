/**
 * Stretching of an annular plate that deflects far: von Kármán strains, and what one element adds to energy, force and
 * tangent.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | s, s0 | - | whole slope w′ + w₀′, and w₀′ of the unloaded cone |
 * | er, et | - | mid-surface strains u′ + (s² - s0²)/2 and u/r |
 * | Nr, Nt | N/m | membrane forces C (er + ν et), C (et + ν er); in the loops times the area of a Gauss point |
 * | φ, ψ | - | shapes of w and of u |
 *
 * E = π ∫ C (er² + et² + 2ν er et) r dr; f = dE/dx, K = df/dx:
 *   f_w = ∫ Nr s φ′ dA                          f_u = ∫ (Nr ψ′ + Nt ψ/r) dA
 *   K_ww = ∫ (Nr + C s²) φ′φ′ dA,  K_wu = ∫ C s φ′ (ψ′ + ν ψ/r) dA,  K_uu = K_membrane (constant)
 * Source: von Kármán plate, Timoshenko & Woinowsky-Krieger 1959, section 100; Hermite elements own derivation.
 */
import { U_AT, W_AT } from './element-unknowns.ts';
import { GAUSS_POINTS } from './hermite-tables.ts';
import type { Plate } from './plate.ts';

/**
 * - `exact`: the true tangent, which may have negative eigenvalues.
 * - `stiffened`: compressive Nr is left out of K_ww; always positive definite, so a descent direction of the energy.
 */
export type Tangent = 'exact' | 'stiffened';

/** Adds the membrane part of the force of element e; slope and radial force of its Gauss points stay in the plate. */
export function addStretchingForce(plate: Plate, e: number): void {
  const { tables, x, internal, slope, pull, C, nu } = plate;
  const { d0, d1, rw, rinv } = tables;
  const s0 = plate.initialSlope;
  const o = e * 4;
  for (let g = e * GAUSS_POINTS; g < (e + 1) * GAUSS_POINTS; g++) {
    const q = plate.first * GAUSS_POINTS + g;
    const k = q * 4;
    const h0 = d1[k];
    const h1 = d1[k + 1];
    const h2 = d1[k + 2];
    const h3 = d1[k + 3];
    const ri = rinv[q];
    const p0 = d0[k] * ri;
    const p1 = d0[k + 1] * ri;
    const p2 = d0[k + 2] * ri;
    const p3 = d0[k + 3] * ri;
    const s = s0 + h0 * x[o] + h1 * x[o + 1] + h2 * x[o + 4] + h3 * x[o + 5];
    const u1 = h0 * x[o + 2] + h1 * x[o + 3] + h2 * x[o + 6] + h3 * x[o + 7];
    const et = p0 * x[o + 2] + p1 * x[o + 3] + p2 * x[o + 6] + p3 * x[o + 7];
    const er = u1 + (s * s - s0 * s0) / 2;
    const c = C * rw[q];
    const Nr = c * (er + nu * et);
    const Nt = c * (et + nu * er);
    slope[g] = s;
    pull[g] = Nr;
    internal[o] += Nr * s * h0;
    internal[o + 1] += Nr * s * h1;
    internal[o + 4] += Nr * s * h2;
    internal[o + 5] += Nr * s * h3;
    internal[o + 2] += Nr * h0 + Nt * p0;
    internal[o + 3] += Nr * h1 + Nt * p1;
    internal[o + 6] += Nr * h2 + Nt * p2;
    internal[o + 7] += Nr * h3 + Nt * p3;
  }
}

/** Adds K_ww and K_wu of element e to the band, at the state for which `addStretchingForce` was called last. */
export function addStretchingTangent(plate: Plate, e: number, tangent: Tangent): void {
  const { tables, band, slope, pull, C, nu } = plate;
  const { d0, d1, rw, rinv } = tables;
  // Rows of the band are 8 long with the diagonal last: A[i][j] of the element is 7 i + j after its first one.
  const r = e * 32 + 7;
  for (let g = e * GAUSS_POINTS; g < (e + 1) * GAUSS_POINTS; g++) {
    const q = plate.first * GAUSS_POINTS + g;
    const k = q * 4;
    const h0 = d1[k];
    const h1 = d1[k + 1];
    const h2 = d1[k + 2];
    const h3 = d1[k + 3];
    const nr = nu * rinv[q];
    const gwu = C * rw[q] * slope[g];
    const gww = gwu * slope[g] + (tangent === 'stiffened' && pull[g] < 0 ? 0 : pull[g]);
    const v0 = gwu * (h0 + nr * d0[k]);
    const v1 = gwu * (h1 + nr * d0[k + 1]);
    const v2 = gwu * (h2 + nr * d0[k + 2]);
    const v3 = gwu * (h3 + nr * d0[k + 3]);
    band[r] += gww * h0 * h0;
    band[r + 7] += gww * h1 * h0;
    band[r + 8] += gww * h1 * h1;
    band[r + 14] += h0 * v0;
    band[r + 15] += h1 * v0;
    band[r + 21] += h0 * v1;
    band[r + 22] += h1 * v1;
    band[r + 28] += gww * h2 * h0;
    band[r + 29] += gww * h2 * h1;
    band[r + 30] += h2 * v0;
    band[r + 31] += h2 * v1;
    band[r + 32] += gww * h2 * h2;
    band[r + 35] += gww * h3 * h0;
    band[r + 36] += gww * h3 * h1;
    band[r + 37] += h3 * v0;
    band[r + 38] += h3 * v1;
    band[r + 39] += gww * h3 * h2;
    band[r + 40] += gww * h3 * h3;
    band[r + 42] += h0 * v2;
    band[r + 43] += h1 * v2;
    band[r + 46] += h2 * v2;
    band[r + 47] += h3 * v2;
    band[r + 49] += h0 * v3;
    band[r + 50] += h1 * v3;
    band[r + 53] += h2 * v3;
    band[r + 54] += h3 * v3;
  }
}

/** Twice the stretching energy of element e [J]. */
export function twiceStretchingEnergy(plate: Plate, e: number): number {
  const { tables, C, nu } = plate;
  let twice = 0;
  const from = (plate.first + e) * GAUSS_POINTS;
  for (let q = from; q < from + GAUSS_POINTS; q++) {
    const { er, et } = membraneStrains(plate, e, q);
    twice += C * tables.rw[q] * (er * er + et * et + 2 * nu * er * et);
  }
  return twice;
}

/** Whole slope and mid-surface strains at Gauss point q of element e, under large deflection. */
export function membraneStrains(plate: Plate, e: number, q: number): { s: number; er: number; et: number } {
  const { x, tables } = plate;
  const { d0, d1, rinv } = tables;
  const s0 = plate.initialSlope;
  let s = s0;
  let u = 0;
  let u1 = 0;
  for (let i = 0; i < 4; i++) {
    s += d1[q * 4 + i] * x[e * 4 + W_AT[4][i]];
    u += d0[q * 4 + i] * x[e * 4 + U_AT[i]];
    u1 += d1[q * 4 + i] * x[e * 4 + U_AT[i]];
  }
  return { s, er: u1 + (s * s - s0 * s0) / 2, et: u * rinv[q] };
}
