/**
 * A body that pressure lifts off its seat against a spring, up to a stop. Everything is explicit in its lift x:
 *   p = p(x), the pressure across the opening that holds the body there;   Q = opening flow at (x, p);   dp = p + p_b(Q)
 * All of them rise with x. At rest Q = 0 for every dp up to p(0), at the stop x = X for every p above p(X); so a given flow
 * or a given drop is one root in x, or the law of the body at its stop. A spring without rate lets x run from 0 to X at one
 * and the same p.
 *
 * symbol  unit  meaning
 * x, X    m     lift, lift at the stop
 * p       Pa    pressure across the opening; p_b that over what lies before it
 * dp      Pa    pressure over both
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';
import { exact, mapSolved, type Solved, valueOrNaN } from '../numeric/solved.ts';
import { series } from './series.ts';
import type { Restriction } from './types.ts';

/** A restriction that opens by itself. */
export interface SpringLoaded extends Restriction {
  /** Nothing passes up to this drop [Pa]. */
  readonly openingDrop_Pa: number;
  /** Lift at a flow >= 0 [m]; 0 at rest, whatever the drop. */
  readonly lift: (flow_m3_s: number) => Solved;
  /** Lift at its stop [m], and flow and drop that hold it at a lift up to there [m3/s, Pa]; NaN where a part does not solve. */
  readonly largestLift_m: number;
  readonly atLift: (lift_m: number) => { readonly flow: number; readonly drop: number };
  /** Area of its narrowest jet at a lift above 0 [m2]. */
  readonly throatAtLift_m2: (lift_m: number) => number;
}

export interface SpringLoadedLaw {
  readonly largestLift_m: number;
  /** Pressure across the opening that holds a lift [Pa]: rising with it. */
  readonly holdingPressure: (lift_m: number) => number;
  /** What lets oil through at a lift above 0: ever more. */
  readonly opening: (lift_m: number) => Restriction;
  /** In series, before the opening. */
  readonly before?: Restriction;
}

/** `not-converged` only where one of its parts is. */
export function springLoaded({ largestLift_m: X, holdingPressure, opening, before }: SpringLoadedLaw): SpringLoaded {
  const fullyOpen = opening(X);
  const atStop = before ? series(before, fullyOpen) : fullyOpen;
  const dropBefore = (Q: number) => (before ? valueOrNaN(before.drop(Q)) : 0);
  const flowAt = (x: number) => (x > 0 ? valueOrNaN(opening(x).flow(holdingPressure(x))) : 0);
  const atLift = (x: number) => {
    const flow = flowAt(x);
    return { flow, drop: holdingPressure(x) + dropBefore(flow) };
  };
  const openingDrop_Pa = holdingPressure(0);
  const stop = atLift(X);
  const between = (excess: (x: number) => number) => bracketedRoot(excess, 0, X);
  const lift = (Q: number): Solved => {
    if (Q === 0) return exact(0);
    return Q >= stop.flow ? exact(X) : between((x) => flowAt(x) - Q);
  };
  const flow = (dp: number): Solved => {
    if (dp <= openingDrop_Pa) return exact(0);
    if (dp >= stop.drop) return atStop.flow(dp);
    return mapSolved(
      between((x) => atLift(x).drop - dp),
      flowAt,
    );
  };
  const drop = (Q: number): Solved => {
    if (Q === 0) return exact(0);
    if (Q >= stop.flow) return atStop.drop(Q);
    return mapSolved(lift(Q), (x) => holdingPressure(x) + dropBefore(Q));
  };
  const throatAtLift_m2 = (x: number): number => {
    const narrow = opening(x);
    return (before ? series(before, narrow) : narrow).throat_m2?.(0) ?? Number.POSITIVE_INFINITY;
  };
  const throat_m2 = (Q: number): number => throatAtLift_m2(valueOrNaN(lift(Q)));
  return { openingDrop_Pa, lift, largestLift_m: X, atLift, throatAtLift_m2, flow, drop, throat_m2 };
}
