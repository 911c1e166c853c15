/**
 * One thin annular plate on a radial mesh: its unknowns, its rigidities and the storage that its solves reuse.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | D | N·m | bending rigidity E t³ / 12 (1 - ν²), summed over merged shims |
 * | C | N/m | stretching rigidity E t / (1 - ν²), summed likewise |
 * | nu | - | Poisson's ratio |
 * | d | - | unknowns a node: 2 (w, w′) for small deflection, 4 (w, w′, u, u′) for large |
 * | x | m, - | the unknowns, node by node |
 * | f | N, N·m | generalised internal force dE/dx |
 *
 * A merged plate of shims with equal rim and equal ν has ΣD and ΣC: they share w, and the in-plane equilibrium of u
 * does not contain the thickness, so they share u as well.
 */
import type { AxisymmetricTheory } from '../types.ts';
import { bendingElementMatrices, membraneElementMatrices } from './element-matrices.ts';
import { U_AT, W_AT } from './element-unknowns.ts';
import { GAUSS_POINTS, type HermiteTables } from './hermite-tables.ts';

export interface Plate {
  readonly tables: HermiteTables;
  readonly theory: AxisymmetricTheory;
  /** Mesh node of the inner edge; 0 for every plate on the clamp. */
  readonly first: number;
  /** Nodes of the plate, numbered from its inner edge; its elements are nodes - 1 of the mesh from `first` on. */
  readonly nodes: number;
  readonly d: 2 | 4;
  /** Unknowns in all, nodes d. */
  readonly size: number;
  /** Half bandwidth, 2 d - 1. */
  readonly b: number;
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  /** Indices of the unknowns that an edge holds at nothing. */
  readonly fixed: Int32Array;
  /** Slope of the unloaded mid-surface, the same from bore to rim (a coned shim) [-]. */
  readonly initialSlope: number;
  readonly springs: readonly PlateSpring[];
  /** D times the unit bending matrices, 16 an element. */
  readonly bending: Float64Array;
  /** Lower band of the tangent of the flat, unloaded plate, with springs and tether. */
  readonly rest: Float64Array;
  readonly x: Float64Array;
  /** Generalised force of a unit pressure on the plate's part of the load. */
  readonly unitLoad: Float64Array;
  readonly internal: Float64Array;
  /** Whole slope, and radial force times the area that counts for it, at each Gauss point; large deflection only [-, N]. */
  readonly slope: Float64Array;
  readonly pull: Float64Array;
  /** Lower band of the tangent, then its factor. */
  readonly band: Float64Array;
}

/** An axial spring to ground along the circle of one node. */
export interface PlateSpring {
  readonly node: number;
  readonly rate_N_m: number;
  /** Force at rest, towards the piston [N]. */
  readonly preload_N: number;
}

export interface PlateDescription {
  readonly first?: number;
  readonly springs?: readonly PlateSpring[];
  /** Stiffness that the tangent, but not the force, gets at the inner edge of a plate that nothing clamps [N/m]. */
  readonly tether_N_m?: number;
  readonly nodes: number;
  readonly D: number;
  readonly C: number;
  readonly nu: number;
  readonly fixed: readonly number[];
  readonly initialSlope?: number;
}

/** Unknowns a node has under a theory. */
export function unknownsPerNode(theory: AxisymmetricTheory): 2 | 4 {
  return theory === 'large-deflection' ? 4 : 2;
}

/** What an inner clamp holds at node 0: w and w′, and under large deflection u. */
export function clampedInnerEdge(theory: AxisymmetricTheory): number[] {
  return theory === 'large-deflection' ? [0, 1, 2] : [0, 1];
}

export function createPlate(tables: HermiteTables, theory: AxisymmetricTheory, description: PlateDescription): Plate {
  const { nodes, D, C, nu, first = 0 } = description;
  const d = unknownsPerNode(theory);
  const size = nodes * d;
  const b = 2 * d - 1;
  const points = d === 4 ? (nodes - 1) * GAUSS_POINTS : 0;
  const { springs = [], tether_N_m = 0 } = description;
  const bending = bendingElementMatrices(tables, first, nodes - 1, nu).map((k) => k * D);
  const rest = new Float64Array(size * (b + 1));
  scatter(rest, b, bending, W_AT[d]);
  if (d === 4)
    scatter(
      rest,
      b,
      membraneElementMatrices(tables, first, nodes - 1, nu).map((k) => k * C),
      U_AT,
    );
  // Without it the tangent of a free ring is singular; as it adds no force, a balanced state does not feel it.
  rest[b] += tether_N_m;
  for (const { node, rate_N_m } of springs) rest[node * d * (b + 1) + b] += rate_N_m;
  return {
    tables,
    theory,
    first,
    nodes,
    d,
    size,
    b,
    D,
    C,
    nu,
    fixed: Int32Array.from(description.fixed),
    initialSlope: description.initialSlope ?? 0,
    springs,
    bending,
    rest,
    x: new Float64Array(size),
    unitLoad: new Float64Array(size),
    internal: new Float64Array(size),
    slope: new Float64Array(points),
    pull: new Float64Array(points),
    band: new Float64Array(size * (b + 1)),
  };
}

/** Adds the lower half of 4×4 blocks, 16 numbers an element, to a lower band; `at` places their rows in the first one. */
function scatter(band: Float64Array, b: number, blocks: Float64Array, at: Int32Array): void {
  const d = (b + 1) / 2;
  for (let k = 0; k < blocks.length; k++) {
    const [e, p, q] = [Math.floor(k / 16), at[(k % 16) >> 2], at[k & 3]];
    if (q <= p) band[(e * d + p) * (b + 1) + b - (p - q)] += blocks[k];
  }
}
