/**
 * Integrates a small stiff system y' = f(t, y) by the Radau IIA method of order 5 with steps chosen by its embedded error estimate:
 *   h_new = h min(5, max(0.2, 0.9 s err^(-1/4))),   err in tolerances a_i + r |y_i|, root mean square,
 * s falling with the Newton steps that were needed. The method is L-stable and needs f to be continuous only; where f has a
 * kink it takes small steps. Output times are hit by the collocation polynomial (order 3), so they cost no steps. A part so stiff
 * that it only follows something slow hides from the estimate: between steps it is as good as cubic interpolation, so bound the step.
 * Source: E. Hairer & G. Wanner, Solving Ordinary Differential Equations II, section IV.8 (from memory).
 *
 * symbol  unit  meaning
 * h       of t  step
 * a, r    of y  absolute tolerance; relative one [-]
 * w       1/y   1 over the tolerance of each component
 */
import { differenceJacobian } from './difference-jacobian.ts';
import { RADAU_C, STAGES } from './radau-coefficients.ts';
import { RadauStep, type StageOutcome, scaledNorm } from './radau-step.ts';
import type { StiffOptions, StiffProblem, StiffResult, StiffStatus, TakenStep } from './stiff-types.ts';

const MAX_STEPS = 200_000;
const SAFETY = 0.9;
const GREATEST_RISE = 5;
const GREATEST_FALL = 0.2;
/** Newton rate below which the Jacobian still serves. */
const JACOBIAN_SERVES = 1e-3;

/**
 * @param times  output times, not falling, the first at or after t0; the last is the end
 * @param onStep  called for every step that holds
 */
export function integrateStiff(
  problem: StiffProblem,
  t0: number,
  y0: ArrayLike<number>,
  times: ArrayLike<number>,
  options: StiffOptions,
  onStep?: (step: TakenStep) => void,
): StiffResult {
  return new Run(problem, t0, y0, times, options, onStep).go();
}

class Run {
  readonly #step: RadauStep;
  readonly #n: number;
  readonly #y: Float64Array;
  readonly #f: Float64Array;
  readonly #w: Float64Array;
  readonly #stages: Float64Array[];
  readonly #states: Float64Array[] = [];
  #t: number;
  #h: number;
  #lastStep: number | undefined;
  #break = 0;
  #steps = 0;
  #rejections = 0;
  #evaluations = 0;
  #largestError = 0;
  /** The Jacobian belongs to the state at t. */
  #fresh = false;
  #failedLast = false;
  /** Since a step last held at once. */
  #sawNaN = false;

