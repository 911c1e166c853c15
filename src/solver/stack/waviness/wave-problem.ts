/**
 * A stack against n waves: counts the negative modes of K(state) - σ K0 under the ties, and solves with it.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | K | - | block diagonal, one band a plate: (1 - σ) K0 + dK, see plate/waviness/wave-plate.ts |
 * | B | - | ties, one row each: B x = 0 |
 * | S | - | B K⁻¹ Bᵀ, one row and column a tie |
 * | neg(A) | - | number of negative eigenvalues of A |
 *
 * Sylvester: the matrix [K Bᵀ; B 0] has the inertia of K together with -S, and also that of K within B x = 0 together
 * with one positive and one negative eigenvalue a tie. Hence neg(K within B x = 0) = neg(K) - neg(S).
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, section 8.1 (inertia); Gould, Mathematical Programming 32
 * (1985) 90-99 (inertia of the constrained matrix, from memory).
 */
import { RIGID } from '../../contact/contact-pairs.ts';
import { factorBandedLdl, solveBandedLdl } from '../../linalg/banded-ldl.ts';
import { bandedQuadraticForm, multiplyBanded } from '../../linalg/banded-product.ts';
import {
  assembleChange,
  orderOf,
  WAVE_BANDWIDTH,
  WAVE_UNKNOWNS,
  type WaveOrder,
  type WavePlate,
} from '../../plate/waviness/wave-plate.ts';
import type { Tie } from './wave-ties.ts';

/** Times that a shift which meets an eigenvalue of a single plate is moved aside, and by how much. */
const SHIFTS_TRIED = 8;
const SHIFT_STEP = 1e-8;

export interface WaveProblem {
  readonly waves: readonly WavePlate[];
  readonly ties: readonly Tie[];
  readonly orders: readonly WaveOrder[];
  /** Factors of K, one band a plate, and of S, all of its lower triangle. */
  readonly bands: readonly Float64Array[];
  readonly tieMatrix: Float64Array;
  readonly tieForce: Float64Array;
}

/** The n-wave problem of plates whose states have been taken. */
export function createWaveProblem(waves: readonly WavePlate[], ties: readonly Tie[], n: number): WaveProblem {
  return {
    waves,
    ties,
    orders: waves.map((wave) => assembleChange(wave, n)),
    bands: waves.map((wave) => new Float64Array(orderOf(wave, n).rest.length)),
    tieMatrix: new Float64Array(ties.length ** 2),
    tieForce: new Float64Array(ties.length),
  };
}

export type ShiftedFactor =
  | { readonly status: 'factored'; readonly shift: number; readonly negativeModes: number }
  | { readonly status: 'singular' };

/**
 * Factors K(state) - σ K0 under the ties.
 * @param sigma below 1; moved down by parts in 10⁸ where it meets an eigenvalue
 * @returns the shift used and the number of modes below it, or 'singular' when no shift nearby could be factored
 */
export function factorShifted(problem: WaveProblem, sigma: number): ShiftedFactor {
  let step = SHIFT_STEP * Math.max(1, Math.abs(sigma));
  for (let tried = 0, shift = sigma; tried < SHIFTS_TRIED; tried++, shift -= step, step *= 2) {
    const negativeModes = tryShift(problem, shift);
    if (negativeModes !== undefined) return { status: 'factored', shift, negativeModes };
  }
  return { status: 'singular' };
}

function tryShift(problem: WaveProblem, sigma: number): number | undefined {
  const { waves, orders, bands, ties, tieMatrix } = problem;
  let negative = 0;
  for (const [k, { rest, change }] of orders.entries()) {
    const band = bands[k];
    for (let i = 0; i < band.length; i++) band[i] = (1 - sigma) * rest[i] + change[i];
    const factor = factorBandedLdl(band, waves[k].size, WAVE_BANDWIDTH);
    if (factor.status === 'singular') return undefined;
    negative += factor.negativePivots;
  }
  const m = ties.length;
  if (m === 0) return negative;
  fillTieMatrix(problem);
  const factor = factorBandedLdl(tieMatrix, m, m - 1);
  return factor.status === 'singular' ? undefined : negative - factor.negativePivots;
}

