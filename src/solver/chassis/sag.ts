/**
 * Sag: the wheel travel at which the springs hold a load, W(x) = m g. Of several the first from full extension is where the
 * vehicle settles when it is let down.
 * Source: statics; g = 9.80665 m/s2 (standard gravity, ISO 80000-3). Friction, which holds the wheel off on either side, is left out.
 *
 * symbol  unit   meaning
 * W       N      upright force of the springs at the wheel
 * x       m      wheel travel from full extension
 * m, g    kg, m/s2  mass that is carried, gravity
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import type { ChassisInput, Sag } from './types.ts';
import { wheelState } from './wheel-state.ts';

export const STANDARD_GRAVITY_M_S2 = 9.80665;

/** Steps in which the travel is looked through for the first balance. */
const STEPS = 200;

/**
 * @param mass_kg carried by this end, 0 or more
 * @returns the state at the balance; `topped-out` at full extension where the springs hold more there, `bottomed-out` at full
 *   compression where they never hold as much; `not-converged` with the reason when the balance could not be closed in on
 */
export function sagUnder(chassis: ChassisInput, mass_kg: number): Sag {
  const load_N = mass_kg * STANDARD_GRAVITY_M_S2;
  const excess = (x: number): number => wheelState(chassis, x).uprightForce_N - load_N;
  if (excess(0) >= 0) return { status: 'topped-out', state: wheelState(chassis, 0) };
  const places = Array.from({ length: STEPS }, (_, i) => (chassis.wheelTravel_m * (i + 1)) / STEPS);
  const first = places.findIndex((x) => excess(x) >= 0);
  if (first === -1) return { status: 'bottomed-out', state: wheelState(chassis, chassis.wheelTravel_m) };
  const root = bracketedRoot(excess, first === 0 ? 0 : places[first - 1], places[first]);
  if (root.status !== 'converged') return { status: 'not-converged', reason: root.reason };
  return { status: 'balanced', state: wheelState(chassis, root.value) };
}
