/**
 * Weighted nonlinear least squares with bounds and with what was known before:
 *   S(b) = sum_k (r_k(b) / s)^2 + sum_i ((b_i - m_i) / d_i)^2,   low_i <= b_i <= high_i
 * by Gauss and Newton with the damping of Levenberg and Marquardt; a step beyond a bound ends on it. The scatter s of the
 * measurements is not known: s^2 = sum r^2 / (n - p), p the trace of the hat matrix (how many coefficients the measurements alone
 * determine), and S is minimised anew until s stands still. Without previous knowledge p is the count of coefficients and one round
 * is enough.
 *
 * ml-levenberg-marquardt has bounds and weights, but neither previous knowledge nor the Jacobian and the covariance that the
 * intervals need, and no way to stop; ml-matrix has what is under both.
 *
 * Source: Nocedal & Wright, Numerical Optimization (2006) ch. 10; Bates & Watts, Nonlinear Regression Analysis (1988) ch. 2; previous
 * knowledge as further rows: Gelman et al., Bayesian Data Analysis (2013) 14.8 (all from memory).
 *
 * symbol  unit  meaning
 * b       any   coefficients, p0 of them
 * m, d    of b  what b was thought to be, and its standard deviation
 * r, s    any   residuals, n of them, and their standard deviation
 * J       r/b   Jacobian of r, n x p0
 * A, g          J'J/s^2 + D with D = diag(1/d^2), and half the gradient of S
 * C       b^2   covariance of b, the inverse of A
 */
import { CholeskyDecomposition, Matrix } from 'ml-matrix';

export interface Unknown {
  readonly start: number;
  readonly low: number;
  readonly high: number;
  /** Step aside for the Jacobian, in its unit. */
  readonly aside: number;
  /** Absent, nothing is known of it before. */
  readonly known?: { readonly mean: number; readonly deviation: number };
}

/** Residuals, always of one length; undefined where the model has no state. */
export type Residuals = (b: readonly number[]) => readonly number[] | undefined;

export interface Fitted {
  readonly status: 'converged';
  readonly values: readonly number[];
  readonly residuals: readonly number[];
  /** n x p0. */
  readonly jacobian: Matrix;
  /** p0 x p0. */
  readonly covariance: Matrix;
  /** s. */
  readonly scatter: number;
  /** n - p. */
  readonly degreesOfFreedom: number;
  readonly iterations: number;
  /** Least S, and S itself at other values with the same s; Infinity where the model has no state. */
  readonly sum: number;
  readonly sumAt: (b: readonly number[]) => number;
}

export interface NotFitted {
  readonly status: 'not-converged' | 'no-state' | 'too-few' | 'singular';
  readonly iterations: number;
  readonly reason: string;
}

/** Called before every evaluation of the residuals; may throw to stop. */
export type OnEvaluation = (done: number) => void;

const MAX_STEPS = 60;
const MAX_ROUNDS = 12;
/** A step that gains less than this share of S is the last. */
const LEAST_GAIN = 1e-12;
/** The scatter stands still when it changes less than this. */
const SCATTER_STILL = 1e-3;
const FIRST_DAMPING = 1e-3;
const MOST_DAMPING = 1e12;

interface Problem {
  readonly unknowns: readonly Unknown[];
  readonly residuals: Residuals;
}

const sumOfSquares = (r: readonly number[]): number => r.reduce((sum, each) => sum + each ** 2, 0);

const knownSum = (unknowns: readonly Unknown[], b: readonly number[]): number =>
  unknowns.reduce((sum, { known }, i) => sum + (known ? ((b[i] - known.mean) / known.deviation) ** 2 : 0), 0);

const within = ({ low, high }: Unknown, value: number): number => Math.min(Math.max(value, low), high);

