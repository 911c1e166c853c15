/**
 * Curvatures and mid-surface strains of a solved plate at its nodes, from the moment and the membrane force that balance
 * each element.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | Mr, Nr | N, N/m | radial moment (piston side in tension: +) and membrane force per length |
 * | f, l | N·m, m³ | generalised force of one element on the slope of a node, and what a unit pressure on it adds there |
 * | p | Pa | pressure on the ring |
 * | kr, kt | 1/m | curvatures w″ and w′/r |
 * | er, et | - | mid-surface strains |
 *
 * Cut the plate along the circle of a node. What the element inside exerts there on the slope and on u is
 *   2π r Mr = f_slope - p l_slope,   2π r Nr = f_u
 * (contact and springs act on w alone), and then kr = Mr/D - ν kt, er = Nr/C - ν et, with kt and et from the nodal
 * values. These have the accuracy of the nodal values, while the second derivative of the shapes loses two orders.
 * Source: Hughes, The Finite Element Method, 2000, section 2.12 (consistent fluxes); at the clamp as surface-stress.ts.
 */
import { W_AT } from './element-unknowns.ts';
import { GAUSS_POINTS } from './hermite-tables.ts';
import type { Plate } from './plate.ts';
import { addElementPressure, type PressureRing } from './pressure-load.ts';
import { membraneStrains } from './stretching.ts';

/** One number a node of the plate, from its inner edge. */
export interface SectionStrains {
  readonly kr: Float64Array;
  readonly kt: Float64Array;
  readonly er: Float64Array;
  readonly et: Float64Array;
}

/**
 * Share l of the pressure at the cut of every node, in the element inside it (outside it at the inner edge).
 * @param isLoaded which elements of the mesh the plate carries the pressure on
 */
export function cutLoads(
  { nodes, first, tables }: Plate,
  ring: PressureRing,
  isLoaded: (element: number) => boolean,
): Float64Array {
  const loads = new Float64Array(nodes);
  const load = new Float64Array(4);
  for (let n = 0; n < nodes; n++) {
    const e = first + Math.max(0, n - 1);
    load.fill(0);
    if (isLoaded(e)) addElementPressure(tables, ring, e, 2, load, e);
    loads[n] = load[n === 0 ? 1 : 3];
  }
  return loads;
}

/** @param plate in balance under p and contact forces at its nodes; its storage is left as it was @param loads of its cuts */
export function sectionStrains(plate: Plate, p: number, loads: Float64Array): SectionStrains {
  const { nodes, d, x, D, C, nu, first, tables } = plate;
  const [kr, kt, er, et] = [0, 1, 2, 3].map(() => new Float64Array(nodes));
  for (let n = 0; n < nodes; n++) {
    const r = tables.radius_m[first + n];
    const { Mr, Nr } = cutForces(plate, p * loads[n], n);
    kt[n] = x[n * d + 1] / r;
    kr[n] = Mr / D - nu * kt[n];
    if (d === 2) continue;
    et[n] = x[n * d + 2] / r;
    er[n] = Nr / C - nu * et[n];
  }
  return { kr, kt, er, et };
}

/** Moment and membrane force per length at node n: of the element inside it, at the inner edge of the one outside. */
function cutForces(plate: Plate, load: number, n: number): { Mr: number; Nr: number } {
  const end = n === 0 ? 0 : 1;
  const { slope, stretch } = elementForce(plate, Math.max(0, n - 1), end);
  const circumference = (end === 0 ? -1 : 1) * 2 * Math.PI * plate.tables.radius_m[plate.first + n];
  return { Mr: (slope - load) / circumference, Nr: stretch / circumference };
}

/** Generalised force of element e on the slope and on u of one of its ends. */
function elementForce(plate: Plate, e: number, end: 0 | 1): { slope: number; stretch: number } {
  const { x, d, bending, C, nu, tables, first } = plate;
  const i = 2 * end;
  let slope = 0;
  let stretch = 0;
  for (let j = 0; j < 4; j++) slope += bending[e * 16 + (i + 1) * 4 + j] * x[e * d + W_AT[d][j]];
  if (d === 2) return { slope, stretch };
  const { d0, d1, rw, rinv } = tables;
  for (let q = (first + e) * GAUSS_POINTS; q < (first + e + 1) * GAUSS_POINTS; q++) {
    const { s, er, et } = membraneStrains(plate, e, q);
    const c = C * rw[q];
    const Nr = c * (er + nu * et);
    const Nt = c * (et + nu * er);
    slope += Nr * s * d1[q * 4 + i + 1];
    stretch += Nr * d1[q * 4 + i] + Nt * d0[q * 4 + i] * rinv[q];
  }
  return { slope, stretch };
}
