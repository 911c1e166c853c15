/**
 * Bending moments at the nodes of a plate, from the forces its elements exert on their nodes.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | Mr, Mt | N | radial and hoop moment per length, + with the piston side in tension |
 * | f1 | N·m | moment an element puts on its inner node: bending force of the slope there less the load on it |
 * | D, nu | N·m, - | rigidity, Poisson's ratio |
 *
 * Mr = -f1 / 2πr (equilibrium of the element's inner edge), far more accurate than D (w″ + ν w′/r) of cubic shapes;
 * Mt = ν Mr + D (1 - ν²) w′/r.
 * Source: Hughes, The Finite Element Method, 2000, section 1.10 (consistent end forces); small deflection only.
 */

import type { Plate } from '../solver/plate/plate.ts';
import { addElementPressure } from '../solver/plate/pressure-load.ts';

export interface PlateMoments {
  /** Radial and hoop moment at every node, length nodes. */
  readonly radial: Float64Array;
  readonly hoop: Float64Array;
}

/** @param plate solved for small deflection @param pressure on the whole plate, 0 under edge forces */
export function nodalMoments(plate: Plate, pressure: number): PlateMoments {
  const { nodes, tables, x, d, D, nu } = plate;
  const radial = new Float64Array(nodes);
  const hoop = new Float64Array(nodes);
  for (let i = 0; i < nodes; i++) {
    const r = tables.radius_m[i];
    const [e, row, side] = i < nodes - 1 ? [i, 1, -1] : [i - 1, 3, 1];
    radial[i] = (side * elementMoment(plate, e, row, pressure)) / (2 * Math.PI * r);
    hoop[i] = nu * radial[i] + (D * (1 - nu ** 2) * x[i * d + 1]) / r;
  }
  return { radial, hoop };
}

function elementMoment({ tables, bending, x, d, size }: Plate, e: number, row: number, pressure: number): number {
  const at = [e * d, e * d + 1, (e + 1) * d, (e + 1) * d + 1];
  let moment = 0;
  for (let j = 0; j < 4; j++) moment += bending[e * 16 + row * 4 + j] * x[at[j]];
  if (pressure === 0) return moment;
  const load = new Float64Array(size);
  addElementPressure(tables, { inner_m: 0, outer_m: Number.MAX_VALUE, end_m: Number.MAX_VALUE }, e, d, load);
  return moment - pressure * load[at[row]];
}
