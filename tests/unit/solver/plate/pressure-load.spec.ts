/** Loads of pressure rings against areas, and the falling one against the integral of creeping flow between discs. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildHermiteTables } from '../../../../src/solver/plate/hermite-tables.ts';
import { addElementPressure, type PressureRing, pressureShare } from '../../../../src/solver/plate/pressure-load.ts';
import { buildRadialMesh } from '../../../../src/solver/plate/radial-mesh.ts';

function loadOf(ring: PressureRing, breaks: readonly number[], elements: number, d = 2): Float64Array {
  const tables = buildHermiteTables(buildRadialMesh([...breaks, ring.inner_m, ring.outer_m, ring.end_m], elements));
  const load = new Float64Array((tables.elements + 1) * d);
  for (let e = 0; e < tables.elements; e++) addElementPressure(tables, ring, e, d, load);
  return load;
}

const forceOf = (load: Float64Array, d = 2) => load.reduce((sum, f, i) => (i % d === 0 ? sum + f : sum), 0);

describe('pressure on a ring', () => {
  it('adds up to pressure times area', () => {
    const radii = fc.uniqueArray(fc.integer({ min: 5, max: 25 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(radii, fc.integer({ min: 1, max: 12 }), (four, elements) => {
        const [r0, r1, r2, r3] = four.sort((p, q) => p - q);
        const load = loadOf({ inner_m: r1, outer_m: r2, end_m: r2 }, [r0, r3], elements);
        expect(forceOf(load) / (Math.PI * (r2 ** 2 - r1 ** 2))).toBeCloseTo(1, 11);
      }),
    );
  });

  it('does on a cone of slope 1 the work of its first moment, 2π (r₂³ - r₁³)/3', () => {
    const load = loadOf({ inner_m: 2, outer_m: 3, end_m: 3 }, [1, 4], 6);
    const radius = buildRadialMesh([1, 2, 3, 4], 6);
    const work = radius.reduce((sum, r, i) => sum + load[2 * i] * r + load[2 * i + 1], 0);
    expect(work).toBeCloseTo((2 * Math.PI * (27 - 8)) / 3, 10);
  });

  // Published check C5 (recomputed there): r1 8, r2 12 mm, 1 MPa: 108.8629 N on the land, 309.9248 N with the full disc.
  it('that falls across a land presses with the 108.8629 N of creeping flow between discs', () => {
    const land = { inner_m: 8e-3, outer_m: 8e-3, end_m: 12e-3 };
    expect(1e6 * forceOf(loadOf(land, [6e-3], 8))).toBeCloseTo(108.8629, 3);
    const whole = { inner_m: 4e-3, outer_m: 8e-3, end_m: 12e-3 };
    expect(1e6 * (forceOf(loadOf(whole, [4e-3], 8)) + Math.PI * 16e-6)).toBeCloseTo(309.9248, 3);
  });

  it('is whole on the zone, half at the geometric mean of the land, nothing beyond', () => {
    const ring = { inner_m: 2, outer_m: 4, end_m: 9 };
    expect([1.9, 2, 3, 4, 6, 9, 9.1].map((r) => pressureShare(ring, r))).toEqual([0, 1, 1, 1, 0.5, 0, 0]);
  });

  it('leaves in-plane unknowns alone and numbers nodes from the inner edge of a ring', () => {
    const ring = { inner_m: 2, outer_m: 3, end_m: 3 };
    const [plain, four] = [2, 4].map((d) => loadOf(ring, [1, 4], 6, d));
    four.forEach((f, i) => {
      expect(f).toBe(i % 4 < 2 ? plain[2 * Math.floor(i / 4) + (i % 4)] : 0);
    });
    const tables = buildHermiteTables(Float64Array.of(1, 2, 3, 4));
    const load = new Float64Array(6);
    addElementPressure(tables, ring, 1, 2, load, 1);
    expect(forceOf(load.subarray(0, 4))).toBeCloseTo(Math.PI * 5, 10);
    expect([...load.subarray(4)]).toEqual([0, 0]);
  });
});
