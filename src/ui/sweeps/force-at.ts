/** The force at a speed out of the forces at all speeds: a look-up, no mechanics. */
import type { SpeedForces } from '../../../workers/protocol.ts';
import type { Direction } from '../app/places.ts';
import { bracket } from '../section/shape-at.ts';

/** The force at a speed (>= 0) in one direction: between two solved speeds, straight; null where one did not solve. */
export function forceAt(
  { shaftSpeed_m_s, force_N, gasForce_N }: SpeedForces,
  way: Direction,
  speed_m_s: number,
  withoutGas: boolean,
): number | null {
  const places = [...shaftSpeed_m_s.keys()]
    .filter((i) => shaftSpeed_m_s[i] * way > 0)
    .sort((a, b) => Math.abs(shaftSpeed_m_s[a]) - Math.abs(shaftSpeed_m_s[b]));
  if (places.length === 0) return null;
  const { low, high, share } = bracket(
    places.map((i) => Math.abs(shaftSpeed_m_s[i])),
    speed_m_s,
  );
  const [a, b] = [places[low], places[high]].map((i) => {
    const [force, gas] = [force_N[i], gasForce_N[i]];
    return force === null || gas === null ? null : force - (withoutGas ? gas : 0);
  });
  return a === null || b === null ? null : a + (b - a) * share;
}