/** S_st = Σ over plates of ± (L⁻¹ e_s)ᵀ D⁻¹ (L⁻¹ e_t), with K = L D Lᵀ and the sign of each tie on that plate. */
function fillTieMatrix({ waves, orders, bands, ties, tieMatrix }: WaveProblem): void {
  const m = ties.length;
  tieMatrix.fill(0);
  for (const [k, { size }] of waves.entries()) {
    const on = ties.map((_, t) => t).filter((t) => ties[t].below === k || ties[t].above === k);
    const columns = on.map((t) => forwardColumn(bands[k], size, ties[t].node * WAVE_UNKNOWNS));
    for (const [i, s] of on.entries()) {
      for (let j = 0; j <= i; j++) {
        const t = on[j];
        const weight = tieWeight(ties[s], k, orders[k]) * tieWeight(ties[t], k, orders[k]);
        tieMatrix[s * m + m - 1 - (s - t)] += weight * overPivots(columns[i], columns[j], bands[k], size);
      }
    }
  }
}

/** Coefficient of a tie on the scaled unknown of plate k. */
function tieWeight({ above, node }: Tie, k: number, { scale }: WaveOrder): number {
  return (above === k ? 1 : -1) * scale[node * WAVE_UNKNOWNS];
}

/** L⁻¹ e_at; entries before `at` are nothing. */
function forwardColumn(band: Float64Array, size: number, at: number): Float64Array {
  const x = new Float64Array(size);
  x[at] = 1;
  for (let i = at + 1; i < size; i++) {
    const ri = i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH - i;
    let v = 0;
    for (let j = Math.max(at, i - WAVE_BANDWIDTH); j < i; j++) v -= band[ri + j] * x[j];
    x[i] = v;
  }
  return x;
}

function overPivots(x: Float64Array, y: Float64Array, band: Float64Array, size: number): number {
  let sum = 0;
  for (let i = 0; i < size; i++) sum += (x[i] * y[i]) / band[i * (WAVE_BANDWIDTH + 1) + WAVE_BANDWIDTH];
  return sum;
}

/** Solves (K - σ K0) x + Bᵀλ = f with B x = 0 by the factors at hand. @param x f, overwritten by the solution */
export function solveShifted(problem: WaveProblem, x: readonly Float64Array[]): void {
  const { waves, bands, ties, tieMatrix, tieForce, orders } = problem;
  const m = ties.length;
  if (m > 0) {
    const free = x.map((f) => f.slice());
    for (const [k, y] of free.entries()) solveBandedLdl(bands[k], waves[k].size, WAVE_BANDWIDTH, y);
    for (let t = 0; t < m; t++) tieForce[t] = tieValue(problem, t, free);
    solveBandedLdl(tieMatrix, m, m - 1, tieForce);
    for (const [t, tie] of ties.entries()) {
      for (const k of [tie.below, tie.above]) {
        if (k !== RIGID) x[k][tie.node * WAVE_UNKNOWNS] -= tieWeight(tie, k, orders[k]) * tieForce[t];
      }
    }
  }
  for (const [k, y] of x.entries()) solveBandedLdl(bands[k], waves[k].size, WAVE_BANDWIDTH, y);
}

/** (B x) of tie t. */
function tieValue({ ties, orders }: WaveProblem, t: number, x: readonly Float64Array[]): number {
  const tie = ties[t];
  let value = 0;
  for (const k of [tie.below, tie.above]) {
    if (k !== RIGID) value += tieWeight(tie, k, orders[k]) * x[k][tie.node * WAVE_UNKNOWNS];
  }
  return value;
}

/** x := K0 x. */
export function multiplyRest({ waves, orders }: WaveProblem, x: readonly Float64Array[]): void {
  for (const [k, { rest }] of orders.entries()) multiplyBanded(rest, waves[k].size, WAVE_BANDWIDTH, x[k].slice(), x[k]);
}

/** Rayleigh's quotient xᵀ K(state) x / xᵀ K0 x; with it, x is brought to xᵀ K0 x = 1. @returns NaN when x is nothing */
export function rayleighQuotient({ waves, orders }: WaveProblem, x: readonly Float64Array[]): number {
  let atRest = 0;
  let more = 0;
  for (const [k, { rest, change }] of orders.entries()) {
    atRest += bandedQuadraticForm(rest, waves[k].size, WAVE_BANDWIDTH, x[k]);
    more += bandedQuadraticForm(change, waves[k].size, WAVE_BANDWIDTH, x[k]);
  }
  const unit = 1 / Math.sqrt(atRest);
  for (const y of x) for (let i = 0; i < y.length; i++) y[i] *= unit;
  return 1 + more / atRest;
}
