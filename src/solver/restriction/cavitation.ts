/**
 * Cavitating orifice: the pressure in the neck of the jet falls to the vapour pressure, and from there on the flow no longer
 * depends on the pressure behind the orifice. Its coefficient is then
 *   Cd = 0.62 sqrt(K),   K = (p1 - pv) / (p1 - p2),
 * and it does so where this is less than the coefficient without cavitation; so it passes 0.62 A sqrt(2 (p1 - pv) / rho) at
 * most. Source: Nurick 1976 (from memory), sharp-edged
 * holes. The vapour pressure of oil, far below 1 kPa, counts as 0. Left out: air that comes out of the oil before, and rounded edges,
 * which put cavitation off.
 *
 * symbol  unit  meaning
 * p1, p2  Pa    absolute pressures before and behind the orifice
 * pv      Pa    vapour pressure
 * A       m2    area of the orifice
 * K       -     cavitation number: 1 for a vacuum behind the orifice, large for a small drop
 */

/** Contraction of the cavitating jet. */
const CONTRACTION = 0.62;

/** Cavitation number of an orifice with a drop above 0. */
export const cavitationNumber = (upstream_Pa: number, downstream_Pa: number): number =>
  upstream_Pa / (upstream_Pa - downstream_Pa);

/** Discharge coefficient of the cavitating jet at a cavitation number K. */
export const cavitatingCoefficient = (K: number): number => CONTRACTION * Math.sqrt(K);

/** Whether an orifice with the coefficient `Cd` without cavitation cavitates between two absolute pressures. */
export function cavitates(Cd: number, upstream_Pa: number, downstream_Pa: number): boolean {
  if (!(upstream_Pa > downstream_Pa)) return false;
  return cavitatingCoefficient(cavitationNumber(upstream_Pa, downstream_Pa)) < Cd;
}

/** Flow that an orifice passes at most [m3/s], whatever the pressure behind it. */
export const chokedFlow = (area_m2: number, upstream_Pa: number, density_kg_m3: number): number =>
  CONTRACTION * area_m2 * Math.sqrt((2 * upstream_Pa) / density_kg_m3);
