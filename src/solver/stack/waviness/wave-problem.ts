/**
 * A stack against n waves: counts the negative modes of K(state) - σ Kb under the ties, and solves with it.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | K | - | block diagonal, one band a plate: (1 - σ) Kb + Ks, see plate/waviness/wave-plate.ts |
 * | B | - | ties, one row each: B x = 0 |
 * | S | - | B K⁻¹ Bᵀ, one row and column a tie |
 * | neg(A) | - | number of negative eigenvalues of A |
 *
 * Sylvester: the matrix [K Bᵀ; B 0] has the inertia of K together with -S, and also that of K within B x = 0 together
 * with one positive and one negative eigenvalue a tie. Hence neg(K within B x = 0) = neg(K) - neg(S).
 * Source: Golub & Van Loan, Matrix Computations, 4th ed. 2013, section 8.1 (inertia); Gould, Mathematical Programming 32
 * (1985) 90-99 (inertia of the constrained matrix, from memory).
 */
import { factorBandedLdl, solveBandedLdl } from '../../linalg/banded-ldl.ts';
import { bandedQuadraticForm, multiplyBanded } from '../../linalg/banded-product.ts';
import {
  assembleStretching,
  WAVE_BANDWIDTH,
  WAVE_UNKNOWNS,
  type WaveOrder,
  type WavePlate,
} from '../../plate/waviness/wave-plate.ts';
import { fillProducts, type PlateSide, sideOf } from './plate-side.ts';
import type { Tie } from './wave-ties.ts';

/** Times that a shift which meets an eigenvalue of a single plate is moved aside, and by how much. */
const SHIFTS_TRIED = 8;
const SHIFT_STEP = 1e-8;

export interface WaveProblem {
  readonly waves: readonly WavePlate[];
  readonly ties: readonly Tie[];
  /** What each plate has to do with the ties. */
  readonly sides: readonly PlateSide[];
  /** Matrices of the number of waves at hand, one a plate. */
  readonly orders: WaveOrder[];
  /** Factors of K, one band a plate, and of S, all of its lower triangle. */
  readonly bands: readonly Float64Array[];
  readonly tieMatrix: Float64Array;
  readonly tieForce: Float64Array;
  /** One array a plate, for what a solve needs on its way. */
  readonly scratch: readonly Float64Array[];
}

/** Storage for plates whose states have been taken; `setWaves` then chooses n. */
export function createWaveProblem(waves: readonly WavePlate[], ties: readonly Tie[]): WaveProblem {
  return {
    waves,
    ties,
    sides: waves.map((wave, k) => sideOf(wave, k, ties)),
    orders: [],
    bands: waves.map(({ size }) => new Float64Array(size * (WAVE_BANDWIDTH + 1))),
    tieMatrix: new Float64Array(ties.length ** 2),
    tieForce: new Float64Array(ties.length),
    scratch: waves.map(({ size }) => new Float64Array(size)),
  };
}

/** Turns the problem to n waves. */
export function setWaves(problem: WaveProblem, n: number): void {
  for (const [k, wave] of problem.waves.entries()) problem.orders[k] = assembleStretching(wave, n);
}

export type ShiftedFactor =
  | { readonly status: 'factored'; readonly shift: number; readonly negativeModes: number }
  | { readonly status: 'singular' };

/**
 * Factors K(state) - σ Kb under the ties.
 * @param sigma moved down by parts in 10⁸ where it meets an eigenvalue
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
  for (const [k, { bending, stretching }] of orders.entries()) {
    const band = bands[k];
    for (let i = 0; i < band.length; i++) band[i] = (1 - sigma) * bending[i] + stretching[i];
    const factor = factorBandedLdl(band, waves[k].size, WAVE_BANDWIDTH, WAVE_UNKNOWNS);
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
function fillTieMatrix(problem: WaveProblem): void {
  const { sides, tieMatrix, ties } = problem;
  const m = ties.length;
  tieMatrix.fill(0);
  for (const [k, side] of sides.entries()) {
    fillProducts(side, problem.bands[k], problem.orders[k].scale);
    for (let i = 0; i < side.ties.length; i++) {
      const { tie: s, sign, node } = side.ties[i];
      const p = side.places[node];
      // Ties of one plate come in the order of their numbers, so that t <= s.
      for (let j = 0; j <= i; j++) {
        const { tie: t, sign: signT, node: nodeT } = side.ties[j];
        const q = side.places[nodeT];
        const product = side.products[p > q ? p * side.nodes.length + q : q * side.nodes.length + p];
        tieMatrix[s * m + m - 1 - (s - t)] += sign * signT * product;
      }
    }
  }
}

/** Solves (K - σ Kb) x + Bᵀλ = f with B x = 0 by the factors at hand. @param x f, overwritten by the solution */
export function solveShifted(problem: WaveProblem, x: readonly Float64Array[]): void {
  const { ties, tieMatrix, tieForce, scratch: free } = problem;
  const m = ties.length;
  if (m > 0) {
    for (const [k, f] of x.entries()) free[k].set(f);
    solvePlates(problem, free);
    tieForce.fill(0);
    eachTie(problem, (t, k, at, weight) => {
      tieForce[t] += weight * free[k][at];
    });
    solveBandedLdl(tieMatrix, m, m - 1, tieForce);
    eachTie(problem, (t, k, at, weight) => {
      x[k][at] -= weight * tieForce[t];
    });
  }
  solvePlates(problem, x);
}

function solvePlates({ waves, bands }: WaveProblem, x: readonly Float64Array[]): void {
  for (const [k, y] of x.entries()) solveBandedLdl(bands[k], waves[k].size, WAVE_BANDWIDTH, y, 0, WAVE_UNKNOWNS);
}

/** Calls back with every entry of B: the tie, the plate, the unknown and the coefficient. */
function eachTie(
  { sides, orders }: WaveProblem,
  visit: (t: number, k: number, at: number, weight: number) => void,
): void {
  for (const [k, { ties }] of sides.entries()) {
    for (const { tie, sign, node } of ties) {
      const at = node * WAVE_UNKNOWNS;
      visit(tie, k, at, sign * orders[k].scale[at]);
    }
  }
}

/** x := Kb x. */
export function multiplyBending({ waves, orders, scratch }: WaveProblem, x: readonly Float64Array[]): void {
  for (const [k, { bending }] of orders.entries()) {
    scratch[k].set(x[k]);
    multiplyBanded(bending, waves[k].size, WAVE_BANDWIDTH, scratch[k], x[k]);
  }
}

/** Rayleigh's quotient xᵀ K(state) x / xᵀ Kb x; with it, x is brought to xᵀ Kb x = 1. @returns NaN when x is nothing */
export function rayleighQuotient({ waves, orders }: WaveProblem, x: readonly Float64Array[]): number {
  let atRest = 0;
  let more = 0;
  for (const [k, { bending, stretching }] of orders.entries()) {
    atRest += bandedQuadraticForm(bending, waves[k].size, WAVE_BANDWIDTH, x[k]);
    more += bandedQuadraticForm(stretching, waves[k].size, WAVE_BANDWIDTH, x[k]);
  }
  const unit = 1 / Math.sqrt(atRest);
  for (const y of x) for (let i = 0; i < y.length; i++) y[i] *= unit;
  return 1 + more / atRest;
}
