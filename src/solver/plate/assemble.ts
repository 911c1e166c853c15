/**
 * Internal force and tangent of an annular plate, small deflection (Kirchhoff) or large (von Kármán).
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | s | - | whole slope w′ + w₀′ |
 * | er, et | - | mid-surface strains u′ + (s² - w₀′²)/2 and u/r |
 * | Nr, Nt | N/m | membrane forces C (er + ν et), C (et + ν er) |
 *
 * E = π ∫ [D (w″² + (w′/r)² + 2ν w″w′/r) + C (er² + et² + 2ν er et)] r dr; f = dE/dx, K = df/dx:
 *   f_w = K_bending w + ∫ Nr s φ′ dA            f_u = ∫ (Nr ψ′ + Nt ψ/r) dA
 *   K_ww += ∫ (Nr + C s²) φ′φ′ dA,  K_wu = ∫ C s φ′ (ψ′ + ν ψ/r) dA,  K_uu = K_membrane
 * Source: von Kármán plate, Timoshenko & Woinowsky-Krieger 1959, section 100; Hermite elements own derivation.
 */
import { GAUSS_POINTS } from './hermite-tables.ts';
import type { Plate } from './plate.ts';

/** Where the shapes (value, slope inside; value, slope outside) of w and u sit among the unknowns of an element. */
const W_AT = { 2: Int32Array.of(0, 1, 2, 3), 4: Int32Array.of(0, 1, 4, 5) } as const;
const U_AT = Int32Array.of(2, 3, 6, 7);

/**
 * - `exact`: the true tangent, which may have negative eigenvalues.
 * - `stiffened`: compressive Nr is left out of K_ww; always positive definite, so a descent direction of the energy.
 */
export type Tangent = 'exact' | 'stiffened';

const kww = new Float64Array(16);
const kwu = new Float64Array(16);

/** Fills `plate.internal` and `plate.band` (fixed unknowns uncoupled) from `plate.x`. */
export function assembleTangent(plate: Plate, tangent: Tangent): void {
  const { nodes, b, band, internal } = plate;
  band.fill(0);
  internal.fill(0);
  for (let e = 0; e < nodes - 1; e++) {
    kww.set(plate.bending.subarray(e * 16, e * 16 + 16));
    addBendingForce(plate, e);
    if (plate.d === 4) {
      kwu.fill(0);
      addStretching(plate, e, tangent);
      scatterStretching(plate, e);
    }
    scatter(band, b, e * plate.d, kww, W_AT[plate.d], W_AT[plate.d]);
  }
  // Without it the tangent of a free ring is singular; as it adds no force, a balanced state does not feel it.
  band[b] += plate.tether_N_m;
  for (const { node, rate_N_m } of plate.springs) band[node * plate.d * (b + 1) + b] += rate_N_m;
  addSpringForces(plate);
  for (const f of plate.fixed) uncouple(plate, f);
}

/** Fills `plate.internal` alone, for checks and line searches. */
export function assembleInternal(plate: Plate): void {
  plate.internal.fill(0);
  for (let e = 0; e < plate.nodes - 1; e++) {
    addBendingForce(plate, e);
    if (plate.d === 4) addStretchingForce(plate, e);
  }
  addSpringForces(plate);
}

/** Energy of plate and springs at `plate.x`, from the unloaded plate [J]. */
export function strainEnergy(plate: Plate): number {
  const { x, d, bending } = plate;
  const at = W_AT[d];
  let twice = 0;
  for (let e = 0; e < plate.nodes - 1; e++) {
    const base = e * d;
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < 4; j++) twice += x[base + at[i]] * bending[e * 16 + i * 4 + j] * x[base + at[j]];
    }
    if (d === 4) twice += twiceStretchingEnergy(plate, e);
  }
  for (const { node, rate_N_m, preload_N } of plate.springs) {
    const w = x[node * d];
    twice += (rate_N_m * w + 2 * preload_N) * w;
  }
  return twice / 2;
}

