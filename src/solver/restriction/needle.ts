/**
 * Cone of a needle over the edge of a hole, from creeping flow to a jet:
 *   s = x sin a,   A = pi s (d - s cos a), at most pi d^2/4,   w = A / s
 *   dp = 32 mu Q / (pi w s^2) + rho/2 (Q / (Cd A))^2
 * A is the frustum between the edge and the cone at right angles to it, the textbook area of a conical poppet (Merritt 1967,
 * from memory); the first term is the creeping loss of a slit of height s and length w (Wuest in Merritt 1967, from
 * memory), exact while s is small beside d; the second the orifice equation. With the needle out of the hole nothing but the hole is
 * left, and its own loss lies in series.
 *
 * symbol  unit  meaning
 * d       m     diameter of the hole
 * x       m     travel of the needle from closed
 * a       rad   angle between axis and cone: half the cone angle
 * s, w    m     height of the slit at right angles to the cone, mean length round it
 * Cd      -     discharge coefficient of the jet
 */
import { closedPath } from './closed.ts';
import { jetResistance, quadraticLoss } from './quadratic-loss.ts';
import type { FluidState, Restriction } from './types.ts';

export interface NeedleGap {
  readonly holeDiameter_m: number;
  /** Between opposite flanks [rad]. */
  readonly coneAngle_rad: number;
  readonly travel_m: number;
}

/** Area that the needle leaves open [m2]. */
export function needleArea({ holeDiameter_m: d, coneAngle_rad, travel_m: x }: NeedleGap): number {
  const a = coneAngle_rad / 2;
  // The frustum is longest half way out of the hole; from there on the hole is open.
  const s = Math.min(x * Math.sin(a), d / (2 * Math.cos(a)));
  return Math.min(Math.PI * s * (d - s * Math.cos(a)), (Math.PI / 4) * d * d);
}

/** The gap between needle and edge, without the hole behind it; closed at no travel. */
export function needleGap(gap: NeedleGap, fluid: FluidState, Cd: number): Restriction {
  const s = gap.travel_m * Math.sin(gap.coneAngle_rad / 2);
  if (s <= 0) return closedPath;
  const A = needleArea(gap);
  const creeping = (32 * fluid.dynamicViscosity_Pa_s) / (Math.PI * A * s);
  return { ...quadraticLoss(creeping, jetResistance(fluid.density_kg_m3, Cd, A)), throat_m2: () => A };
}
