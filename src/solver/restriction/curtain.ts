/**
 * Opening between the face shim and its seat, from creeping flow to a jet:
 *   dp = [ 6 mu ln(r2/r1) / (pi h^3) + 32 mu / (pi w h^2) ] Q + rho/2 ( Q / (Cd w h) )^2,   w = 2 pi r1
 * The first term is creeping radial flow between discs over the seat land, the second the creeping loss of a slit edge (exact for
 * a land of no width, Wuest in Merritt 1967, from memory; recomputed), the third the jet through the curtain. Each is
 * right alone in its limit; the sum is smooth and rises with Q and with 1/h, and no Reynolds number needs to be chosen:
 * the coefficient referred to the whole drop runs by itself from 0 at Re = 0 to Cd.
 * The curtain stands on the inner edge of the land, where its area is least. Ports that are smaller than the curtain
 * limit the flow because their loss lies in series. Ports that open a share phi of the circumference let oil out through that share:
 * the same drop at phi times the flow. Left out: pressure regained along a wide land, flow sideways out of the share, tilt.
 *
 * symbol  unit   meaning
 * r1, r2  m      inner and outer radius of the land that the shim covers
 * h       m      opening at the seat
 * Q       m3/s   flow over the share phi of the circumference
 * Cd      -      discharge coefficient of the jet
 */
import { closedPath } from './closed.ts';
import { jetResistance, quadraticLoss } from './quadratic-loss.ts';
import { type RadialGap, radialGapResistance } from './radial-gap.ts';
import type { FluidState, Restriction } from './types.ts';

/** Creeping flow through a slit of height h and width w: Q = pi h^2 w dp / (32 mu). */
const slitResistance = (h: number, w: number, mu: number): number => (32 * mu) / (Math.PI * h * h * w);

export interface CurtainOpening extends RadialGap {
  /** Share of the circumference through which oil leaves; 1 when absent. */
  readonly coveredFraction?: number;
}

/** Area between shim and seat through which oil leaves [m2]. */
export const curtainArea = ({ innerRadius_m, gap_m, coveredFraction = 1 }: CurtainOpening): number =>
  coveredFraction * 2 * Math.PI * innerRadius_m * gap_m;

/** Creeping and inertial resistance of an opening above 0: dp = a Q + b Q^2 [Pa s/m3, Pa s2/m6]. */
export function curtainResistances(opening: CurtainOpening, fluid: FluidState, Cd: number): { a: number; b: number } {
  const { innerRadius_m: r1, gap_m: h, coveredFraction: phi = 1 } = opening;
  const w = 2 * Math.PI * r1;
  const mu = fluid.dynamicViscosity_Pa_s;
  const a = (radialGapResistance(opening, mu) + slitResistance(h, w, mu)) / phi;
  return { a, b: jetResistance(fluid.density_kg_m3, Cd, curtainArea(opening)) };
}

/** Restriction of an opening of `gap_m`; closed at 0. */
export function curtain(opening: CurtainOpening, fluid: FluidState, Cd: number): Restriction {
  if (opening.gap_m <= 0) return closedPath;
  const { a, b } = curtainResistances(opening, fluid, Cd);
  const area_m2 = curtainArea(opening);
  return { ...quadraticLoss(a, b), throat_m2: () => area_m2 };
}
