import { describe, expect, it } from 'vitest';
import { findWavinessOnset, type WavinessOnset } from '../../../../../src/solver/stack/waviness/find-onset.ts';
import { SINGLE, stackOf, TAPER } from './stacks.ts';

function found(onset: WavinessOnset) {
  if (onset.status !== 'found') throw new Error(`onset ${onset.status}`);
  return onset;
}

describe('findWavinessOnset', () => {
  it('finds the eigenvalue onset of one shim 24 × 0.15 at 2.08 thicknesses in 3 waves', () => {
    const onset = found(findWavinessOnset(SINGLE, 1e6));
    // Our own eigenvalue of the second variation by another program: 2.08 thicknesses, to its last digit.
    expect(Math.abs(onset.liftOverThickness - 2.08)).toBeLessThan(0.005);
    expect(onset.waves).toBe(3);
    expect(onset.faceEdgeLift_m / 0.15e-3).toBeCloseTo(onset.liftOverThickness, 10);
  });

  it('lies between the last round and the first wavy run in three dimensions of the taper', () => {
    // Our own runs of CalculiX 2.20, sectors of 3 waves: round at 0.35 MPa, wavy at 0.5 MPa.
    const onset = found(findWavinessOnset(TAPER, 2e6));
    expect(onset.pressure_Pa).toBeGreaterThan(0.35e6);
    expect(onset.pressure_Pa).toBeLessThan(0.5e6);
    expect(onset.waves).toBe(3);
  });

  it('comes at n times the pressure for n equal shims', () => {
    const [one, four] = [1, 4].map((count) =>
      found(findWavinessOnset({ ...SINGLE, shims: Array(count).fill(SINGLE.shims[0]) }, count * 1e6)),
    );
    expect(four.pressure_Pa / one.pressure_Pa).toBeCloseTo(4, 4);
    expect(four.liftOverThickness).toBeCloseTo(one.liftOverThickness, 4);
    expect(four.waves).toBe(one.waves);
  });

  it('settles with the mesh', () => {
    const [coarse, fine] = [12, 48].map((elements) => found(findWavinessOnset(SINGLE, 1e6, { elements })));
    expect(Math.abs(coarse.pressure_Pa / fine.pressure_Pa - 1)).toBeLessThan(1e-4);
  });

  it('says stable, with the margin left, where the onset lies higher', () => {
    const onset = findWavinessOnset(SINGLE, 1e5);
    expect(onset.status).toBe('stable');
    expect(onset.status === 'stable' && onset.margin).toBeGreaterThan(0);
  });

  it('begins at no pressure where the preload alone ruffles the rim, and later where it is small', () => {
    const raised = (height_m: number) =>
      findWavinessOnset(
        {
          ...stackOf(10, [11, 16], [[24, 0.1]]),
          seat: { innerRadius_m: 8e-3, outerRadius_m: 8.3e-3, height_m },
        },
        1e6,
      );
    expect(found(raised(0.2e-3))).toMatchObject({ pressure_Pa: 0 });
    expect(found(raised(0.2e-3)).liftOverThickness).toBeGreaterThan(2);
    expect(found(raised(0.05e-3)).pressure_Pa).toBeGreaterThan(0);
  });

  it('passes a failed solve on', () => {
    const onset = findWavinessOnset(stackOf(10, [13.2, 22.08], [[24, 0.15]]), 1e200);
    expect(['not-converged', 'contact-not-resolved', 'singular']).toContain(onset.status);
    expect(onset).toHaveProperty('reason');
  });
});