/** Central differences, one-sided on a bound. */
function jacobianAt({ unknowns, residuals }: Problem, b: readonly number[]): Matrix | undefined {
  const columns = unknowns.map((unknown, i) => {
    const moved = (to: number): number[] => b.map((value, j) => (j === i ? to : value));
    const [up, down] = [within(unknown, b[i] + unknown.aside), within(unknown, b[i] - unknown.aside)];
    const [above, below] = [residuals(moved(up)), residuals(moved(down))];
    return above && below && above.map((value, k) => (value - below[k]) / (up - down));
  });
  if (!columns.every((column) => column !== undefined)) return undefined;
  return new Matrix(columns as number[][]).transpose();
}

/** A without and with its diagonal of previous knowledge. */
function normalMatrix({ unknowns }: Problem, J: Matrix, s: number): { fromData: Matrix; A: Matrix } {
  const fromData = J.transpose()
    .mmul(J)
    .div(s ** 2);
  const A = fromData.clone();
  for (const [i, { known }] of unknowns.entries()) if (known) A.set(i, i, A.get(i, i) + 1 / known.deviation ** 2);
  return { fromData, A };
}

function halfGradient(
  { unknowns }: Problem,
  J: Matrix,
  r: readonly number[],
  b: readonly number[],
  s: number,
): number[] {
  const g = J.transpose()
    .mmul(Matrix.columnVector([...r]))
    .div(s ** 2)
    .to1DArray();
  return g.map((value, i) => {
    const { known } = unknowns[i];
    return known ? value + (b[i] - known.mean) / known.deviation ** 2 : value;
  });
}

/** Coefficients that lie on a bound and are pressed against it stay there. */
function heldBy(unknowns: readonly Unknown[], b: readonly number[], g: readonly number[]): boolean[] {
  return unknowns.map(({ low, high }, i) => (b[i] <= low && g[i] > 0) || (b[i] >= high && g[i] < 0));
}

/** Solves (A + damping diag A) step = -g over the coefficients that are free. */
function dampedStep(A: Matrix, g: readonly number[], held: readonly boolean[], damping: number): number[] | undefined {
  const free = g.flatMap((_, i) => (held[i] ? [] : [i]));
  if (free.length === 0) return g.map(() => 0);
  const part = A.selection(free, free);
  for (let k = 0; k < free.length; k++) part.set(k, k, part.get(k, k) * (1 + damping) + Number.MIN_VALUE);
  const cholesky = new CholeskyDecomposition(part);
  if (!cholesky.isPositiveDefinite()) return undefined;
  const solved = cholesky.solve(Matrix.columnVector(free.map((i) => -g[i]))).to1DArray();
  return g.map((_, i) => solved[free.indexOf(i)] ?? 0);
}

interface State {
  readonly b: readonly number[];
  readonly r: readonly number[];
  readonly steps: number;
}

/** The least S for one scatter. */
function minimise(problem: Problem, from: State, s: number): State | NotFitted {
  const { unknowns, residuals } = problem;
  const total = (b: readonly number[], r: readonly number[]): number =>
    sumOfSquares(r) / s ** 2 + knownSum(unknowns, b);
  let { b, r, steps } = from;
  let [S, damping] = [total(b, r), FIRST_DAMPING];
  for (; steps < MAX_STEPS; steps++) {
    const J = jacobianAt(problem, b);
    if (!J) return { status: 'no-state', iterations: steps, reason: 'the model has no state beside the best values' };
    const { A } = normalMatrix(problem, J, s);
    const g = halfGradient(problem, J, r, b, s);
    const held = heldBy(unknowns, b, g);
    let gain = 0;
    while (gain === 0 && damping < MOST_DAMPING) {
      const step = dampedStep(A, g, held, damping);
      const next = step && b.map((value, i) => within(unknowns[i], value + step[i]));
      const reached = next && residuals(next);
      const sum = next && reached ? total(next, reached) : Number.POSITIVE_INFINITY;
      if (next && reached && sum < S) {
        gain = S - sum;
        [b, r, S] = [next, reached, sum];
        damping = Math.max(damping / 10, 1e-12);
      } else damping *= 10;
    }
    if (gain <= LEAST_GAIN * Math.max(S, Number.MIN_VALUE)) return { b, r, steps: steps + 1 };
  }
  return { status: 'not-converged', iterations: steps, reason: `the sum of squares still falls after ${steps} steps` };
}

