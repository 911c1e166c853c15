/**
 * Outward flow between two parallel discs, creeping with the first inertia term:
 *   dp = 6 mu Q ln(r2/r1) / (pi h^3) - (27/140) rho Q^2 / (pi^2 h^2) (1/r1^2 - 1/r2^2)
 * Source: Bird, Stewart & Lightfoot, Transport Phenomena, radial flow between discs (excerpt); inertia term Savage 1964 (from
 * memory, derived again). The second term is the pressure that the slowing flow regains; it is a correction, so the
 * law is used only while dp still rises with Q.
 *
 * symbol  unit   meaning
 * r1, r2  m      inner and outer radius of the gap, h its height
 * mu, rho        dynamic viscosity [Pa s], density [kg/m3]
 */
import { exact, type Solved } from '../numeric/solved.ts';
import type { FluidState, Restriction } from './types.ts';

export interface RadialGap {
  readonly innerRadius_m: number;
  readonly outerRadius_m: number;
  readonly gap_m: number;
}

/** From the kinetic-energy and acceleration terms of a parabolic profile [-]. */
const INERTIA_COEFFICIENT = 27 / 140;

/** Creeping resistance dp/Q of the gap [Pa s/m3]. */
export function radialGapResistance({ innerRadius_m: r1, outerRadius_m: r2, gap_m: h }: RadialGap, mu: number): number {
  return (6 * mu * Math.log(r2 / r1)) / (Math.PI * h ** 3);
}

/** @returns `not-converged` where inertia outweighs friction and the correction no longer holds. */
export function radialGap(gap: RadialGap, { dynamicViscosity_Pa_s: mu, density_kg_m3: rho }: FluidState): Restriction {
  const { innerRadius_m: r1, outerRadius_m: r2, gap_m: h } = gap;
  const a = radialGapResistance(gap, mu);
  const c = ((INERTIA_COEFFICIENT * rho) / (Math.PI * h) ** 2) * (1 / r1 ** 2 - 1 / r2 ** 2);
  const largestFlow = a / (2 * c);
  return {
    flow: (dp) => {
      const root = a * a - 4 * c * dp;
      return root >= 0 ? exact((2 * dp) / (a + Math.sqrt(root))) : beyondRange(dp - (a * largestFlow) / 2);
    },
    drop: (Q) => (Q <= largestFlow ? exact((a - c * Q) * Q) : beyondRange(Q - largestFlow)),
  };
}

/**
 * Force of the pressure that falls from dp at r1 to 0 at r2 as ln r, on the ring between them [N]:
 *   pi dp [ (r2^2 - r1^2) / (2 ln(r2/r1)) - r1^2 ]
 */
export function radialGapForce({ innerRadius_m: r1, outerRadius_m: r2 }: RadialGap, dp: number): number {
  return Math.PI * dp * ((r2 ** 2 - r1 ** 2) / (2 * Math.log(r2 / r1)) - r1 ** 2);
}

const beyondRange = (residual: number): Solved => ({
  status: 'not-converged',
  iterations: 0,
  residual,
  reason: 'inertia outweighs friction in the gap: the first-order correction no longer holds',
});
