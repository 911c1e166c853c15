/**
 * A thin annular plate that repeats itself n times round the circle: its unknowns, rigidities and storage.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | D, C | N·m, N/m | bending and stretching rigidity, summed over merged shims |
 * | nu | - | Poisson's ratio |
 * | x, f | - | unknowns node by node, see periodic-layout.ts; generalised force dE/dx |
 *
 * Source: docs/theory-port-periodic.md.
 */
import { GAUSS_POINTS, type HermiteTables } from '../hermite-tables.ts';
import type { PlateSpring } from '../plate.ts';
import type { CircleBasis } from './circle-basis.ts';
import { bendingBlocks, membraneBlocks } from './periodic-elements.ts';
import { type PeriodicLayout, periodicLayout } from './periodic-layout.ts';

export interface PeriodicPlate {
  readonly tables: HermiteTables;
  readonly basis: CircleBasis;
  readonly layout: PeriodicLayout;
  /** Mesh node of the inner edge, and how many nodes. */
  readonly first: number;
  readonly nodes: number;
  readonly size: number;
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  readonly fixed: Int32Array;
  readonly initialSlope: number;
  readonly springs: readonly PlateSpring[];
  /** Bending stiffness of the elements, (4 lifts)² numbers each. */
  readonly bending: Float64Array;
  /** Lower band of the tangent of the flat, unloaded plate, with springs and tether. */
  readonly rest: Float64Array;
  readonly x: Float64Array;
  readonly unitLoad: Float64Array;
  readonly internal: Float64Array;
  readonly band: Float64Array;
  /** At each point in r and φ: slopes along r and round the circle, and the membrane forces times the area of the point. */
  readonly state: Float64Array;
}

/** Numbers a point in `state`: w_r, w_θ/r, N_r, N_θ, N_rθ. */
export const STATE = 5;

export interface PeriodicPlateDescription {
  readonly first: number;
  readonly nodes: number;
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  readonly clamped: boolean;
  readonly initialSlope: number;
  readonly springs: readonly PlateSpring[];
  /** Stiffness that the tangent, but not the force, gets at the inner edge of a ring [N/m]. */
  readonly tether_N_m: number;
}

export function createPeriodicPlate(
  tables: HermiteTables,
  basis: CircleBasis,
  description: PeriodicPlateDescription,
): PeriodicPlate {
  const { nodes, first, D, C, nu, springs, clamped } = description;
  const layout = periodicLayout(basis);
  const size = nodes * layout.perNode;
  const bending = bendingBlocks(tables, basis, first, nodes - 1, nu).map((k) => k * D);
  const rest = new Float64Array(size * (layout.b + 1));
  scatter(rest, layout, bending, 4 * basis.lifts, 0);
  const membrane = membraneBlocks(tables, basis, first, nodes - 1, nu).map((k) => k * C);
  scatter(rest, layout, membrane, 4 * (basis.outs + basis.turns), 4 * basis.lifts);
  // Without it the tangent of a free ring is singular; as it adds no force, a balanced state does not feel it.
  addOnMean(rest, basis, layout, 0, description.tether_N_m);
  for (const { node, rate_N_m } of springs) addOnMean(rest, basis, layout, node, rate_N_m);
  return {
    tables,
    basis,
    layout,
    first,
    nodes,
    size,
    D,
    C,
    nu,
    fixed: clamped ? clampedUnknowns(basis, layout) : new Int32Array(0),
    initialSlope: description.initialSlope,
    springs,
    bending,
    rest,
    x: new Float64Array(size),
    unitLoad: new Float64Array(size),
    internal: new Float64Array(size),
    band: new Float64Array(rest.length),
    state: new Float64Array((nodes - 1) * GAUSS_POINTS * basis.points * STATE),
  };
}

/** A clamp holds w, w′, u and v; not u′ and v′. */
function clampedUnknowns({ lifts }: CircleBasis, { slots, fields }: PeriodicLayout): Int32Array {
  const held: number[] = [];
  for (let f = 0; f < fields; f++) {
    held.push(slots[2 * f]);
    if (f < lifts) held.push(slots[2 * f + 1]);
  }
  return Int32Array.from(held);
}

/** A stiffness of the mean lift of one node. */
function addOnMean(band: Float64Array, { mean, lifts }: CircleBasis, layout: PeriodicLayout, node: number, k: number) {
  const { d, b, perNode } = layout;
  for (let i = 0; i < lifts; i++) {
    for (let j = 0; j <= i; j++) {
      band[(node * perNode + i * d) * (b + 1) + b - (i - j) * d] += k * mean[i] * mean[j];
    }
  }
}

/** Adds the lower half of square blocks, one an element, to a lower band. @param from first entry of `layout.at` */
function scatter(band: Float64Array, layout: PeriodicLayout, blocks: Float64Array, size: number, from: number): void {
  const { at, b, perNode } = layout;
  for (let k = 0; k < blocks.length; k++) {
    const e = Math.floor(k / (size * size));
    const [p, q] = [at[from + (Math.floor(k / size) % size)], at[from + (k % size)]];
    if (q <= p) band[(e * perNode + p) * (b + 1) + b - (p - q)] += blocks[k];
  }
}
