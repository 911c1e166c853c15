/**
 * A cone on a sharp seat under a spring: the gap of a needle (needle.ts) at the lift that the balance of forces gives,
 *   p A_s - 2 Cd Cv A(x) p cos a = F_0 + k x,   0 <= x <= X
 * The second term is the steady flow force rho Q u cos a of a jet that leaves along the cone, Q = Cd A sqrt(2p/rho),
 * u = Cv sqrt(2p/rho) (Merritt 1967, from memory; Cv = 0.98 there). It closes. In creeping flow it is less than that, but there A is next
 * to nothing beside A_s. The balance gives p for every x, so flow and drop both rise with x. Where the term would come up to p A_s, for
 * cones sharper than about 67 degrees nearly out of their hole, no pressure lifts the cone further: that lift is its stop if X is
 * not reached before. Left out: momentum of the oil that comes in, pressure regained along the cone; a thesis on poppets (MIT
 * 1957) measured flow forces about a fifth below the ideal ones.
 *
 * symbol  unit    meaning
 * d, A_s  m, m2   diameter and area of the seat
 * a       rad     half the cone angle
 * A       m2      area that the cone leaves open
 * p       Pa      pressure over the poppet
 * F_0, k  N, N/m  force at rest and rate of the spring
 * x, X    m       lift, lift at the stop
 */
import type { PoppetInput } from '../damper/types.ts';
import type { Coefficients } from './coefficients.ts';
import { needleArea, needleGap } from './needle.ts';
import { type SpringLoaded, springLoaded } from './spring-loaded.ts';
import type { FluidState } from './types.ts';

/** Velocity coefficient of the jet [-]. */
const JET_VELOCITY = 0.98;

/** The lift at which no pressure would be enough is kept this share away from. */
const MARGIN = 1e-12;

/** Steady flow force over A p of a jet at an angle to the axis [-]. */
export const jetForceFactor = (Cd: number, angle_rad: number): number => 2 * Cd * JET_VELOCITY * Math.cos(angle_rad);

/** The cone under its spring; `sharpEdgeDischarge` is the coefficient of its jet. */
export function poppet(
  { seatDiameter_m: d, coneAngle_rad, rate_N_m: k, preload_N: F_0, travel_m }: PoppetInput,
  fluid: FluidState,
  { sharpEdgeDischarge: Cd }: Coefficients,
): SpringLoaded {
  const gapAt = (x: number) => ({ holeDiameter_m: d, coneAngle_rad, travel_m: x });
  const A_s = (Math.PI / 4) * d * d;
  const c = jetForceFactor(Cd, coneAngle_rad / 2);
  return springLoaded({
    largestLift_m: Math.min(travel_m, (1 - MARGIN) * liftAtArea(A_s / c, d, coneAngle_rad / 2)),
    holdingPressure: (x) => (F_0 + k * x) / (A_s - c * needleArea(gapAt(x))),
    opening: (x) => needleGap(gapAt(x), fluid, Cd),
  });
}

/** Lift at which the cone leaves an area open; infinite for more than the hole [m]. */
function liftAtArea(A: number, d: number, a: number): number {
  if (A >= (Math.PI / 4) * d * d) return Number.POSITIVE_INFINITY;
  const slit = (2 * A) / (Math.PI * (d + Math.sqrt(d * d - (4 * Math.cos(a) * A) / Math.PI)));
  return slit / Math.sin(a);
}
