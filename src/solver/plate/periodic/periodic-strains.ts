/**
 * Curvatures and mid-surface strains along one radius of a periodic plate in balance, from the forces in its cuts.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | φ | rad | nθ of the radius |
 * | Mr, Nr | N, N/m | radial moment and membrane force per length |
 * | F | N·m, N | generalised force of one element on a slope or an in-plane value of its node |
 * | l | m³ | what a unit pressure on that element adds to the force on the slope |
 * | kr, kt | 1/m | w_rr, and w_r/r + w_θθ/r² |
 * | er, et | - | mid-surface strains |
 *
 * As in section-strains.ts, harmonic by harmonic: 2π r times the mean of Mr cos kφ round the circle is what the element
 * inside exerts on the slope of harmonic k, less the pressure's share. Then kr = Mr/D - ν kt and er = Nr/C - ν et.
 */
import { addElementPressure, type PressureRing } from '../pressure-load.ts';
import type { SectionStrains } from '../section-strains.ts';
import { elementForce } from './periodic-force.ts';
import type { PeriodicPlate } from './periodic-plate.ts';

/** Harmonics of Mr and Nr at every node: rows by node. */
export interface PeriodicCuts {
  readonly moments: Float64Array;
  readonly pulls: Float64Array;
}

/**
 * @param plate in balance under p
 * @param shares of a unit ring load on each lift, see periodic-load.ts
 * @param isLoaded which elements of the mesh the plate carries the pressure on
 */
export function periodicCuts(
  plate: PeriodicPlate,
  p: number,
  ring: PressureRing,
  shares: Float64Array,
  isLoaded: (element: number) => boolean,
): PeriodicCuts {
  const { nodes, basis, layout, tables, first } = plate;
  const { lifts, outs, M } = basis;
  const moments = new Float64Array(nodes * lifts);
  const pulls = new Float64Array(nodes * outs);
  const load = new Float64Array(4);
  for (let n = 0; n < nodes; n++) {
    const e = Math.max(0, n - 1);
    const end = n === 0 ? 0 : 2;
    const F = elementForce(plate, e);
    load.fill(0);
    if (isLoaded(first + e)) addElementPressure(tables, { ...ring, covered: 1 }, first + e, 2, load, first + e);
    const circumference = (n === 0 ? -1 : 1) * 2 * Math.PI * tables.radius_m[first + n];
    for (let k = 0; k < lifts; k++) {
      let sum = 0;
      for (let j = 0; j < lifts; j++) {
        const onSlope = F[layout.at[4 * j + end + 1]] - p * shares[j] * load[end + 1];
        sum += onSlope * Math.cos((j * k * Math.PI) / M);
      }
      moments[n * lifts + k] = ((k === 0 ? 1 : 2) * sum) / circumference;
    }
    for (let m = 0; m < outs; m++) {
      pulls[n * outs + m] = ((m === 0 ? 1 : 2) * F[layout.at[4 * (lifts + m) + end]]) / circumference;
    }
  }
  return { moments, pulls };
}

/** One number a node along the radius at φ. */
export function strainsAlong(plate: PeriodicPlate, { moments, pulls }: PeriodicCuts, phi: number): SectionStrains {
  const { nodes, D, C, nu, basis, tables, first } = plate;
  const { lifts, outs } = basis;
  const [kr, kt, er, et] = [0, 1, 2, 3].map(() => new Float64Array(nodes));
  for (let n = 0; n < nodes; n++) {
    const ri = 1 / tables.radius_m[first + n];
    const { slope, turn, turn2, stretch } = fieldsAt(plate, n, phi);
    kt[n] = (slope + turn2 * ri) * ri;
    et[n] = stretch * ri + (turn * ri) ** 2 / 2;
    for (let k = 0; k < lifts; k++) kr[n] += (moments[n * lifts + k] * Math.cos(k * phi)) / D;
    for (let m = 0; m < outs; m++) er[n] += (pulls[n * outs + m] * Math.cos(m * phi)) / C;
    kr[n] -= nu * kt[n];
    er[n] -= nu * et[n];
  }
  return { kr, kt, er, et };
}

/** w_r, w_θ, w_θθ and u + v_θ of a node at φ. */
function fieldsAt({ x, layout, basis }: PeriodicPlate, node: number, phi: number) {
  const { lifts, outs, turns, waves, harmonics, M } = basis;
  const value = (f: number) => x[node * layout.perNode + layout.slots[2 * f]];
  let [slope, turn, turn2, stretch] = [0, 0, 0, 0];
  for (let j = 0; j < lifts; j++) {
    const d = x[node * layout.perNode + layout.slots[2 * j + 1]];
    for (let k = 0; k < lifts; k++) {
      const c = harmonics[j * (M + 1) + k];
      slope += d * c * Math.cos(k * phi);
      turn -= value(j) * c * k * waves * Math.sin(k * phi);
      turn2 -= value(j) * c * (k * waves) ** 2 * Math.cos(k * phi);
    }
  }
  for (let m = 0; m < outs; m++) stretch += value(lifts + m) * Math.cos(m * phi);
  for (let m = 1; m <= turns; m++) stretch += value(lifts + outs + m - 1) * m * waves * Math.cos(m * phi);
  return { slope, turn, turn2, stretch };
}