function addSpringForces({ springs, internal, x, d }: Plate): void {
  for (const { node, rate_N_m, preload_N } of springs) internal[node * d] += preload_N + rate_N_m * x[node * d];
}

function addBendingForce(plate: Plate, e: number): void {
  const { x, internal, bending, d } = plate;
  const at = W_AT[d];
  const base = e * d;
  for (let i = 0; i < 4; i++) {
    let f = 0;
    for (let j = 0; j < 4; j++) f += bending[e * 16 + i * 4 + j] * x[base + at[j]];
    internal[base + at[i]] += f;
  }
}

/** Adds the membrane part of force and tangent of element e; the tangent goes to kww and kwu. */
function addStretching(plate: Plate, e: number, tangent: Tangent): void {
  const { tables, x, internal, C, nu } = plate;
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
    addOuter(h0, h1, h2, h3, gww, gwu, h0 + nu * p0, h1 + nu * p1, h2 + nu * p2, h3 + nu * p3);
  }
}

/** kww += gww h hᵀ and kwu += gwu h vᵀ, written out since it is the innermost kernel. */
function addOuter(
  h0: number,
  h1: number,
  h2: number,
  h3: number,
  gww: number,
  gwu: number,
  v0: number,
  v1: number,
  v2: number,
  v3: number,
): void {
  addRow(0, h0, h0, h1, h2, h3, gww, gwu, v0, v1, v2, v3);
  addRow(4, h1, h0, h1, h2, h3, gww, gwu, v0, v1, v2, v3);
  addRow(8, h2, h0, h1, h2, h3, gww, gwu, v0, v1, v2, v3);
  addRow(12, h3, h0, h1, h2, h3, gww, gwu, v0, v1, v2, v3);
}

function addRow(
  at: number,
  h: number,
  h0: number,
  h1: number,
  h2: number,
  h3: number,
  gww: number,
  gwu: number,
  v0: number,
  v1: number,
  v2: number,
  v3: number,
): void {
  const a = gww * h;
  kww[at] += a * h0;
  kww[at + 1] += a * h1;
  kww[at + 2] += a * h2;
  kww[at + 3] += a * h3;
  const c = gwu * h;
  kwu[at] += c * v0;
  kwu[at + 1] += c * v1;
  kwu[at + 2] += c * v2;
  kwu[at + 3] += c * v3;
}

function addStretchingForce(plate: Plate, e: number): void {
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

function twiceStretchingEnergy(plate: Plate, e: number): number {
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

function scatterStretching(plate: Plate, e: number): void {
  const { band, b } = plate;
  scatter(band, b, e * 4, kwu, W_AT[4], U_AT);
  scatter(band, b, e * 4, plate.membrane.subarray(e * 16, e * 16 + 16), U_AT, U_AT);
}

/** Adds a 4×4 block to the lower band; of a diagonal block (same rows and columns) only the lower half. */
function scatter(
  band: Float64Array,
  b: number,
  base: number,
  k: Float64Array,
  rows: Int32Array,
  cols: Int32Array,
): void {
  for (let i = 0; i < 4; i++) {
    for (let j = 0; j < 4; j++) {
      const p = rows[i];
      const q = cols[j];
      if (rows === cols && q > p) continue;
      const low = p > q ? p : q;
      band[(base + low) * (b + 1) + b - Math.abs(p - q)] += k[i * 4 + j];
    }
  }
}

/** Removes the coupling of unknown f, which its edge holds; the diagonal stays so that the scale of the matrix does. */
function uncouple(plate: Plate, f: number): void {
  const { band, b, size } = plate;
  for (let k = 1; k <= b; k++) {
    if (f - k >= 0) band[f * (b + 1) + b - k] = 0;
    if (f + k < size) band[(f + k) * (b + 1) + b - k] = 0;
  }
}
