/**
 * What one plate has to do with the ties of a stack: its share of B K⁻¹ Bᵀ, see wave-problem.ts.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | e_p | - | unit force on W at tied node p |
 * | L, D | - | factor of the plate's matrix, K = L D Lᵀ |
 */
import { WAVE_BANDWIDTH, WAVE_UNKNOWNS, type WavePlate } from '../../plate/waviness/wave-plate.ts';
import type { Tie } from './wave-ties.ts';

/** A tie seen from one of its plates: its number, the sign of the plate in it, and the node in the plate's numbers. */
interface SideTie {
  readonly tie: number;
  readonly sign: 1 | -1;
  readonly node: number;
}

export interface PlateSide {
  readonly ties: readonly SideTie[];
  /** Nodes of the plate that are tied, each once, rising. */
  readonly nodes: readonly number[];
  /** Place of each node of the plate in `nodes`, -1 where it is not tied. */
  readonly places: Int32Array;
  /** L⁻¹ e of every such node, one after another, and their products over the pivots. */
  readonly columns: Float64Array;
  readonly products: Float64Array;
  /** One column over the pivots. */
  readonly overPivot: Float64Array;
}

/** Storage for plate k among the ties. */
export function sideOf({ size, plate }: WavePlate, k: number, ties: readonly Tie[]): PlateSide {
  const on: SideTie[] = [];
  const places = new Int32Array(plate.nodes).fill(-1);
  for (const [tie, { below, belowNode, above, aboveNode }] of ties.entries()) {
    if (above === k) on.push({ tie, sign: 1, node: aboveNode });
    else if (below === k) on.push({ tie, sign: -1, node: belowNode });
  }
  for (const { node } of on) places[node] = 0;
  const nodes: number[] = [];
  for (let node = 0; node < places.length; node++) if (places[node] === 0) places[node] = nodes.push(node) - 1;
  return {
    ties: on,
    places,
    nodes,
    columns: new Float64Array(nodes.length * size),
    products: new Float64Array(nodes.length ** 2),
    overPivot: new Float64Array(size),
  };
}

/**
 * Fills `products` with the lower triangle of (L⁻¹ e_p)ᵀ D⁻¹ (L⁻¹ e_q) over the tied nodes.
 * @param band factor of the plate, K = L D Lᵀ @param scale of its unknowns
 */
export function fillProducts(
  { nodes, columns, products, overPivot }: PlateSide,
  band: Float64Array,
  scale: Float64Array,
): void {
  const size = scale.length;
  for (const [p, node] of nodes.entries()) {
    const at = node * WAVE_UNKNOWNS;
    const cp = p * size;
    forwardColumn(band, size, at, scale[at], columns, cp);
    for (let i = at; i < size; i++) overPivot[i] = columns[cp + i] / band[i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH];
    for (let q = 0; q <= p; q++) {
      const cq = q * size;
      let sum = 0;
      for (let i = at; i < size; i++) sum += overPivot[i] * columns[cq + i];
      products[p * nodes.length + q] = sum;
    }
  }
}

/** c = L⁻¹ (value e_at) from place `from` on; entries before `at` are nothing and stay so. */
function forwardColumn(
  band: Float64Array,
  size: number,
  at: number,
  value: number,
  c: Float64Array,
  from: number,
): void {
  c[from + at] = value;
  for (let i = at + 1; i < size; i++) {
    const ri = i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH - i;
    const start = i - (i % WAVE_UNKNOWNS) - WAVE_UNKNOWNS;
    const first = start > at ? start : at;
    let v = 0;
    for (let j = first; j < i; j++) v -= band[ri + j] * c[from + j];
    c[from + i] = v;
  }
}
