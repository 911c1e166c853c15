/** Tresca along a shim against hand-worked numbers; the assumed strength is that of the table of life/strength.ts. */
import { describe, expect, it } from 'vitest';
import { stackStresses } from '../../../../src/solver/life/stack-stresses.ts';
import type { ShimInput, ShimStress } from '../../../../src/solver/types.ts';

const steel: ShimInput = { outerRadius_m: 0.01, thickness_m: 0.0002, youngsModulus_Pa: 206e9, poissonsRatio: 0.3 };
const aluminium: ShimInput = { ...steel, youngsModulus_Pa: 70e9 };

const profile: ShimStress = {
  radius_m: Float64Array.of(0.006, 0.01),
  // Tresca: max(100, 30, 70) = 100; max(50, 40, 90) = 90.
  piston: { radial_Pa: Float64Array.of(100, -50), hoop_Pa: Float64Array.of(30, 40) },
  // Tresca: max(120, 36, 84) = 120; max(10, 20, 10) = 20.
  far: { radial_Pa: Float64Array.of(-120, 10), hoop_Pa: Float64Array.of(-36, 20) },
  peak: { stress_Pa: -120, radius_m: 0.006, face: 'far', direction: 'radial' },
};

describe('stresses of a stack along its radius', () => {
  it('are those of the face where they are greater, node by node', () => {
    const { equivalent_Pa } = stackStresses([steel], [[profile]]);
    expect(equivalent_Pa.map((state) => state.map((along) => [...along]))).toEqual([[[120, 90]]]);
  });

  it('are one list for shims that share a profile', () => {
    const [[first, second]] = stackStresses([steel, steel], [[profile, profile]]).equivalent_Pa;
    expect(second).toBe(first);
  });

  it('stand against the yield strength: given, assumed for spring steel (0.85 of 1500 MPa), unknown for another metal', () => {
    const given = { ...aluminium, strength: { yield_Pa: 5e8, tensile_Pa: 6e8, endurance_Pa: 2e8 } };
    const { yield_Pa } = stackStresses([steel, aluminium, given], []);
    expect(yield_Pa).toEqual([1275e6, null, 5e8]);
  });
});
