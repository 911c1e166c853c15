/** What goes into the integration of a stiff system, and how it ends. */
import type { Rates } from './radau-step.ts';

export interface StiffProblem {
  readonly rates: Rates;
  /** df_i/dy_j, row by row, written to `out`; by differences when absent. */
  readonly jacobian?: (t: number, y: Float64Array, out: Float64Array) => void;
}

export interface StiffOptions {
  /** r. */
  readonly relativeTolerance: number;
  /** a, one a component, each above 0. */
  readonly absoluteTolerance: ArrayLike<number>;
  readonly largestStep?: number;
  /** Times, rising, that no step goes across: kinks of f in t. */
  readonly breaks?: ArrayLike<number>;
  /** Steps tried, whether they hold or not. */
  readonly maxSteps?: number;
}

/** A step that held. Its arrays are used again for the next one. */
export interface TakenStep {
  readonly t: number;
  readonly h: number;
  readonly stageTimes: readonly number[];
  readonly stages: readonly Float64Array[];
}

export type StiffStatus = 'finished' | 'step-too-small' | 'too-many-steps' | 'not-a-number';

export interface StiffResult {
  readonly status: StiffStatus;
  /** How far it came. */
  readonly time: number;
  /** The state there. */
  readonly state: Float64Array;
  /** One state for each output time that was reached. */
  readonly states: readonly Float64Array[];
  readonly steps: number;
  readonly rejections: number;
  readonly evaluations: number;
  /** Largest error estimate of a step that held, in tolerances; at most 1. */
  readonly largestError: number;
}
