/**
 * Internal force, tangent and energy of an annular plate, small deflection (Kirchhoff) or large (von Kármán).
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | E | J | energy of plate and springs |
 * | f | N, N·m | generalised internal force dE/dx |
 * | K | N/m … | tangent df/dx |
 *
 * E = π ∫ D (w″² + (w′/r)² + 2ν w″w′/r) r dr + stretching (stretching.ts) + springs.
 * Source: Timoshenko & Woinowsky-Krieger 1959, sections 16 and 100; Hermite elements own derivation.
 */
import { U_AT, W_AT } from './element-unknowns.ts';
import type { Plate } from './plate.ts';
import { addStretching, addStretchingForce, type Tangent, twiceStretchingEnergy } from './stretching.ts';

export { membraneStrains, type Tangent } from './stretching.ts';

/** Fills `plate.internal` and `plate.band` (fixed unknowns uncoupled) from `plate.x`. */
export function assembleTangent(plate: Plate, tangent: Tangent): void {
  const { nodes, b, band, internal, kww, kwu } = plate;
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

function scatterStretching(plate: Plate, e: number): void {
  const { band, b, kwu } = plate;
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
