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

/** Adds the membrane part of force and tangent of element e; the tangent is added to `plate.kww` and `plate.kwu`. */
export function addStretching(plate: Plate, e: number, tangent: Tangent): void {
  const { tables, x, internal, C, nu, kww, kwu } = plate;
  const { d0, d1, rw, rinv } = tables;
  const o = e * 4;
  const from = (plate.first + e) * GAUSS_POINTS;
  for (let q = from; q < from + GAUSS_POINTS; q++) {
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
    const s0 = plate.initialSlope;
    const s = s0 + h0 * x[o] + h1 * x[o + 1] + h2 * x[o + 4] + h3 * x[o + 5];
    const u1 = h0 * x[o + 2] + h1 * x[o + 3] + h2 * x[o + 6] + h3 * x[o + 7];
    const et = p0 * x[o + 2] + p1 * x[o + 3] + p2 * x[o + 6] + p3 * x[o + 7];
    const er = u1 + (s * s - s0 * s0) / 2;
    const c = C * rw[q];
    const Nr = c * (er + nu * et);
    const Nt = c * (et + nu * er);
    internal[o] += Nr * s * h0;
    internal[o + 1] += Nr * s * h1;
    internal[o + 4] += Nr * s * h2;
    internal[o + 5] += Nr * s * h3;
    internal[o + 2] += Nr * h0 + Nt * p0;
    internal[o + 3] += Nr * h1 + Nt * p1;
    internal[o + 6] += Nr * h2 + Nt * p2;
    internal[o + 7] += Nr * h3 + Nt * p3;
    const gww = (tangent === 'stiffened' && Nr < 0 ? 0 : Nr) + c * s * s;
    const gwu = c * s;
    const v0 = h0 + nu * p0;
    const v1 = h1 + nu * p1;
    const v2 = h2 + nu * p2;
    const v3 = h3 + nu * p3;
    addOuter(kww, gww, h0, h1, h2, h3, h0, h1, h2, h3);
    addOuter(kwu, gwu, h0, h1, h2, h3, v0, v1, v2, v3);
  }
}

/** k += g h vᵀ, written out since it is the innermost kernel. */
function addOuter(
  k: Float64Array,
  g: number,
  h0: number,
  h1: number,
  h2: number,
  h3: number,
  v0: number,
  v1: number,
  v2: number,
  v3: number,
): void {
  addRow(k, 0, g * h0, v0, v1, v2, v3);
  addRow(k, 4, g * h1, v0, v1, v2, v3);
  addRow(k, 8, g * h2, v0, v1, v2, v3);
  addRow(k, 12, g * h3, v0, v1, v2, v3);
}

function addRow(k: Float64Array, at: number, a: number, v0: number, v1: number, v2: number, v3: number): void {
  k[at] += a * v0;
  k[at + 1] += a * v1;
  k[at + 2] += a * v2;
  k[at + 3] += a * v3;
}

/** Adds the membrane part of the force of element e. */
export function addStretchingForce(plate: Plate, e: number): void {
  const { tables, internal, C, nu } = plate;
  const { d0, d1, rw, rinv } = tables;
  const from = (plate.first + e) * GAUSS_POINTS;
  for (let q = from; q < from + GAUSS_POINTS; q++) {
    const { s, er, et } = membraneStrains(plate, e, q);
    const c = C * rw[q];
    const Nr = c * (er + nu * et);
    const Nt = c * (et + nu * er);
    for (let i = 0; i < 4; i++) {
      internal[e * 4 + W_AT[4][i]] += Nr * s * d1[q * 4 + i];
      internal[e * 4 + U_AT[i]] += Nr * d1[q * 4 + i] + Nt * d0[q * 4 + i] * rinv[q];
    }
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
