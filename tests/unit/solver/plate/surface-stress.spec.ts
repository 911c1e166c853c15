/** Stress at the clamp from reactions, elsewhere from the elements, against closed forms. */
import { describe, expect, it } from 'vitest';
import { factorBandedLdl, solveBandedLdl } from '../../../../src/solver/linalg/banded-ldl.ts';
import { assembleInternal, assembleTangent } from '../../../../src/solver/plate/assemble.ts';
import type { Plate } from '../../../../src/solver/plate/plate.ts';
import { addElementPressure } from '../../../../src/solver/plate/pressure-load.ts';
import { clampStrain, elementStrains, surfaceStress } from '../../../../src/solver/plate/surface-stress.ts';
import { setByRadius, unitPlate } from './plates.ts';

/** A plate of clamp b and rim 1 under unit pressure on r0 … 1, solved for small deflection. */
function underPressure(b: number, r0: number, elements: number): Plate {
  const plate = unitPlate('small-deflection', {}, { breaks: [b, r0, 1], elements });
  const ring = { inner_m: r0, outer_m: 1, end_m: 1 };
  for (let e = 0; e < plate.tables.elements; e++) addElementPressure(plate.tables, ring, e, 2, plate.unitLoad);
  assembleTangent(plate, 'exact');
  factorBandedLdl(plate.band, plate.size, plate.b);
  plate.x.set(plate.unitLoad);
  for (const f of plate.fixed) plate.x[f] = 0;
  solveBandedLdl(plate.band, plate.size, plate.b, plate.x);
  assembleInternal(plate);
  return plate;
}

describe('strain at the clamp', () => {
  // Roark, 7th ed., table 11.2 case 2l, nu = 0.3: K_Mrb for r0 = b (published check A2: recomputed).
  it.each([
    [0.1, 0.964567],
    [0.3, 0.410338],
    [0.5, 0.173569],
    [0.7, 0.054076],
    [0.9, 0.005299],
  ])('gives the clamp moment of Roark 2l at b/a = %s', (b, K) => {
    const plate = underPressure(b, b, 40);
    expect(Math.abs((clampStrain(plate, 1).k * plate.D) / K - 1)).toBeLessThan(1e-4);
  });

  // Published check A2, partial load: b/a = 0.5, r0 = 0.75 a.
  it('gives the moment of a pressure that starts halfway out', () => {
    const plate = underPressure(0.5, 0.75, 40);
    expect((clampStrain(plate, 1).k * plate.D) / 0.13612462).toBeCloseTo(1, 6);
  });

  it('counts the pressure that acts on the innermost element itself', () => {
    const plate = underPressure(0.5, 0.5, 2);
    expect(Math.abs((clampStrain(plate, 1).k * plate.D) / 0.173569 - 1)).toBeLessThan(2e-3);
    expect(Math.abs((clampStrain(plate, 0).k * plate.D) / 0.173569 - 1)).toBeGreaterThan(1e-2);
  });

  // Lamé's thick ring, inner edge held: u = c (r - 1/r); N_r = C (1 + nu + (1 - nu)/r²) c. Source: any elasticity text.
  it('reads the membrane force of a stretched ring from the reaction of u', () => {
    const plate = unitPlate('large-deflection', {}, { breaks: [1, 2.5], elements: 40 });
    const c = 1e-3;
    setByRadius(plate, (r) => [0, 0, c * (r - 1 / r), c * (1 + 1 / (r * r))]);
    assembleInternal(plate);
    expect(clampStrain(plate, 0).e / (2 * c)).toBeCloseTo(1, 4);
  });
});

describe('strain along the plate', () => {
  it('is w″ + ν w′/r at both ends of every element: 1 + ν for the bowl w = r²/2', () => {
    for (const theory of ['small-deflection', 'large-deflection'] as const) {
      const plate = unitPlate(theory);
      setByRadius(plate, (r) => [(r * r) / 2, r, 0, 0].slice(0, plate.d));
      const strains = elementStrains(plate);
      expect(strains).toHaveLength(2 * (plate.nodes - 1));
      for (const { k } of strains) expect(k).toBeCloseTo(1.3, 10);
    }
  });

  it('holds er + ν et: 1.3 u/r for an even stretch, none of it under small deflection', () => {
    const plate = unitPlate('large-deflection');
    setByRadius(plate, (r) => [0, 0, 0.01 * r, 0.01]);
    for (const { k, e } of elementStrains(plate)) {
      expect(k).toBe(0);
      expect(e).toBeCloseTo(0.013, 12);
    }
    const linear = unitPlate('small-deflection');
    setByRadius(linear, (r) => [r, 1]);
    for (const { e } of elementStrains(linear)) expect(e).toBe(0);
  });

  it('belongs to the nodes of a plate that starts outside the clamp', () => {
    const ring = unitPlate('small-deflection', { first: 2, fixed: [] });
    setByRadius(ring, (r) => [r, 1]);
    const { radius_m } = ring.tables;
    expect(elementStrains(ring)[0].k).toBeCloseTo(0.3 / radius_m[2], 10);
    expect(elementStrains(ring)[1].k).toBeCloseTo(0.3 / radius_m[3], 10);
  });
});

describe('surface stress', () => {
  it('is E/(1 - ν²) (e + t |k|/2): bent, stretched, and less where it is squeezed', () => {
    const E = 206e9;
    expect(surfaceStress({ k: 2, e: 0 }, 0.2e-3, E, 0.3)).toBeCloseTo(45.274725e6, 0);
    expect(surfaceStress({ k: -2, e: 0 }, 0.2e-3, E, 0.3)).toBeCloseTo(45.274725e6, 0);
    expect(surfaceStress({ k: 0, e: 1e-3 }, 0.2e-3, E, 0)).toBeCloseTo(206e6, 0);
    expect(surfaceStress({ k: 10, e: -1e-3 }, 0.2e-3, E, 0)).toBeCloseTo(0, 0);
  });
});
