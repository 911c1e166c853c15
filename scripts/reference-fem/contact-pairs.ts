/** Which bodies of the continuum model may touch, and over which radii. */
import { type Body, isElastic } from './bodies.ts';

export interface Interval {
  readonly from_mm: number;
  readonly to_mm: number;
}

export interface ContactPair {
  readonly lower: Body;
  readonly upper: Body;
  /** Body whose face carries the contact points; the other one is searched for. */
  readonly slave: 'lower' | 'upper';
  /** Radii at which no third body lies between the two. */
  readonly spans: readonly Interval[];
}

/** @param bodies from the piston outward: neighbours, and bodies that face each other past shorter ones between them */
export function contactPairs(bodies: readonly Body[]): ContactPair[] {
  return bodies.flatMap((lower, i) =>
    bodies.slice(i + 1).flatMap((upper, k): ContactPair[] => {
      if (!isElastic(lower) && !isElastic(upper)) return [];
      const spans = uncovered(facing(lower, upper), bodies.slice(i + 1, i + 1 + k));
      return spans.length === 0 ? [] : [{ lower, upper, slave: slaveOf(lower, upper), spans }];
    }),
  );
}

function facing(a: Body, b: Body): Interval {
  return {
    from_mm: Math.max(a.innerRadius_mm, b.innerRadius_mm),
    to_mm: Math.min(a.outerRadius_mm, b.outerRadius_mm),
  };
}

const SHORTEST_MM = 1e-9;

function uncovered(span: Interval, between: readonly Body[]): Interval[] {
  return between.reduce(
    (left, { innerRadius_mm, outerRadius_mm }) =>
      left
        .flatMap(({ from_mm, to_mm }) => [
          { from_mm, to_mm: Math.min(to_mm, innerRadius_mm) },
          { from_mm: Math.max(from_mm, outerRadius_mm), to_mm },
        ])
        .filter(isLong),
    [span].filter(isLong),
  );
}

const isLong = ({ from_mm, to_mm }: Interval): boolean => to_mm - from_mm > SHORTEST_MM;

/**
 * A face that slides past the rim of the other loses its contact there, so the shorter one carries the points. Of two
 * equal rims it is the lower one: as the pair bends away from the piston, the upper one reaches out over it.
 */
function slaveOf(lower: Body, upper: Body): 'lower' | 'upper' {
  if (!isElastic(lower)) return 'upper';
  if (!isElastic(upper)) return 'lower';
  if (lower.role === 'ring' || upper.role === 'ring') return lower.role === 'ring' ? 'lower' : 'upper';
  return lower.outerRadius_mm <= upper.outerRadius_mm ? 'lower' : 'upper';
}
