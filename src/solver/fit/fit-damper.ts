/** Fits named coefficients of a damper to what was measured of it, and says how well they are known and what cannot be told. */

import type { StackTheories } from '../damper/types.ts';
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks, TheoryChoice } from '../types.ts';
import { FIT_TABLE, type FitName, type FitValues, usualFitNames } from './fit-coefficients.ts';
import { type FitGroup, forceModel } from './force-model.ts';
import { intervalOf } from './interval.ts';
import { type Fitted, leastSquares, type Unknown } from './least-squares.ts';
import { studentT } from './student-t.ts';
import { undetermined } from './undetermined.ts';

export type { FitName };

export interface FitRequest {
  readonly groups: readonly FitGroup[];
  /** Absent, the usual ones of the first damper. */
  readonly names?: readonly FitName[];
  readonly theory: TheoryChoice;
}

export interface FittedCoefficient {
  readonly name: FitName;
  readonly unit: string;
  readonly physical: number;
  readonly value: number;
  readonly standardError: number;
  /** Interval that covers the true value with a probability of 95 %, if the model is right. */
  readonly low: number;
  readonly high: number;
  /** Standard error over what it was known to before: 1 where the measurements add nothing. */
  readonly leftOpen: number;
}

/** Coefficients that the measurements cannot tell from one another, or at all. */
export interface UntoldDirection {
  readonly parts: readonly { readonly name: FitName; readonly share: number }[];
  /** Standard deviation that the measurements alone leave, over what was known before; from 1 to 1e6. */
  readonly leftOpen: number;
}

export interface Rms {
  readonly compression_N: number | undefined;
  readonly rebound_N: number | undefined;
}

export interface FitDone {
  readonly status: 'fitted';
  /** As it was asked for. */
  readonly theory: TheoryChoice;
  /** Which one gave each stack, one entry a group. */
  readonly theories: readonly StackTheories[];
  readonly coefficients: readonly FittedCoefficient[];
  readonly untold: readonly UntoldDirection[];
  /** Standard deviation of the measured forces round the fitted ones [N]. */
  readonly scatter_N: number;
  readonly degreesOfFreedom: number;
  readonly pointCount: number;
  /** Root of the mean square of measured less build, with the physical values and with the fitted ones. */
  readonly before: Rms;
  readonly after: Rms;
  readonly iterations: number;
}

export interface FitFailed {
  readonly status: 'not-converged' | 'no-state' | 'too-few' | 'singular';
  readonly reason: string;
}

export type FitOutcome = FitDone | FitFailed;

export const CONFIDENCE = 0.95;
/** Share of what a coefficient is known to by which it is moved for the Jacobian. */
const ASIDE = 0.05;
/** No test bench is finer than that share of the greatest force it tells. */
const FINEST = 5e-4;
/** Evaluations that a usual fit takes for each coefficient, to tell how far it is; the last stretch waits for its end. */
const USUAL_EVALUATIONS = 20;

const deviationOf = (name: FitName): number => (FIT_TABLE[name].high - FIT_TABLE[name].low) / 2;

function unknownOf(name: FitName): Unknown {
  const { physical, least, most } = FIT_TABLE[name];
  const deviation = deviationOf(name);
  return { start: physical, low: least, high: most, aside: ASIDE * deviation, known: { mean: physical, deviation } };
}

const valuesOf = (names: readonly FitName[], b: readonly number[]): FitValues =>
  Object.fromEntries(names.map((name, i) => [name, b[i]]));

function rmsOf(groups: readonly FitGroup[], residuals: readonly number[]): Rms {
  const speeds = groups.flatMap(({ speed_m_s }) => speed_m_s);
  const side = (sign: 1 | -1): number | undefined => {
    const counted = residuals.filter((_, k) => speeds[k] * sign > 0);
    return counted.length === 0 ? undefined : Math.hypot(...counted) / Math.sqrt(counted.length);
  };
  return { compression_N: side(1), rebound_N: side(-1) };
}

/**
 * @throws InputError for a damper that cannot be; SolveStopped when the caller stops the run
 * @returns the fit, or why there is none; fitted values never replace the physical ones
 */
export function fitDamper({ groups, names: wanted, theory }: FitRequest, hooks: SolveHooks = {}): FitOutcome {
  const measured = groups.flatMap(({ force_N }) => force_N);
  if (measured.length === 0) return { status: 'too-few', reason: 'no measured point counts' };
  const names = wanted ?? usualFitNames(groups[0].damper);
  if (names.length === 0) return { status: 'too-few', reason: 'no coefficient is to be fitted' };
  const models = groups.map((group) => forceModel(group, theory, hooks));
  const unknowns = names.map(unknownOf);
  const expected = USUAL_EVALUATIONS * names.length;
  let done = 0;
  const residuals = (b: readonly number[]): number[] | undefined => {
    stopIfAsked(hooks);
    done++;
    hooks.onProgress?.(Math.min(done, expected - 1), expected);
    const forces = models.map((model) => model.at(valuesOf(names, b)));
    if (!forces.every((list) => list !== undefined)) return undefined;
    return forces.flat().map((force, k) => measured[k] - (force as number));
  };
  const before = residuals(names.map((name) => FIT_TABLE[name].physical));
  const finest_N = FINEST * Math.max(...measured.map(Math.abs));
  const found = leastSquares(unknowns, residuals, finest_N);
  if (found.status !== 'converged') return { status: found.status, reason: found.reason };
  const outcome = outcomeOf(names, unknowns, found);
  hooks.onProgress?.(expected, expected);
  return {
    status: 'fitted',
    theory,
    theories: models.map((model) => model.theories()),
    ...outcome,
    pointCount: measured.length,
    before: rmsOf(groups, before ?? []),
    after: rmsOf(groups, found.residuals),
  };
}

function outcomeOf(names: readonly FitName[], unknowns: readonly Unknown[], found: Fitted) {
  const { values, covariance, scatter, degreesOfFreedom, iterations } = found;
  const t = studentT(CONFIDENCE, degreesOfFreedom);
  const coefficients = names.map((name, i): FittedCoefficient => {
    const { physical, unit } = FIT_TABLE[name];
    const standardError = Math.sqrt(covariance.get(i, i));
    const leftOpen = standardError / deviationOf(name);
    return { name, unit, physical, value: values[i], standardError, ...intervalOf(found, unknowns, i, t), leftOpen };
  });
  const untold = undetermined(found.jacobian, names.map(deviationOf), scatter).map(({ leftOpen, parts }) => ({
    leftOpen,
    parts: parts.map(({ index, share }) => ({ name: names[index], share })),
  }));
  return { coefficients, untold, scatter_N: scatter, degreesOfFreedom, iterations };
}
