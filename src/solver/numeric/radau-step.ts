/**
 * One step of the Radau IIA method (see radau-coefficients.ts) for y' = f(t, y): simplified Newton for the stages
 *   (I - h A x J) dZ = -Z + h (A x I) F(Z),   Z_i = Y_i - y0,
 * then the error, filtered so that it stays bounded for stiff parts:
 *   (I - h g J) err = g h f(t0, y0) + sum_i e_i Z_i
 * Systems are small, so all stages are factored as one dense matrix.
 * Source: E. Hairer & G. Wanner, Solving Ordinary Differential Equations II, section IV.8 (from memory).
 *
 * symbol  unit  meaning
 * h       of t  step
 * J       1/t   Jacobian df/dy
 * Z       of y  stages over the start of the step
 * w       1/y   1 over the tolerance of each component
 */
import { factorLu, solveLu } from './dense-lu.ts';
import { collocationWeights, ERROR_E, ERROR_G, RADAU_A, RADAU_C, STAGES } from './radau-coefficients.ts';

/** f(t, y), written to `out`. */
export type Rates = (t: number, y: Float64Array, out: Float64Array) => void;

/** How the stages ended; the rate is that of the last Newton steps, below 1 where they close in. */
export type StageOutcome =
  | { readonly status: 'converged'; readonly rate: number; readonly iterations: number }
  | { readonly status: 'diverged' | 'singular' | 'not-a-number' };

const MAX_ITERATIONS = 10;

/** What the Newton steps may leave, as a share of the tolerance. */
const NEWTON_SHARE = 1e-3;

/** Owns the work space of a system of `n` equations. */
export class RadauStep {
  /** Z, stage after stage, of the last step that converged. */
  readonly stages: Float64Array;
  readonly jacobian: Float64Array;
  readonly #stageFactors: Float64Array;
  readonly #stageOrder: Int32Array;
  readonly #errorFactors: Float64Array;
  readonly #errorOrder: Int32Array;
  readonly #stageRates: Float64Array;
  readonly #change: Float64Array;
  readonly #state: Float64Array;
  readonly #rate: Float64Array;
  readonly #weights = new Float64Array(STAGES);

