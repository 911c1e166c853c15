/** Solved and failed pressures of one stack, kept in order while a table is being built. */
import type { WavesOnset } from '../damper/types.ts';
import type { ConvergedLift, FailedLift, LiftResult, StackInput, Theory } from '../types.ts';

/** Opening below which a shim counts as lying on its seat: far below any roughness [m]. */
export const CLOSED_BELOW_M = 1e-8;

/** Follows one stack through rising pressures across its shims, by one theory. */
export type LiftSolver = (stack: StackInput, pressures_Pa: readonly number[], theory: Theory) => LiftResult;

/** Solves the stacks of a run, whatever theory each is asked for. */
export interface StackSolver {
  readonly lift: LiftSolver;
  /** Where the round state of a stack ruffles among rising pressures, under large deflection. */
  readonly onset: (stack: StackInput, pressures_Pa: readonly number[]) => WavesOnset;
}

export interface StackSamples {
  /** Strictly rising in pressure, all below the first failure. */
  readonly points: readonly ConvergedLift[];
  readonly failures: readonly FailedLift[];
}

export const noSamples: StackSamples = { points: [], failures: [] };

/** Solves the pressures that are not there yet. Points above a failed pressure are dropped: the table ends before it. */
export function withPressures(
  samples: StackSamples,
  solve: (pressures_Pa: readonly number[]) => LiftResult,
  pressures_Pa: readonly number[],
): StackSamples {
  const known = new Set(samples.points.map(({ pressure_Pa }) => pressure_Pa));
  const wanted = [...new Set(pressures_Pa)].filter((p) => !known.has(p)).sort((p, q) => p - q);
  if (wanted.length === 0) return samples;
  const solved = solve(wanted).points;
  const failures = [...samples.failures, ...solved.filter((point) => point.status !== 'converged')].sort(byPressure);
  const end = failures.length > 0 ? failures[0].pressure_Pa : Number.POSITIVE_INFINITY;
  const points = [...samples.points, ...solved.filter((point) => point.status === 'converged')];
  return { points: points.filter(({ pressure_Pa }) => pressure_Pa < end).sort(byPressure), failures };
}

export const isClosed = ({ seatOpening_m }: ConvergedLift): boolean => seatOpening_m < CLOSED_BELOW_M;

const byPressure = (a: { pressure_Pa: number }, b: { pressure_Pa: number }) => a.pressure_Pa - b.pressure_Pa;
