/** A number that came out of a numerical solve, or the reason why there is none. */

export interface Converged {
  readonly status: 'converged';
  readonly value: number;
  readonly iterations: number;
  /** What is left over, in the unit of the quantity that was balanced. */
  readonly residual: number;
}

export interface NotConverged {
  readonly status: 'not-converged';
  readonly iterations: number;
  readonly residual: number;
  readonly reason: string;
}

export type Solved = Converged | NotConverged;

/** A closed form: nothing was iterated. A value that is no finite number is a failure all the same. */
export const exact = (value: number): Solved => finite({ status: 'converged', value, iterations: 0, residual: 0 });

/** Carries a result on through one more step, or the failure unchanged. */
export const mapSolved = (solved: Solved, step: (value: number) => number): Solved =>
  solved.status === 'converged' ? finite({ ...solved, value: step(solved.value) }) : solved;

/** The value, or NaN inside a function whose root is sought: the root finder turns NaN into a failure. */
export const valueOrNaN = (solved: Solved): number => (solved.status === 'converged' ? solved.value : Number.NaN);

function finite(solved: Converged): Solved {
  if (Number.isFinite(solved.value)) return solved;
  const { value, iterations, residual } = solved;
  return { status: 'not-converged', iterations, residual, reason: `the result is ${value}` };
}
