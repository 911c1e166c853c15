/** Where the surfaces of a solved stack are, from thicknesses and lifts alone: every shim, coned, floating or a loose ring. */
import type { ConvergedLift, StackInput } from '../../src/solver/types.ts';

export interface SurfaceGap {
  readonly between: 'shims' | 'seat' | 'backing plate';
  readonly radius_m: number;
  readonly gap_m: number;
}

interface Body {
  readonly first: number;
  readonly thickness_m: number;
  /** Lower face over the hub plane, node by node [m]. */
  readonly atRest: readonly number[];
  readonly solved: readonly number[];
}

/** Every gap at every node but those at the clamp. */
export function surfaceGaps(stack: StackInput, { shape }: ConvergedLift): SurfaceGap[] {
  const bodies = bodiesOf(stack, shape);
  const { radius_m } = shape;
  const nearest = (r: number) =>
    radius_m.reduce((best, x, i) => (Math.abs(x - r) < Math.abs(radius_m[best] - r) ? i : best), 0);
  const { seat, backingPlate, shims, clampRadius_m } = stack;
  const land = seat && { from: nearest(seat.innerRadius_m), to: nearest(seat.outerRadius_m), z_m: seat.height_m };
  const clamped = shims.filter(({ innerRadius_m = 0 }) => innerRadius_m <= clampRadius_m);
  const top_m = clamped.reduce((sum, { thickness_m }) => sum + thickness_m, 0);
  const plate = backingPlate && {
    to: nearest(backingPlate.outerRadius_m ?? radius_m[radius_m.length - 1]),
    z_m: top_m + backingPlate.gap_m,
  };
  const gaps: SurfaceGap[] = [];
  for (let node = 1; node < radius_m.length; node++) {
    const there = bodies.filter((body) => covers(body, node));
    if (there.length === 0) continue;
    const lower = (body: Body) => body.solved[node - body.first];
    const upper = (body: Body) => lower(body) + body.thickness_m;
    const add = (between: SurfaceGap['between'], gap_m: number) =>
      gaps.push({ between, radius_m: radius_m[node], gap_m });
    for (let i = 1; i < there.length; i++) add('shims', lower(there[i]) - upper(there[i - 1]));
    if (land && node >= land.from && node <= land.to) add('seat', lower(there[0]) - land.z_m);
    if (plate && node <= plate.to) add('backing plate', plate.z_m - upper(there[there.length - 1]));
  }
  return gaps;
}

const covers = ({ first, atRest }: Body, node: number) => node >= first && node < first + atRest.length;

/** On the clamp a shim lies on those before it; a ring lies on the highest place under it, or on the seat. */
function bodiesOf({ shims, clampRadius_m, seat }: StackInput, shape: ConvergedLift['shape']): Body[] {
  const { radius_m, firstNode, lift_m } = shape;
  const bodies: Body[] = [];
  let hub_m = 0;
  shims.forEach(({ innerRadius_m = 0, thickness_m, dish_m = 0 }, s) => {
    const first = firstNode[s];
    const nodes = Array.from(lift_m[s].keys());
    const [bore, rim] = [radius_m[first], radius_m[first + lift_m[s].length - 1]];
    const cone = nodes.map((i) => (dish_m * (radius_m[first + i] - bore)) / (rim - bore));
    const onClamp = innerRadius_m <= clampRadius_m;
    const under = nodes.flatMap((i) => {
      const body = bodies.findLast((other) => covers(other, first + i));
      return body ? [body.atRest[first + i - body.first] + body.thickness_m - cone[i]] : [];
    });
    const resting = under.length > 0 ? Math.max(...under) : (seat?.height_m ?? 0);
    const base = onClamp ? hub_m : resting;
    const atRest = cone.map((z) => base + z);
    bodies.push({ first, thickness_m, atRest, solved: nodes.map((i) => base + lift_m[s][i]) });
    if (onClamp) hub_m += thickness_m;
  });
  return bodies;
}
