/**
 * Damping ratio of a damper whose force is no line through zero, over its shaft speed:
 *   secant   zeta = (F / v) / c_crit     as much damping as a line from rest to here
 *   tangent  zeta = (dF / dv) / c_crit   what a small swing about this speed meets
 * Source: definition of the damping ratio (any text on vibration); which of the two is meant is a choice that must be told.
 *
 * symbol  unit   meaning
 * F       N      force of one damper at its shaft without that of its gas, positive in compression
 * v       m/s    shaft speed, positive in compression
 * c_crit  N s/m  damping of one damper at its shaft that is critical
 */
import { pchipSlopes } from '../numeric/pchip.ts';

export interface DampingRatios {
  /** null where there is no force. */
  readonly secant: readonly (number | null)[];
  readonly tangent: readonly (number | null)[];
}

/**
 * @param speed_m_s strictly rising, never 0, length n  @param force_N length n, null where it is not known
 * @param critical_N_s_m above 0
 * @returns two lists of length n; the slope of a direction is that of a monotone cubic through its points, and needs two
 */
export function dampingRatios(
  speed_m_s: readonly number[],
  force_N: readonly (number | null)[],
  critical_N_s_m: number,
): DampingRatios {
  const secant = speed_m_s.map((speed, i) => {
    const force = force_N[i];
    return force === null ? null : force / speed / critical_N_s_m;
  });
  const tangent: (number | null)[] = speed_m_s.map(() => null);
  for (const way of [1, -1]) {
    const known = speed_m_s.flatMap((speed, i) => {
      const force = force_N[i];
      return speed * way > 0 && force !== null ? [{ i, speed, force }] : [];
    });
    if (known.length < 2) continue;
    const slopes = pchipSlopes(
      known.map(({ speed }) => speed),
      known.map(({ force }) => force),
    );
    for (const [k, { i }] of known.entries()) tangent[i] = slopes[k] / critical_N_s_m;
  }
  return { secant, tangent };
}
