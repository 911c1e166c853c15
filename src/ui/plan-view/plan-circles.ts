/** The circles on a shim at which its lift is told: every edge of the stack that lies on it, from the clamp out to its rim. */
import { metresFromMillimetres, millimetresFromMetres } from '../../units/si.ts';
import { liftAt } from '../section/wave-shape.ts';
import type { ShownPlan } from './shown-plan.ts';

export type CircleName =
  | 'clamp'
  | 'bore'
  | 'zoneInner'
  | 'seatInner'
  | 'seatOuter'
  | 'rim'
  | { readonly rimOf: number };

export interface ToldCircle {
  /** What stands there, piston side first. */
  readonly names: readonly CircleName[];
  readonly diameter_mm: number;
  /** Crest and trough are those of the rim of the face shim [m]. */
  readonly mean_m: number;
  readonly crest_m: number;
  readonly trough_m: number;
}

/** Radii of one node, after their way through two units [m]. */
const SAME_M = 1e-9;

function namedDiameters({ stack, body, shims, shim }: ShownPlan): [CircleName, number][] {
  const own = shims[shim];
  const others = shims
    .map((other, n): [CircleName, number] => [{ rimOf: n }, other.outerDiameter_mm])
    .filter(([, diameter]) => diameter < own.outerDiameter_mm);
  return [
    ['clamp', stack.valving.clampDiameter_mm],
    ['bore', own.innerDiameter_mm ?? 0],
    ['zoneInner', body.pressureZone.innerDiameter_mm],
    ['seatInner', body.seat.innerDiameter_mm],
    ['seatOuter', body.seat.outerDiameter_mm],
    ...others,
    ['rim', own.outerDiameter_mm],
  ];
}

/** Rising; only circles at which the solver has a node of this shim. */
export function toldCircles(plan: ShownPlan): ToldCircle[] {
  const { field, shim } = plan;
  if (!field) return [];
  const { shape } = field.state;
  const { crest, trough } = field.extremes ?? { crest: 0, trough: 0 };
  const [atCrest, atTrough] = [liftAt(shape, shim, crest), liftAt(shape, shim, trough)];
  const first = shape.firstNode[shim];
  const told = new Map<number, CircleName[]>();
  for (const [name, diameter_mm] of namedDiameters(plan)) {
    const radius_m = metresFromMillimetres(diameter_mm / 2);
    const node = atCrest.findIndex((_, i) => Math.abs(shape.radius_m[first + i] - radius_m) < SAME_M);
    if (node >= 0) told.set(node, [...(told.get(node) ?? []), name]);
  }
  return [...told]
    .sort(([a], [b]) => a - b)
    .map(([node, names]) => ({
      names,
      diameter_mm: 2 * millimetresFromMetres(shape.radius_m[first + node]),
      mean_m: shape.lift_m[shim][node],
      crest_m: atCrest[node],
      trough_m: atTrough[node],
    }));
}
