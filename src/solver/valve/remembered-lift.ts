/** A solver of stacks that solves each pressure of a stack once for each theory, however often and by whomever it is asked for. */
import type { LiftPoint, StackInput } from '../types.ts';
import type { LiftSolver } from './stack-samples.ts';

/** Lifts do not depend on oil, ports or coefficients, so valves that differ in these alone share their stack's solves. */
export function rememberedLift(solveLift: LiftSolver): LiftSolver {
  const known = new Map<StackInput, Map<string, LiftPoint>>();
  return (stack, pressures_Pa, theory) => {
    const points = known.get(stack) ?? new Map<string, LiftPoint>();
    known.set(stack, points);
    const keyOf = (p: number): string => `${theory} ${p}`;
    const wanted = pressures_Pa.filter((p) => !points.has(keyOf(p)));
    const solved = solveLift(stack, wanted, theory);
    wanted.forEach((p, i) => {
      points.set(keyOf(p), solved.points[i]);
    });
    return { theory: solved.theory, points: pressures_Pa.flatMap((p) => points.get(keyOf(p)) ?? []) };
  };
}
