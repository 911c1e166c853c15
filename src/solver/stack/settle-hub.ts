/**
 * Rise of a floating hub: the stack lifts bodily against its check spring before it bends further.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | z | m | rise of the hub, from 0 (on its stop) to the travel of the float |
 * | F | N | force of the shims on the hub, away from the piston |
 * | s | N | check spring: preload + rate z |
 * | φ | N | F(z) - s(z), falling with z |
 *
 * On its stop the hub stays while φ(0) <= 0; at the end of the float it stays while φ(travel) >= 0; between, φ(z) = 0.
 * The root is bracketed and found by false position with halved ends (Illinois); source: Dowell & Jarratt, BIT 11
 * (1971) 168-174 (from memory).
 */
import type { FloatInput } from '../types.ts';
import type { BalancedSystem } from './balanced-system.ts';
import { type Equilibrium, GAP_TOLERANCE } from './equilibrate.ts';
import { followPath } from './follow-path.ts';

/** Imbalance of the hub that counts as none, as a share of the spring force or the shims' force. */
const HUB_TOLERANCE = 1e-7;
/** Where contact makes or breaks, the shims' force is known to what the tolerance of gaps is worth: to this share at the least. */
const CONTACT_NOISE = 1e-5;
const HUB_LIMIT = 60;

/** @param system in balance under p at its present rise @returns the balance with the hub settled, or the failure */
export function settleHub(system: BalancedSystem, p: number, float: FloatInput): Equilibrium {
  const at = (z: number): { end: Equilibrium; phi: number } => {
    const end = followPath(system, { p, ramp: 1, rise: system.hubRise_m }, { p, ramp: 1, rise: z });
    return { end, phi: clampForce(system, p) - float.preload_N - float.rate_N_m * z };
  };
  const low = at(0);
  if (low.end.status !== 'converged' || low.phi <= 0) return low.end;
  const high = at(float.travel_m);
  if (high.end.status !== 'converged' || high.phi >= 0) return high.end;
  let [z0, f0, z1, f1] = [0, low.phi, float.travel_m, high.phi];
  for (let i = 0; i < HUB_LIMIT; i++) {
    const z = (z0 * f1 - z1 * f0) / (f1 - f0);
    const { end, phi } = at(z);
    const scale = Math.max(float.preload_N + float.rate_N_m * z, low.phi);
    const tolerance = Math.abs(z1 - z0) <= GAP_TOLERANCE * system.thinnest_m ? CONTACT_NOISE : HUB_TOLERANCE;
    if (end.status !== 'converged' || Math.abs(phi) <= tolerance * scale) return end;
    if (phi < 0 === f1 < 0) f0 /= 2;
    else [z0, f0] = [z1, f1];
    [z1, f1] = [z, phi];
  }
  return { status: 'not-converged', iterations: HUB_LIMIT, residual: Math.abs(f1) / low.phi };
}

/** Force of the clamped shims on the hub, away from the piston [N]. */
export function clampForce({ bodies }: BalancedSystem, p: number): number {
  let sum = 0;
  for (const { unitLoad, internal, held } of bodies) for (const i of held) sum += p * unitLoad[i] - internal[i];
  return sum;
}
