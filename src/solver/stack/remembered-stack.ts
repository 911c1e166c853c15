/** A loaded stack that reads each pressure once, however often it is asked for. */
import type { LiftPoint } from '../types.ts';

/** @returns the same stack, its points remembered */
export function rememberedStack<Loaded extends { readonly at: (p: number) => LiftPoint }>(loaded: Loaded): Loaded {
  const points = new Map<number, LiftPoint>();
  const at = (p: number): LiftPoint => {
    const point = points.get(p) ?? loaded.at(p);
    points.set(p, point);
    return point;
  };
  return { ...loaded, at };
}
