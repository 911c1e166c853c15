/** Element matrices against energies that a hand can integrate. Timoshenko & Woinowsky-Krieger 1959, section 16: from memory. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendingElementMatrices, membraneElementMatrices } from '../../../../src/solver/plate/element-matrices.ts';
import { buildHermiteTables } from '../../../../src/solver/plate/hermite-tables.ts';

const rings = fc.record({
  r0: fc.double({ min: 0.5, max: 4, noNaN: true }),
  h: fc.double({ min: 0.1, max: 2, noNaN: true }),
  nu: fc.double({ min: -0.5, max: 0.49, noNaN: true }),
});
const near = (got: number, wanted: number, size = Math.abs(wanted)) =>
  expect(Math.abs(got - wanted), `got ${got}, wanted ${wanted}`).toBeLessThan(1e-7 * size);

const twiceEnergy = (k: Float64Array, v: readonly number[]) =>
  v.reduce((sum, vi, i) => sum + v.reduce((row, vj, j) => row + vi * k[i * 4 + j] * vj, 0), 0);
const element = (matrices: typeof bendingElementMatrices, r0: number, r1: number, nu: number) =>
  matrices(buildHermiteTables(Float64Array.of(r0, r1)), 0, 1, nu);

describe.each([
  ['bending', bendingElementMatrices],
  ['membrane', membraneElementMatrices],
] as const)('%s matrix', (_, matrices) => {
  it('is symmetric and never gives a negative energy', () => {
    const values = fc.array(fc.double({ min: -1, max: 1, noNaN: true }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(rings, values, ({ r0, h, nu }, v) => {
        const k = element(matrices, r0, r0 + h, nu);
        const size = Math.max(...k.map(Math.abs));
        for (let i = 0; i < 4; i++) for (let j = 0; j < i; j++) near(k[i * 4 + j], k[j * 4 + i], size);
        expect(twiceEnergy(k, v)).toBeGreaterThan(-1e-12 * size);
      }),
    );
  });

  it('counts its elements from the inner edge of the plate', () => {
    const tables = buildHermiteTables(Float64Array.of(1, 2, 3.5, 4));
    expect(matrices(tables, 1, 2, 0.3).subarray(16)).toEqual(matrices(tables, 2, 1, 0.3));
  });
});

describe('bending matrix', () => {
  it('stores nothing in a plate that is shifted as a whole', () => {
    fc.assert(
      fc.property(rings, ({ r0, h, nu }) => {
        const k = element(bendingElementMatrices, r0, r0 + h, nu);
        expect(Math.abs(twiceEnergy(k, [1, 0, 1, 0]))).toBeLessThan(1e-10 * Math.max(...k));
      }),
    );
  });

  it('stores 2 · 2π (1 + ν) (r₁² - r₀²)/2 in the bowl w = r²/2, whose two curvatures are 1', () => {
    fc.assert(
      fc.property(rings, ({ r0, h, nu }) => {
        const r1 = r0 + h;
        const k = element(bendingElementMatrices, r0, r1, nu);
        near(twiceEnergy(k, [(r0 * r0) / 2, r0, (r1 * r1) / 2, r1]), 2 * Math.PI * (1 + nu) * (r1 * r1 - r0 * r0));
      }),
    );
  });

  it('stores 2π ln(r₁/r₀) in the cone w = r, whose only curvature is w′/r', () => {
    near(twiceEnergy(element(bendingElementMatrices, 3, 3.2, 0.3), [3, 1, 3.2, 1]), 2 * Math.PI * Math.log(3.2 / 3));
  });
});

describe('membrane matrix', () => {
  it('stores 2π (1 + ν) (r₁² - r₀²) in the even stretch u = r', () => {
    fc.assert(
      fc.property(rings, ({ r0, h, nu }) => {
        const r1 = r0 + h;
        near(
          twiceEnergy(element(membraneElementMatrices, r0, r1, nu), [r0, 1, r1, 1]),
          2 * Math.PI * (1 + nu) * (r1 * r1 - r0 * r0),
        );
      }),
    );
  });

  it('stores 2π ln(r₁/r₀) in u = 1, whose only strain is u/r', () => {
    near(twiceEnergy(element(membraneElementMatrices, 3, 3.2, 0.3), [1, 0, 1, 0]), 2 * Math.PI * Math.log(3.2 / 3));
  });
});
