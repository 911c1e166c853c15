/**
 * Radial and hoop stress on both faces of one shim, at the nodes of its plate.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | z | m | height over the mid-surface, away from the piston: -t/2 on the piston face, +t/2 on the far face |
 * | kr, kt | 1/m | curvatures w″ and w′/r |
 * | er, et | - | mid-surface strains |
 *
 * σr = E/(1 - ν²) [er + ν et - z (kr + ν kt)],  σθ = E/(1 - ν²) [et + ν er - z (kt + ν kr)]; tension is positive.
 * Source: Timoshenko & Woinowsky-Krieger 1959, sections 10 and 100 (plane stress in each layer of a thin plate).
 * Left out: the pressure itself (σz = -p, far below σr in a thin shim), transverse shear, the local stress under a
 * contact circle and in the corner of the clamp.
 */
import type { FaceStress, PeakStress, ShimInput, ShimStress } from '../types.ts';
import type { SectionStrains } from './section-strains.ts';

/** @param radius_m of the nodes of the plate that the shim belongs to, from its bore to its rim */
export function stressProfile(radius_m: Float64Array, strains: SectionStrains, shim: ShimInput): ShimStress {
  const half = shim.thickness_m / 2;
  const piston = faceStress(strains, shim, -half);
  const far = faceStress(strains, shim, half);
  return { radius_m, piston, far, peak: peakOf(radius_m, { piston, far }) };
}

function faceStress({ kr, kt, er, et }: SectionStrains, shim: ShimInput, z: number): FaceStress {
  const { youngsModulus_Pa: E, poissonsRatio: nu } = shim;
  const stiffness = E / (1 - nu ** 2);
  return {
    radial_Pa: kr.map((k, i) => stiffness * (er[i] + nu * et[i] - z * (k + nu * kt[i]))),
    hoop_Pa: kt.map((k, i) => stiffness * (et[i] + nu * er[i] - z * (k + nu * kr[i]))),
  };
}

/** The stress of greatest magnitude; of equal ones the innermost, radial before hoop, the one in tension first. */
function peakOf(radius_m: Float64Array, faces: Pick<ShimStress, 'piston' | 'far'>): PeakStress {
  let peak: PeakStress = { stress_Pa: 0, radius_m: radius_m[0], face: 'piston', direction: 'radial' };
  for (const direction of ['radial', 'hoop'] as const) {
    for (const face of ['piston', 'far'] as const) {
      faces[face][`${direction}_Pa`].forEach((stress_Pa, i) => {
        if (exceeds(stress_Pa, peak.stress_Pa)) peak = { stress_Pa, radius_m: radius_m[i], face, direction };
      });
    }
  }
  return peak;
}

/** Stresses that differ by rounding alone are equal. */
const ROUNDING = 1e-12;

function exceeds(stress: number, other: number): boolean {
  const difference = Math.abs(stress) - Math.abs(other);
  const equal = Math.abs(difference) <= ROUNDING * Math.abs(other);
  return equal ? stress > 0 && other < 0 : difference > 0;
}
