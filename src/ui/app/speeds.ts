/** The shaft speeds that are solved: close together at low speed, where a curve bends most. */

/** Points each way. */
export const POINTS_PER_DIRECTION = 32;
/** Spacing grows with this power of the place in the list; 1 would be even. */
const CROWDING = 1.7;

/** Rising from 0 (left out: there friction has no direction) to `top` [m/s]. */
export const speedsUpTo = (top_m_s: number): number[] =>
  Array.from({ length: POINTS_PER_DIRECTION }, (_, i) => top_m_s * ((i + 1) / POINTS_PER_DIRECTION) ** CROWDING);

/** Both directions, rising: rebound below 0, compression above. */
export function solvedSpeeds(top_m_s: number): number[] {
  const speeds = speedsUpTo(top_m_s);
  return [...speeds.map((speed) => -speed).reverse(), ...speeds];
}
