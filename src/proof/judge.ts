/** Holds what was computed against what was expected, quantity by quantity. */
import type { Evaluation, Quantities } from './evaluator.ts';
import type { Expected, ExpectedQuantity, Tolerance } from './proof-case.ts';

export interface QuantityVerdict {
  readonly name: string;
  readonly expected: number;
  readonly unit: string;
  /** Absent when the evaluator gave no such quantity. */
  readonly computed?: number;
  /** |computed - expected| in the unit of the quantity; infinite when nothing was computed. */
  readonly deviation: number;
  /** Deviation allowed, in the same unit. */
  readonly allowed: number;
  readonly passed: boolean;
}

export interface Verdict {
  readonly passed: boolean;
  /** Set when the evaluator failed; every quantity then counts as failed. */
  readonly failure?: string;
  readonly quantities: readonly QuantityVerdict[];
}

/** Deviation that a tolerance allows at an expected value, in the unit of that value. */
export const allowedDeviation = (tolerance: Tolerance, value: number): number =>
  'absolute' in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(value);

/** A case passes when each expected quantity was computed and lies within its tolerance. */
export function judge(evaluation: Evaluation, { quantities, tolerances }: Expected): Verdict {
  const computed = evaluation.status === 'evaluated' ? evaluation.quantities : {};
  const verdicts = Object.entries(quantities).map(([name, quantity]) =>
    judgeQuantity(name, quantity, tolerances[quantity.tolerance], computed),
  );
  return {
    passed: verdicts.every(({ passed }) => passed),
    ...(evaluation.status === 'failed' && { failure: evaluation.reason }),
    quantities: verdicts,
  };
}

function judgeQuantity(
  name: string,
  { value, unit }: ExpectedQuantity,
  tolerance: Tolerance,
  all: Quantities,
): QuantityVerdict {
  const computed = Object.hasOwn(all, name) ? all[name] : undefined;
  const allowed = allowedDeviation(tolerance, value);
  const deviation = computed === undefined ? Number.POSITIVE_INFINITY : Math.abs(computed - value);
  return { name, expected: value, unit, computed, deviation, allowed, passed: deviation <= allowed };
}

/** Largest share of its tolerance that any quantity uses up; above 1 the case fails. */
export const worstShare = ({ quantities }: Verdict): number =>
  quantities.reduce((worst, { deviation, allowed }) => Math.max(worst, deviation / allowed), 0);
