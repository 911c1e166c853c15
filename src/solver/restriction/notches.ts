/**
 * Bleed notches in the rim of the face shim: rectangular slots that stay open while the shim lies on its seat. The seat is
 * their floor, the next shim their roof, the seat land their length:
 *   A = w t,   d = 4 A / perimeter = 2 w t / (w + t),   L = r2 - r1
 * Each is a hole of any length over its hydraulic diameter (drilled-hole.ts); over a land narrower than d/2 that is the
 * sharp-edged orifice. Left out: what the notch adds to the lifted opening beside its own area, and the depth inside the land.
 *
 * symbol  unit  meaning
 * w, t    m     width of one notch along the rim, thickness of the face shim
 * r1, r2  m     inner and outer radius of the land that the shim covers
 */
import type { NotchesInput } from '../damper/types.ts';
import { closedPath } from './closed.ts';
import type { Coefficients } from './coefficients.ts';
import { drilledHole } from './drilled-hole.ts';
import type { FluidState, Restriction } from './types.ts';

export interface SeatLand {
  readonly innerRadius_m: number;
  readonly outerRadius_m: number;
}

/** @param thickness_m of the face shim; without notches the path is closed */
export function notchPath(
  notches: NotchesInput | undefined,
  thickness_m: number,
  { innerRadius_m, outerRadius_m }: SeatLand,
  fluid: FluidState,
  coefficients: Coefficients,
): Restriction {
  if (!notches) return closedPath;
  const { count, width_m: w } = notches;
  const slot = {
    count,
    area_m2: w * thickness_m,
    hydraulicDiameter_m: (2 * w * thickness_m) / (w + thickness_m),
    length_m: outerRadius_m - innerRadius_m,
  };
  return drilledHole(slot, fluid, coefficients);
}
