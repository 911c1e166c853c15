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
import { W_AT } from './element-unknowns.ts';
import type { Plate } from './plate.ts';
import { addStretchingForce, addStretchingTangent, type Tangent, twiceStretchingEnergy } from './stretching.ts';

export { membraneStrains, type Tangent } from './stretching.ts';

/** Fills `plate.internal` and `plate.band` (fixed unknowns uncoupled) from `plate.x`. */
export function assembleTangent(plate: Plate, tangent: Tangent): void {
  assembleInternal(plate);
  assembleBand(plate, tangent);
}

/** Fills `plate.internal` alone. */
export function assembleInternal(plate: Plate): void {
  plate.internal.fill(0);
  for (let e = 0; e < plate.nodes - 1; e++) {
    addBendingForce(plate, e);
    if (plate.d === 4) addStretchingForce(plate, e);
  }
  addSpringForces(plate);
}

/** Fills `plate.band` alone, at the state for which `plate.internal` was filled last. */
export function assembleBand(plate: Plate, tangent: Tangent): void {
  plate.band.set(plate.rest);
  if (plate.d === 4) for (let e = 0; e < plate.nodes - 1; e++) addStretchingTangent(plate, e, tangent);
  for (const f of plate.fixed) uncouple(plate, f);
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
  const x0 = x[base];
  const x1 = x[base + 1];
  const x2 = x[base + d];
  const x3 = x[base + d + 1];
  for (let i = 0; i < 4; i++) {
    const k = e * 16 + i * 4;
    internal[base + at[i]] += bending[k] * x0 + bending[k + 1] * x1 + bending[k + 2] * x2 + bending[k + 3] * x3;
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
