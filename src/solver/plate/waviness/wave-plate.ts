/**
 * One plate against waves cos nθ: its bending stiffness, and what stretching and the state add, as banded matrices.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | n | - | waves round the circle, 2 or more |
 * | W, W′, U, U′, V, V′ | m, - | the six unknowns of a node |
 * | Kb | - | bending stiffness; for n >= 2 positive definite in W, and nothing in U and V |
 * | Ks | - | stretching of the flat plate (U and V alone) and what the state adds; Kb + Ks is the second variation |
 *
 * Unknowns are scaled to ones on the diagonal of the flat plate, so that a negligible pivot means the same for slopes,
 * lifts and in-plane motion. Held unknowns have the scale 0 and a row of Ks that holds nothing but a one.
 * Source: own derivation, docs/theory-waviness.md.
 */
import type { Plate } from '../plate.ts';
import { BENDING_PARTS, IN_PLANE_SHAPES, restBendingParts, restMembrane } from './rest-elements.ts';
import {
  baseStateOf,
  fillStateElements,
  STATE_BLOCK,
  type WaveBase,
  WU,
  WU_NN,
  WV_N,
  WW,
  WW_NN,
} from './state-elements.ts';

/** Unknowns a node, and half bandwidth of two neighbouring nodes. */
export const WAVE_UNKNOWNS = 6;
export const WAVE_BANDWIDTH = 2 * WAVE_UNKNOWNS - 1;

/** Where the four shapes of a field (0 for W, 1 for U, 2 for V) sit among the unknowns of an element. */
const AT = [0, 1, 2].map((field) => Int32Array.of(0, 1, 6, 7).map((at) => at + 2 * field));

/** The matrices of one number of waves. */
export interface WaveOrder {
  readonly n: number;
  /** True unknown = scale times stored unknown; 0 where the edge holds it. */
  readonly scale: Float64Array;
  /** Kb, the flat plate's share of Ks, and Ks: lower bands, laid out as in linalg/banded-ldl.ts. */
  readonly bending: Float64Array;
  readonly membrane: Float64Array;
  readonly stretching: Float64Array;
}

export interface WavePlate {
  readonly plate: Plate;
  readonly size: number;
  /** Held unknowns, counted in sixes. */
  readonly fixed: Int32Array;
  /** Integrals of the state, see state-elements.ts. */
  readonly state: Float64Array;
  /** Bending of the elements for every number of waves, see rest-elements.ts. */
  readonly bendingParts: Float64Array;
  /** The same, and matrices, by the number of waves; made when first asked for. */
  readonly bendings: Map<number, Float64Array>;
  readonly orders: Map<number, WaveOrder>;
}

/** What the axisymmetric unknowns w, w′, u, u′ become; a held u also holds v, since a clamp holds both. */
const HELD = [[0], [1], [2, 4], [3]];

/** @param plate of the large-deflection theory */
export function createWavePlate(plate: Plate): WavePlate {
  const size = plate.nodes * WAVE_UNKNOWNS;
  const fixed = Int32Array.from(
    [...plate.fixed].flatMap((f) => HELD[f % 4].map((at) => Math.floor(f / 4) * WAVE_UNKNOWNS + at)),
  );
  const state = new Float64Array((plate.nodes - 1) * STATE_BLOCK);
  const bendingParts = restBendingParts(plate.tables, plate.first, plate.nodes - 1, plate.nu);
  return { plate, size, fixed, state, bendingParts, bendings: new Map(), orders: new Map() };
}

/** Bending matrices of the elements for n waves: 16 numbers an element, rows by shape of W. */
export function bendingOf({ plate, bendingParts, bendings }: WavePlate, n: number): Float64Array {
  const known = bendings.get(n);
  if (known) return known;
  const k = new Float64Array((plate.nodes - 1) * 16);
  for (let i = 0; i < k.length; i++) {
    const at = (i >> 4) * BENDING_PARTS + (i & 15);
    k[i] = plate.D * (bendingParts[at] + n * n * (bendingParts[at + 16] + n * n * bendingParts[at + 32]));
  }
  bendings.set(n, k);
  return k;
}

