/** A solver of stacks that solves each pressure of a stack once, however often and by whomever it is asked for. */
import type { LiftPoint, StackInput } from '../types.ts';
import type { LiftSolver } from './stack-samples.ts';

/** Lifts do not depend on oil, ports or coefficients, so valves that differ in these alone share their stack's solves. */
export function rememberedLift(solveLift: LiftSolver): LiftSolver {
  const known = new Map<StackInput, Map<number, LiftPoint>>();
  return (stack, pressures_Pa) => {
    const points = known.get(stack) ?? new Map<number, LiftPoint>();
    known.set(stack, points);
    const wanted = pressures_Pa.filter((p) => !points.has(p));
    const { theory, points: solved } = solveLift(stack, wanted);
    wanted.forEach((p, i) => {
      points.set(p, solved[i]);
    });
    return { theory, points: pressures_Pa.flatMap((p) => points.get(p) ?? []) };
  };
}
