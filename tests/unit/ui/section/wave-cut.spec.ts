/** A stack cut along a radius, against the solver that made its shape. */
import { describe, expect, it } from 'vitest';
import type { ValveBody, Valving } from '../../../../src/model/project.ts';
import { solveLift } from '../../../../src/solver/index.ts';
import type { StackState } from '../../../../src/ui/section/shape-at.ts';
import { cutState } from '../../../../src/ui/section/wave-cut.ts';
import { extremesOf, shapeBetween } from '../../../../src/ui/section/wave-shape.ts';

const valving: Valving = {
  clampDiameter_mm: 12,
  seatHeight_mm: 0.05,
  shims: [
    { outerDiameter_mm: 24, thickness_mm: 0.15 },
    { outerDiameter_mm: 16, thickness_mm: 0.15 },
  ],
};
const body: ValveBody = {
  ports: { count: 4, diameter_mm: 4, length_mm: 10, coveredFraction: 0.65 },
  pressureZone: { innerDiameter_mm: 13, outerDiameter_mm: 22 },
  seat: { innerDiameter_mm: 22, outerDiameter_mm: 23 },
};

function solved(): { state: StackState; maxEdgeLift_m: number; minEdgeLift_m: number } {
  const result = solveLift(
    {
      clampRadius_m: 0.006,
      shims: valving.shims.map(({ outerDiameter_mm, thickness_mm }) => ({
        outerRadius_m: outerDiameter_mm / 2000,
        thickness_m: thickness_mm / 1000,
        youngsModulus_Pa: 206e9,
        poissonsRatio: 0.3,
      })),
      pressureZone: { innerRadius_m: 0.0065, outerRadius_m: 0.011 },
      seat: { innerRadius_m: 0.011, outerRadius_m: 0.0115, height_m: 5e-5 },
      ports: { count: 4, coveredFraction: 0.65 },
    },
    [2e5, 5e5],
    { theory: 'port-periodic' },
  );
  const point = result.points[1];
  if (point.status !== 'converged' || !point.wave) throw new Error('the stack of this test did not wave');
  const { wave, pressure_Pa, seatOpening_m, shimEdgeLift_m, shimStress_Pa } = point;
  const { seatForce_N, plateForce_N, clampForce_N } = point;
  const along = shimStress_Pa.map((_, s) => new Float64Array(point.shape.lift_m[s].length));
  return {
    ...wave,
    state: {
      shape: shapeBetween(point, point, 0),
      ...{ pressure_Pa, seatOpening_m, shimEdgeLift_m, shimStress_Pa, seatForce_N, plateForce_N, clampForce_N },
      stresses: { equivalent_Pa: along, yield_Pa: [1e9, 1e9] },
    },
  };
}

describe('a waved stack cut along a radius', () => {
  const { state, maxEdgeLift_m, minEdgeLift_m } = solved();
  const cutAt = (phi: number): StackState => cutState(state, valving, body, { phi, stressed: false });

  it('its rim stands at the crest and the trough that the solver names', () => {
    const { crest, trough } = extremesOf(state.shape) ?? { crest: Number.NaN, trough: Number.NaN };
    expect(cutAt(crest).shimEdgeLift_m[0]).toBeCloseTo(maxEdgeLift_m, 12);
    expect(cutAt(trough).shimEdgeLift_m[0]).toBeCloseTo(minEdgeLift_m, 12);
    expect(maxEdgeLift_m).toBeGreaterThan(1.02 * minEdgeLift_m);
  });

  it('its openings have the mean that the solver gives the flow', () => {
    // The solver's own rule: trapezoids over twelve parts of half a wave.
    const openings = Array.from({ length: 13 }, (_, i) => cutAt((i * Math.PI) / 12).seatOpening_m);
    const ends = (openings[0] + openings[12]) / 2;
    const mean = openings.slice(1, -1).reduce((sum, each) => sum + each, ends) / 12;
    expect(mean / state.seatOpening_m).toBeCloseTo(1, 6);
    expect(openings[0]).toBeGreaterThan(openings[12]);
  });

  it('has the stress along its shims only where it is asked for, and is round', () => {
    expect(cutAt(0)).not.toHaveProperty('stresses');
    expect(cutState(state, valving, body, { phi: 0, stressed: true }).stresses).toBe(state.stresses);
    expect(extremesOf(cutAt(0).shape)).toBeUndefined();
  });

  it('where no shim covers the seat the opening stays the mean', () => {
    const beyond: ValveBody = { ...body, seat: { innerDiameter_mm: 26, outerDiameter_mm: 27 } };
    expect(cutState(state, valving, beyond, { phi: 0, stressed: false }).seatOpening_m).toBe(state.seatOpening_m);
  });
});