function createOrder(wave: WavePlate, n: number): WaveOrder {
  const { plate, size, fixed } = wave;
  const bending = bendingBand(plate, bendingOf(wave, n));
  const membrane = membraneBand(plate, n);
  const diagonal = (i: number) => bending[lower(i, i)] + membrane[lower(i, i)];
  const scale = Float64Array.from({ length: size }, (_, i) => 1 / Math.sqrt(diagonal(i)));
  for (const f of fixed) scale[f] = 0;
  for (let i = 0; i < size; i++) {
    for (let j = Math.max(0, i - WAVE_BANDWIDTH); j <= i; j++) {
      bending[lower(i, j)] *= scale[i] * scale[j];
      membrane[lower(i, j)] *= scale[i] * scale[j];
    }
  }
  for (const f of fixed) membrane[lower(f, f)] = 1;
  return { n, scale, bending, membrane, stretching: membrane.slice() };
}

function bendingBand({ nodes }: Plate, k: Float64Array): Float64Array {
  const band = new Float64Array(nodes * WAVE_UNKNOWNS * (WAVE_BANDWIDTH + 1));
  for (let e = 0; e < nodes - 1; e++) {
    for (let i = 0; i < 4; i++) {
      for (let j = 0; j < 4; j++) addLower(band, e, AT[0][i], AT[0][j], k[e * 16 + i * 4 + j]);
    }
  }
  return band;
}

function membraneBand({ tables, first, nodes, nu, C }: Plate, n: number): Float64Array {
  const band = new Float64Array(nodes * WAVE_UNKNOWNS * (WAVE_BANDWIDTH + 1));
  const k = restMembrane(tables, first, nodes - 1, nu, n);
  const m = IN_PLANE_SHAPES;
  for (let e = 0; e < nodes - 1; e++) {
    for (let i = 0; i < m; i++) {
      for (let j = 0; j < m; j++) {
        addLower(band, e, AT[1 + (i >> 2)][i & 3], AT[1 + (j >> 2)][j & 3], C * k[(e * m + i) * m + j]);
      }
    }
  }
  return band;
}

/** Takes over the axisymmetric state of the plate; `assembleStretching` then gives Ks for any n. */
export function takeState(wave: WavePlate, base: (e: number, q: number) => WaveBase = baseStateOf(wave.plate)): void {
  fillStateElements(wave.plate, base, wave.state);
}

/** Fills Ks of the n-wave matrices from the state taken. */
export function assembleStretching(wave: WavePlate, n: number): WaveOrder {
  const order = orderOf(wave, n);
  const { membrane, stretching, scale } = order;
  const { state, plate } = wave;
  stretching.set(membrane);
  for (let e = 0; e < plate.nodes - 1; e++) {
    const base = e * WAVE_UNKNOWNS;
    for (let i = 0; i < 4; i++) {
      const p = AT[0][i];
      for (let j = 0; j < 4; j++) {
        const k = e * STATE_BLOCK + i * 4 + j;
        const su = scale[base + p] * scale[base + AT[1][j]];
        const sv = scale[base + p] * scale[base + AT[2][j]];
        const sw = scale[base + p] * scale[base + AT[0][j]];
        addLower(stretching, e, p, AT[0][j], sw * (state[k + WW] + n * n * state[k + WW_NN]));
        addEither(stretching, e, p, AT[1][j], su * (state[k + WU] + n * n * state[k + WU_NN]));
        addEither(stretching, e, p, AT[2][j], sv * n * state[k + WV_N]);
      }
    }
  }
  return order;
}

/** Matrices of n waves; Ks is that of the state for which `assembleStretching` was called last. */
export function orderOf(wave: WavePlate, n: number): WaveOrder {
  let order = wave.orders.get(n);
  if (!order) {
    order = createOrder(wave, n);
    wave.orders.set(n, order);
  }
  return order;
}

const lower = (i: number, j: number): number => i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH - (i - j);

/** Adds to the lower half; of a symmetric block the entries above the diagonal are skipped. */
function addLower(band: Float64Array, e: number, p: number, q: number, value: number): void {
  if (p >= q) band[lower(e * WAVE_UNKNOWNS + p, e * WAVE_UNKNOWNS + q)] += value;
}

/** Adds an entry of a block between two fields, which has no mirror image in the sum. */
function addEither(band: Float64Array, e: number, p: number, q: number, value: number): void {
  addLower(band, e, Math.max(p, q), Math.min(p, q), value);
}
