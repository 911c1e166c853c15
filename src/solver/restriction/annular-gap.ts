/**
 * Laminar flow along the narrow gap between a piston and its tube, the piston off centre by a share of the clearance:
 *   dp = 12 mu L Q / (pi D c^3 (1 + 1.5 e^2)) + (54/35) rho/2 (Q / (pi D c))^2,   D = outer diameter - c
 * The first term is the flow between parallel plates rolled up on the mean diameter (Merritt 1967, from memory; against the
 * exact concentric annulus 2e-6 at c/r = 0.01 and 1.5e-4 at 0.1). The second is the kinetic energy of the parabolic
 * profile, lost at the exit: 54/35 is the mean of (u/mean u)^3 over it (own); it counts where the gap is wide or short.
 * Holds below a Reynolds number of about 2000 on 2c. Above it friction is turbulent and the profile flat, f L/(2c) + 1.06 heads with f of
 * passage-friction.ts: from Re 4000 to 1e5, over a length of 10 to 50 gap widths 2c, the drop here keeps within about a quarter of that (own).
 * Left out: development of the profile, drag on the walls.
 *
 * A wall that moves drags oil along with half its speed, whatever the eccentricity:
 *   Q_wall = pi D c V / 2
 *
 * symbol  unit  meaning
 * c       m     clearance: half the difference of the diameters
 * L       m     length of the gap
 * e       -     distance of the axes over c, 0 concentric to 1 touching
 * V       m/s   speed of the moving wall
 */
import { quadraticLoss } from './quadratic-loss.ts';
import type { FluidState, Restriction } from './types.ts';

export interface AnnularGap {
  readonly outerDiameter_m: number;
  readonly clearance_m: number;
  readonly length_m: number;
  readonly eccentricity: number;
}

const KINETIC_FACTOR = 54 / 35;

/** The pressure-driven part of the flow. */
export function annularGap(
  gap: AnnularGap,
  { dynamicViscosity_Pa_s: mu, density_kg_m3: rho }: FluidState,
): Restriction {
  const { clearance_m: c, length_m: L, eccentricity: e } = gap;
  const A = gapArea(gap);
  const a = (12 * mu * L) / (A * c * c * (1 + 1.5 * e * e));
  return quadraticLoss(a, (KINETIC_FACTOR * rho) / (2 * A * A));
}

/** What a wall drags along at a speed of 1 m/s [m3/s per m/s]. */
export const wallDrivenArea = (gap: Pick<AnnularGap, 'outerDiameter_m' | 'clearance_m'>): number => gapArea(gap) / 2;

const gapArea = ({ outerDiameter_m, clearance_m: c }: Pick<AnnularGap, 'outerDiameter_m' | 'clearance_m'>): number =>
  Math.PI * (outerDiameter_m - c) * c;
