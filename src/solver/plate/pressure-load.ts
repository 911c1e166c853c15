/**
 * Generalised forces of a pressure on a ring of a plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | r1, r2, r3 | m | inner edge of the zone, outer edge, edge where the pressure has fallen to nothing |
 * | p | - | pressure as a share of the zone's: 1 from r1 to r2, then ln(r3/r)/ln(r3/r2) |
 * | φ | - | share of the circumference on which it acts, spread evenly |
 *
 * The fall is that of creeping flow between parallel discs; source: Bird, Stewart & Lightfoot, Transport Phenomena
 * (radial flow between discs). Element edges must lie on r1, r2 and r3.
 */
import { GAUSS_POINTS, type HermiteTables } from './hermite-tables.ts';

export interface PressureRing {
  readonly inner_m: number;
  readonly outer_m: number;
  /** Where the pressure has fallen to nothing; equal to `outer_m` when it ends at once. */
  readonly end_m: number;
  /** Share of the circumference on which the pressure acts, spread evenly; 1 when absent. */
  readonly covered?: number;
}

/**
 * Adds ∫ p φ dA of one mesh element to the load of a plate.
 * @param load generalised force of unit pressure, d unknowns a node, added to [m², m³]
 * @param first mesh node of the plate's inner edge
 */
export function addElementPressure(
  t: HermiteTables,
  ring: PressureRing,
  element: number,
  d: number,
  load: Float64Array,
  first = 0,
): void {
  const e = element - first;
  for (let q = element * GAUSS_POINTS; q < (element + 1) * GAUSS_POINTS; q++) {
    const weight = t.rw[q] * pressureShare(ring, 1 / t.rinv[q]);
    load[e * d] += weight * t.d0[q * 4];
    load[e * d + 1] += weight * t.d0[q * 4 + 1];
    load[(e + 1) * d] += weight * t.d0[q * 4 + 2];
    load[(e + 1) * d + 1] += weight * t.d0[q * 4 + 3];
  }
}

/** Pressure at radius r, mean round the circle, as a share of the pressure of the zone. */
export function pressureShare({ inner_m, outer_m, end_m, covered = 1 }: PressureRing, r: number): number {
  if (r < inner_m || r > end_m) return 0;
  return r <= outer_m ? covered : (covered * Math.log(end_m / r)) / Math.log(end_m / outer_m);
}