  constructor(
    readonly n: number,
    readonly rates: Rates,
  ) {
    const m = STAGES * n;
    [this.stages, this.#stageRates, this.#change] = [new Float64Array(m), new Float64Array(m), new Float64Array(m)];
    [this.#state, this.#rate] = [new Float64Array(n), new Float64Array(n)];
    [this.jacobian, this.#errorFactors] = [new Float64Array(n * n), new Float64Array(n * n)];
    this.#stageFactors = new Float64Array(m * m);
    [this.#stageOrder, this.#errorOrder] = [new Int32Array(m), new Int32Array(n)];
  }

  /** Prepares the matrices for a step of size h with the Jacobian as it stands. */
  factor(h: number): 'factored' | 'singular' {
    const { n, jacobian: J } = this;
    const m = STAGES * n;
    const M = this.#stageFactors;
    for (let i = 0; i < m; i++) {
      const row = RADAU_A[Math.floor(i / n)];
      for (let j = 0; j < m; j++) {
        M[i * m + j] = (i === j ? 1 : 0) - h * row[Math.floor(j / n)] * J[(i % n) * n + (j % n)];
      }
    }
    const E = this.#errorFactors;
    for (let i = 0; i < n * n; i++) E[i] = -h * ERROR_G * J[i];
    for (let i = 0; i < n; i++) E[i * n + i] += 1;
    if (factorLu(M, m, this.#stageOrder) === 'singular') return 'singular';
    return factorLu(E, n, this.#errorOrder);
  }

  /** Starts the stages of a step of size `ratio` times the last from its collocation polynomial, or from nothing. */
  guess(ratio: number | undefined): void {
    const { n, stages: Z } = this;
    if (ratio === undefined) {
      Z.fill(0);
      return;
    }
    const last = Z.slice();
    for (let s = 0; s < STAGES; s++) {
      collocationWeights(1 + ratio * RADAU_C[s], this.#weights);
      const [w1, w2, w3] = this.#weights;
      for (let i = 0; i < n; i++) Z[s * n + i] = w1 * last[i] + w2 * last[n + i] + (w3 - 1) * last[2 * n + i];
    }
  }

  /** Solves for the stages from where `guess` put them. */
  solveStages(t: number, y: Float64Array, h: number, w: Float64Array): StageOutcome {
    const { n, stages: Z } = this;
    const m = STAGES * n;
    let [last, rate] = [Number.NaN, 0];
    for (let iteration = 1; iteration <= MAX_ITERATIONS; iteration++) {
      this.#evaluateStages(t, y, h);
      for (let i = 0; i < m; i++) this.#change[i] = this.#residual(i, h);
      solveLu(this.#stageFactors, m, this.#stageOrder, this.#change);
      for (let i = 0; i < m; i++) Z[i] += this.#change[i];
      const size = scaledNorm(this.#change, w);
      if (!Number.isFinite(size)) return { status: 'not-a-number' };
      rate = iteration === 1 ? 0 : size / last;
      if (size === 0) return { status: 'converged', rate, iterations: iteration };
      if (iteration > 1 && rate >= 1) return { status: 'diverged' };
      const left = iteration === 1 ? size : (rate / (1 - rate)) * size;
      if (left <= NEWTON_SHARE) return { status: 'converged', rate, iterations: iteration };
      last = size;
    }
    return { status: 'diverged' };
  }

  /**
   * Error of the step [in tolerances]. After a step that failed, the start is taken again a little aside, which tells a stiff part
   * that has died away from a real error.
   * @param f0  f(t, y)
   */
  error(t: number, y: Float64Array, h: number, f0: Float64Array, w: Float64Array, cautious: boolean): number {
    const first = this.#errorFrom(h, f0, w);
    if (!(first >= 1 && cautious)) return first;
    for (let i = 0; i < this.n; i++) this.#state[i] = y[i] + this.#change[i];
    this.rates(t, this.#state, this.#rate);
    return this.#errorFrom(h, this.#rate, w);
  }

  /** State at a share `x` of the step from y. @param out  length n, overwritten */
  at(x: number, y: Float64Array, out: Float64Array): void {
    const { n, stages: Z } = this;
    collocationWeights(x, this.#weights);
    const [w1, w2, w3] = this.#weights;
    for (let i = 0; i < n; i++) out[i] = y[i] + w1 * Z[i] + w2 * Z[n + i] + w3 * Z[2 * n + i];
  }

  #errorFrom(h: number, f0: Float64Array, w: Float64Array): number {
    const { n, stages: Z } = this;
    const [e1, e2, e3] = ERROR_E;
    const err = this.#change.subarray(0, n);
    for (let i = 0; i < n; i++) err[i] = ERROR_G * h * f0[i] + e1 * Z[i] + e2 * Z[n + i] + e3 * Z[2 * n + i];
    solveLu(this.#errorFactors, n, this.#errorOrder, err);
    return scaledNorm(err, w);
  }

  #evaluateStages(t: number, y: Float64Array, h: number): void {
    const { n, stages: Z } = this;
    for (let s = 0; s < STAGES; s++) {
      for (let i = 0; i < n; i++) this.#state[i] = y[i] + Z[s * n + i];
      this.rates(t + RADAU_C[s] * h, this.#state, this.#rate);
      this.#stageRates.set(this.#rate, s * n);
    }
  }

  #residual(i: number, h: number): number {
    const { n } = this;
    const F = this.#stageRates;
    const row = RADAU_A[Math.floor(i / n)];
    const k = i % n;
    return h * (row[0] * F[k] + row[1] * F[n + k] + row[2] * F[2 * n + k]) - this.stages[i];
  }
}

/** Root mean square of the components times their weights; the weights are taken round and round. */
export function scaledNorm(values: Float64Array, w: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += (values[i] * w[i % w.length]) ** 2;
  return Math.sqrt(sum / values.length);
}
