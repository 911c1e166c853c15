/**
 * Load of the ports on a periodic plate: the pressure of the ring on what the ports open, a crest at each port.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | f | - | share of the circumference that the ports open |
 * | k | - | ports a period |
 * | P_h | - | mean round the circle of (pressure share) cos hφ: f for h = 0, sin(m f π)/(m π) for h = m k, else 0 |
 * | ε | - | imperfection: a load on the first harmonic that k ports do not make, as a share of f |
 */
import type { HermiteTables } from '../hermite-tables.ts';
import { addElementPressure, type PressureRing } from '../pressure-load.ts';
import type { CircleBasis } from './circle-basis.ts';
import type { PeriodicPlate } from './periodic-plate.ts';

export interface PortLoad {
  readonly covered: number;
  /** Ports a period; 0 for a groove all round. */
  readonly portsPerPeriod: number;
  readonly imperfection: number;
}

/** Share of a unit ring load that works on each lift of a node. */
export function loadShares({ M, lifts, harmonics }: CircleBasis, load: PortLoad): Float64Array {
  const P = Float64Array.from({ length: M + 1 }, (_, h) => harmonicOf(load, h));
  return Float64Array.from({ length: lifts }, (_, j) => P.reduce((s, p, h) => s + p * harmonics[j * (M + 1) + h], 0));
}

function harmonicOf({ covered: f, portsPerPeriod: k, imperfection }: PortLoad, h: number): number {
  if (h === 0) return f;
  const m = k === 0 ? 0 : h / k;
  if (m > 0 && Number.isInteger(m)) return Math.sin(m * f * Math.PI) / (m * Math.PI);
  // Half, as for every other harmonic: the mean of cos² is a half.
  return h === 1 ? (imperfection * f) / 2 : 0;
}

/** Adds the load of one mesh element to the plate; `ring` spread evenly over the whole circle. */
export function addPeriodicPressure(
  plate: PeriodicPlate,
  tables: HermiteTables,
  ring: PressureRing,
  element: number,
  shares: Float64Array,
): void {
  const { layout, unitLoad, first } = plate;
  const { at, perNode } = layout;
  const radial = new Float64Array(4);
  addElementPressure(tables, ring, element, 2, radial, element);
  const base = (element - first) * perNode;
  for (let j = 0; j < shares.length; j++) {
    for (let i = 0; i < 4; i++) unitLoad[base + at[4 * j + i]] += shares[j] * radial[i];
  }
}