  constructor(
    readonly problem: StiffProblem,
    t0: number,
    y0: ArrayLike<number>,
    readonly times: ArrayLike<number>,
    readonly options: StiffOptions,
    readonly onStep?: (step: TakenStep) => void,
  ) {
    const n = y0.length;
    this.#n = n;
    this.#t = t0;
    this.#y = Float64Array.from(y0);
    [this.#f, this.#w] = [new Float64Array(n), new Float64Array(n)];
    this.#stages = RADAU_C.map(() => new Float64Array(n));
    this.#step = new RadauStep(n, (t, y, out) => {
      this.#evaluations++;
      problem.rates(t, y, out);
    });
    this.#step.rates(t0, this.#y, this.#f);
    this.#weigh();
    this.#h = this.#firstStep();
  }

  go(): StiffResult {
    const end = this.times[this.times.length - 1];
    this.#readOutputs(this.#t, 0);
    if (!this.#f.every(Number.isFinite)) return this.#ended('not-a-number');
    this.#renewJacobian();
    while (this.#t < end) {
      if (this.#steps + this.#rejections >= (this.options.maxSteps ?? MAX_STEPS)) return this.#ended('too-many-steps');
      if (!(0.1 * this.#h > Math.abs(this.#t) * Number.EPSILON && this.#h > 1e-280)) {
        return this.#ended(this.#sawNaN ? 'not-a-number' : 'step-too-small');
      }
      const stop = this.#nextStop(end);
      const left = stop - this.#t;
      const h = Math.min(this.#h, this.options.largestStep ?? left, left);
      this.#tryStep(h, h === left ? stop : this.#t + h);
    }
    return this.#ended('finished');
  }

  #nextStop(end: number): number {
    const { breaks = [] } = this.options;
    while (this.#break < breaks.length && breaks[this.#break] <= this.#t) this.#break++;
    return this.#break < breaks.length ? Math.min(breaks[this.#break], end) : end;
  }

  #tryStep(h: number, tNext: number): void {
    const step = this.#step;
    const outcome = this.#solveStages(h);
    this.#sawNaN ||= outcome.status === 'not-a-number';
    if (outcome.status !== 'converged') {
      this.#reject(h / 4);
      return;
    }
    const cautious = this.#failedLast || this.#steps === 0;
    const error = step.error(this.#t, this.#y, h, this.#f, this.#w, cautious);
    const slow = (2 * 10 + 1) / (2 * 10 + outcome.iterations);
    const factor = Math.min(GREATEST_RISE, Math.max(GREATEST_FALL, SAFETY * slow * error ** -0.25));
    this.#sawNaN ||= Number.isNaN(error);
    if (!(error < 1)) {
      this.#reject(h * (Number.isNaN(factor) ? GREATEST_FALL : factor));
      return;
    }
    this.#accept(h, tNext, error, outcome.rate);
    // A step right after a failure does not grow again at once.
    const grown = this.#failedLast ? Math.min(h * factor, h) : h * factor;
    // What was cut short by a stop says nothing against the step that was meant.
    this.#h = h < this.#h ? Math.max(grown, this.#h) : grown;
    if (!this.#failedLast) this.#sawNaN = false;
    this.#failedLast = false;
  }

  #solveStages(h: number): StageOutcome {
    const step = this.#step;
    if (step.factor(h) === 'singular') return { status: 'singular' };
    step.guess(this.#failedLast || this.#lastStep === undefined ? undefined : h / this.#lastStep);
    return step.solveStages(this.#t, this.#y, h, this.#w);
  }

  #accept(h: number, tNext: number, error: number, rate: number): void {
    const n = this.#n;
    const Z = this.#step.stages;
    this.#steps++;
    this.#largestError = Math.max(this.#largestError, error);
    this.#tell(h);
    this.#readOutputs(tNext, h);
    for (let i = 0; i < n; i++) this.#y[i] += Z[2 * n + i];
    this.#t = tNext;
    this.#lastStep = h;
    this.#step.rates(tNext, this.#y, this.#f);
    this.#weigh();
    this.#fresh = false;
    if (rate > JACOBIAN_SERVES || this.#failedLast) this.#renewJacobian();
  }

  #tell(h: number): void {
    if (!this.onStep) return;
    const n = this.#n;
    for (let k = 0; k < STAGES * n; k++) {
      this.#stages[Math.floor(k / n)][k % n] = this.#y[k % n] + this.#step.stages[k];
    }
    this.onStep({ t: this.#t, h, stageTimes: RADAU_C.map((c) => this.#t + c * h), stages: this.#stages });
  }

  #reject(h: number): void {
    this.#rejections++;
    this.#failedLast = true;
    this.#h = h;
    if (!this.#fresh) this.#renewJacobian();
  }

  #readOutputs(until: number, h: number): void {
    while (this.#states.length < this.times.length && this.times[this.#states.length] <= until) {
      const state = new Float64Array(this.#n);
      const time = this.times[this.#states.length];
      this.#step.at(h === 0 ? 0 : (time - this.#t) / h, this.#y, state);
      this.#states.push(state);
    }
  }

  #weigh(): void {
    const { relativeTolerance, absoluteTolerance } = this.options;
    for (let i = 0; i < this.#n; i++) {
      this.#w[i] = 1 / (absoluteTolerance[i] + relativeTolerance * Math.abs(this.#y[i]));
    }
  }

  #renewJacobian(): void {
    const { jacobian } = this.#step;
    this.#fresh = true;
    if (this.problem.jacobian) this.problem.jacobian(this.#t, this.#y, jacobian);
    else differenceJacobian(this.#step.rates, this.#t, this.#y, this.#f, this.#w, jacobian);
  }

  /** A hundredth of the time in which the state would change by itself, or a thousandth of the way. */
  #firstStep(): number {
    const way = this.times[this.times.length - 1] - this.#t;
    const [size, speed] = [scaledNorm(this.#y, this.#w), scaledNorm(this.#f, this.#w)];
    return speed > 0 && size > 0 ? Math.min((0.01 * size) / speed, way) : way / 1000;
  }

  #ended(status: StiffStatus): StiffResult {
    return {
      status,
      time: this.#t,
      state: this.#y,
      states: this.#states,
      steps: this.#steps,
      rejections: this.#rejections,
      evaluations: this.#evaluations,
      largestError: this.#largestError,
    };
  }
}
