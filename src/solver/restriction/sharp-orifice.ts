/**
 * Thin sharp-edged hole, from creeping flow to the contracted jet:
 *   dp = 6 pi mu Q / (A d) + rho/2 (Q / (Cd A))^2
 * For a round hole the first term is Sampson's exact dp = 24 mu Q / d^3, the second the orifice equation.
 * Source: Sampson 1891 (creeping limit, excerpt); von Mises contraction for Cd. The sum joins the limits smoothly; between
 * them (Re 10 to 200) measured coefficients overshoot, so the drop is up to about a fifth too high there.
 * For other shapes d is the hydraulic diameter and the creeping limit is an estimate.
 *
 * symbol  unit   meaning
 * A, d    m2, m  area and hydraulic diameter of one hole
 * mu, rho        dynamic viscosity [Pa s], density [kg/m3]
 * Cd      -      discharge coefficient at high Reynolds number
 */
import { jetResistance, quadraticLoss } from './quadratic-loss.ts';
import type { FluidState, Holes, Restriction } from './types.ts';

/** Bank of sharp-edged holes; their length plays no part. */
export function sharpOrifice(holes: Holes, fluid: FluidState, Cd: number): Restriction {
  const A = holes.count * holes.area_m2;
  const a = (6 * Math.PI * fluid.dynamicViscosity_Pa_s) / (A * holes.hydraulicDiameter_m);
  return { ...quadraticLoss(a, jetResistance(fluid.density_kg_m3, Cd, A)), throat_m2: () => A };
}