interface Weighed {
  readonly jacobian: Matrix;
  readonly covariance: Matrix;
  readonly scatter: number;
  readonly degreesOfFreedom: number;
}

/** Covariance and scatter at the best values, with the scatter that the values were found with. */
function weigh(problem: Problem, { b, r }: State, s: number): Weighed | undefined {
  const J = jacobianAt(problem, b);
  if (!J) return undefined;
  const inverse = (scatter: number): Matrix | undefined => {
    const cholesky = new CholeskyDecomposition(normalMatrix(problem, J, scatter).A);
    return cholesky.isPositiveDefinite() ? cholesky.solve(Matrix.eye(b.length)) : undefined;
  };
  const C = inverse(s);
  if (!C) return undefined;
  const determined = C.mmul(normalMatrix(problem, J, s).fromData).trace();
  const degreesOfFreedom = r.length - determined;
  const scatter = Math.sqrt(sumOfSquares(r) / degreesOfFreedom);
  const covariance = inverse(scatter);
  return covariance && { jacobian: J, covariance, scatter, degreesOfFreedom };
}

/**
 * @param residuals  measured less model, or the other way round: only squares count
 * @param leastScatter  the scatter is at least that, lest measurements without any divide by nothing; in the unit of the residuals
 */
export function leastSquares(unknowns: readonly Unknown[], residuals: Residuals, leastScatter = 0): Fitted | NotFitted {
  const problem = { unknowns, residuals };
  const b = unknowns.map((unknown) => within(unknown, unknown.start));
  const r = residuals(b);
  if (!r) return { status: 'no-state', iterations: 0, reason: 'the model has no state at the first values' };
  const isKnown = unknowns.every(({ known }) => known);
  if (r.length <= unknowns.length && !isKnown) {
    return { status: 'too-few', iterations: 0, reason: `${r.length} residuals for ${unknowns.length} coefficients` };
  }
  let state: State = { b, r, steps: 0 };
  const least = (s: number): number => Math.max(s, leastScatter, Number.MIN_VALUE);
  let s = least(Math.sqrt(sumOfSquares(r) / r.length));
  for (let round = 1; round <= MAX_ROUNDS; round++) {
    const found = minimise(problem, { ...state, steps: 0 }, s);
    if ('status' in found) return found;
    state = { ...found, steps: state.steps + found.steps };
    const weighed = weigh(problem, state, s);
    if (!weighed) {
      return {
        status: 'singular',
        iterations: state.steps,
        reason: 'the measurements leave a coefficient undetermined',
      };
    }
    const scatter = least(weighed.scatter);
    const isStill = unknowns.every(({ known }) => !known) || Math.abs(scatter / s - 1) < SCATTER_STILL;
    s = scatter;
    if (isStill) return fitted(problem, state, { ...weighed, scatter });
  }
  return { status: 'not-converged', iterations: state.steps, reason: 'the scatter of the residuals does not settle' };
}

function fitted({ unknowns, residuals }: Problem, { b, r, steps }: State, weighed: Weighed): Fitted {
  const { scatter } = weighed;
  const sumAt = (at: readonly number[]): number => {
    const reached = residuals(at);
    return reached ? sumOfSquares(reached) / scatter ** 2 + knownSum(unknowns, at) : Number.POSITIVE_INFINITY;
  };
  const sum = sumOfSquares(r) / scatter ** 2 + knownSum(unknowns, b);
  return { status: 'converged', values: b, residuals: r, ...weighed, iterations: steps, sum, sumAt };
}
