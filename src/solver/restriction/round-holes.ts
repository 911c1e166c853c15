/**
 * A bank of round holes: A = pi d^2 / 4, and the hydraulic diameter is d itself.
 *
 * symbol  unit   meaning
 * d       m      diameter of one hole
 */
import type { Holes } from './types.ts';

export interface RoundHoles {
  readonly count: number;
  readonly diameter_m: number;
  readonly length_m: number;
}

export function roundHoles({ count, diameter_m: d, length_m }: RoundHoles): Holes {
  return { count, area_m2: (Math.PI / 4) * d * d, hydraulicDiameter_m: d, length_m };
}

/** Diameter of the circle of the same area: the largest hydraulic diameter that a hole of this area can have. */
export const roundDiameter = (area_m2: number): number => Math.sqrt((4 * area_m2) / Math.PI);
