/**
 * One annular plate with any edges, solved by the plate elements of the stack solver without contact: the door through
 * which textbook plates reach them. Dimensionless: rim radius, thickness and Young's modulus are 1.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | b | - | inner radius |
 * | D, C | - | rigidities 1 / 12 (1 - ν²) and 1 / (1 - ν²) |
 * | x | - | unknowns of the plate, see plate.ts |
 * | f | - | load, less what the plate already carries |
 *
 * Newton's method on load steps. Source of the equations: see assemble.ts. Status, never a number, on failure.
 */
import { factorBandedLdl, solveBandedLdl } from '../solver/linalg/banded-ldl.ts';
import { assembleTangent } from '../solver/plate/assemble.ts';
import { buildHermiteTables } from '../solver/plate/hermite-tables.ts';
import { createPlate, type Plate, unknownsPerNode } from '../solver/plate/plate.ts';
import { addElementPressure } from '../solver/plate/pressure-load.ts';
import { buildRadialMesh } from '../solver/plate/radial-mesh.ts';
import type { AxisymmetricTheory } from '../solver/types.ts';

/**
 * What an edge holds of (w, w′, u):
 * `free` nothing; `supported` w; `guided` w′; `clamped` w and w′, and `held` variants u as well; `centre` w′ and u, the
 * middle of a plate without a hole.
 */
export const EDGES = {
  free: [],
  supported: [0],
  'supported-held': [0, 2],
  guided: [1],
  clamped: [0, 1],
  'clamped-held': [0, 1, 2],
  centre: [1, 2],
} as const satisfies Record<string, readonly number[]>;

export type Edge = keyof typeof EDGES;

/** `pressure`: 1 from inner to outer edge; the forces: 1 in all, on a whole edge. */
export type PlateLoad = 'pressure' | 'inner-force' | 'outer-force';

export interface SinglePlate {
  readonly innerRadius: number;
  readonly poissonsRatio: number;
  readonly inner: Edge;
  readonly outer: Edge;
  readonly load: PlateLoad;
  readonly theory: AxisymmetricTheory;
  readonly elements: number;
}

export type PlateSolve =
  | { readonly status: 'converged'; readonly plate: Plate; readonly correction: number }
  | { readonly status: 'not-converged' | 'singular'; readonly reason: string };

const LOAD_STEPS = 20;
const MAX_ITERATIONS = 40;
/**
 * Last correction of the deflection over the largest deflection [-]: far below every tolerance of the cases. The
 * out-of-balance force would not do: rounding in fine meshes leaves one that moves nothing.
 */
const CORRECTION = 1e-8;

/** Solves for a load `factor` times 1. @returns the plate with its unknowns, or why there is none */
export function solveSinglePlate(description: SinglePlate, factor: number): PlateSolve {
  const plate = buildPlate(description);
  const unit = unitLoad(plate, description.load);
  const steps = description.theory === 'large-deflection' ? LOAD_STEPS : 1;
  const load = new Float64Array(plate.size);
  let correction = Number.POSITIVE_INFINITY;
  for (let step = 1; step <= steps; step++) {
    for (let i = 0; i < plate.size; i++) load[i] = (unit[i] * factor * step) / steps;
    const balanced = balance(plate, load);
    if (balanced.status !== 'converged') return { ...balanced, reason: `load step ${step}: ${balanced.reason}` };
    correction = balanced.correction;
  }
  return { status: 'converged', plate, correction };
}

function buildPlate({ innerRadius, poissonsRatio: nu, inner, outer, theory, elements }: SinglePlate): Plate {
  const tables = buildHermiteTables(buildRadialMesh([innerRadius, 1], elements));
  const nodes = tables.elements + 1;
  const d = unknownsPerNode(theory);
  const last = (nodes - 1) * d;
  const held = (edge: Edge, at: number) => EDGES[edge].filter((unknown) => unknown < d).map((unknown) => at + unknown);
  const fixed = [...held(inner, 0), ...held(outer, last)];
  return createPlate(tables, theory, { nodes, D: 1 / (12 * (1 - nu ** 2)), C: 1 / (1 - nu ** 2), nu, fixed });
}

function unitLoad({ tables, size, d, nodes }: Plate, kind: PlateLoad): Float64Array {
  const load = new Float64Array(size);
  if (kind === 'inner-force') load[0] = 1;
  if (kind === 'outer-force') load[(nodes - 1) * d] = 1;
  if (kind === 'pressure') {
    const everywhere = { inner_m: 0, outer_m: 1, end_m: 1 };
    for (let e = 0; e < tables.elements; e++) addElementPressure(tables, everywhere, e, d, load);
  }
  return load;
}

type Balance =
  | { readonly status: 'converged'; readonly correction: number }
  | { readonly status: 'not-converged' | 'singular'; readonly reason: string };

function balance(plate: Plate, load: Float64Array): Balance {
  const f = new Float64Array(plate.size);
  let correction = Number.POSITIVE_INFINITY;
  for (let iteration = 0; iteration < MAX_ITERATIONS; iteration++) {
    assembleTangent(plate, 'exact');
    for (let i = 0; i < plate.size; i++) f[i] = load[i] - plate.internal[i];
    for (const held of plate.fixed) f[held] = 0;
    if (factorBandedLdl(plate.band, plate.size, plate.b).status === 'singular') {
      return { status: 'singular', reason: 'the edges leave the plate free to move' };
    }
    solveBandedLdl(plate.band, plate.size, plate.b, f);
    for (let i = 0; i < plate.size; i++) plate.x[i] += f[i];
    correction = largestDeflection(f, plate.d) / largestDeflection(plate.x, plate.d);
    if (correction < CORRECTION) return { status: 'converged', correction };
  }
  return { status: 'not-converged', reason: `still ${correction} of the deflection after ${MAX_ITERATIONS} steps` };
}

/** Largest |w| among the unknowns x, d of them a node. */
export function largestDeflection(x: Float64Array, d: number): number {
  let largest = 0;
  for (let i = 0; i < x.length; i += d) largest = Math.max(largest, Math.abs(x[i]));
  return largest;
}
