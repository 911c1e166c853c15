/**
 * Check valve: a rigid plate over ports, under a light spring, up to a stop. In series: ports, then the curtain under the plate.
 *   p phi A = F_0 + k x,   A = pi (r2^2 - r1^2) / (2 ln(r2/r1)),   0 <= x <= X
 * A is the area on which p would give the force of full pressure inside the seat that falls with ln r to nothing across the land
 * (radial flow between discs, Bird, Stewart & Lightfoot, excerpt; creeping flow over the land). Ports that open a share phi of
 * the circumference press on that share and let oil out through that share of the curtain. Left out: momentum of the port
 * jets, pressure regained in the land, weight and inertia of the plate, sticking.
 *
 * symbol  unit    meaning
 * r1, r2  m       inner and outer radius of the land
 * p       Pa      pressure across the plate
 * F_0, k  N, N/m  force at rest and rate of the spring
 * x, X    m       lift, lift at the stop
 * phi     -       share of the circumference that the ports open
 */
import type { CheckInput } from '../damper/types.ts';
import type { Coefficients } from './coefficients.ts';
import { curtain } from './curtain.ts';
import { drilledHole } from './drilled-hole.ts';
import { type SpringLoaded, springLoaded } from './spring-loaded.ts';
import type { FluidState } from './types.ts';

/** The plate with its ports. */
export function checkPlate(
  { ports, seat, rate_N_m: k, preload_N: F_0, travel_m }: CheckInput,
  fluid: FluidState,
  coefficients: Coefficients,
): SpringLoaded {
  const { coveredFraction = 1 } = ports;
  const { innerRadius_m, outerRadius_m } = seat;
  const liftingArea_m2 = coveredFraction * plateArea(seat);
  return springLoaded({
    largestLift_m: travel_m,
    holdingPressure: (x) => (F_0 + k * x) / liftingArea_m2,
    opening: (x) =>
      curtain({ innerRadius_m, outerRadius_m, gap_m: x, coveredFraction }, fluid, coefficients.jetDischarge),
    before: drilledHole(ports, fluid, coefficients),
  });
}

/** Force on a plate per pressure across it [m2]. */
export const plateArea = ({ innerRadius_m: r1, outerRadius_m: r2 }: CheckInput['seat']): number =>
  (Math.PI * (r2 ** 2 - r1 ** 2)) / (2 * Math.log(r2 / r1));
