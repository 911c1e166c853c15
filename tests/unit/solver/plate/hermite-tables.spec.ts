/** Cubic Hermite shapes: any cubic is its own interpolant, and the Gauss points of a ring make up its area. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildHermiteTables, GAUSS_POINTS, hermiteShapes } from '../../../../src/solver/plate/hermite-tables.ts';

const coefficient = fc.double({ min: -5, max: 5, noNaN: true });
const cubics = fc.tuple(coefficient, coefficient, coefficient, coefficient);
const meshes = fc
  .array(fc.double({ min: 0.1, max: 3, noNaN: true }), { minLength: 2, maxLength: 8 })
  .map((steps) => Float64Array.from(steps, (_, i) => 1 + steps.slice(0, i).reduce((sum, h) => sum + h, 0)));

type Cubic = readonly [number, number, number, number];
const value = ([a, b, c, d]: Cubic, r: number) => a + b * r + c * r * r + d * r ** 3;
const slope = ([, b, c, d]: Cubic, r: number) => b + 2 * c * r + 3 * d * r * r;
const curvature = ([, , c, d]: Cubic, r: number) => 2 * c + 6 * d * r;

describe('Hermite shapes', () => {
  it('are value and slope at the two nodes', () => {
    const out = new Float64Array(4);
    const h = 0.7;
    for (const [x, order, wanted] of [
      [0, 0, [1, 0, 0, 0]],
      [1, 0, [0, 0, 1, 0]],
      [0, 1, [0, 1, 0, 0]],
      [1, 1, [0, 0, 0, 1]],
    ] as const) {
      hermiteShapes(x, h, order, out);
      wanted.forEach((v, i) => {
        expect(out[i]).toBeCloseTo(v, 12);
      });
    }
  });

  it('write from the place asked for', () => {
    const out = new Float64Array(6).fill(9);
    hermiteShapes(0, 1, 0, out, 2);
    expect([...out.subarray(0, 3)]).toEqual([9, 9, 1]);
    expect(Math.max(...out.subarray(3))).toBe(0);
  });

  it('reproduce every cubic with its slope and curvature at every Gauss point', () => {
    fc.assert(
      fc.property(meshes, cubics, (radius_m, cubic) => {
        const { elements, d0, d1, d2, rinv } = buildHermiteTables(radius_m);
        for (let q = 0; q < elements * GAUSS_POINTS; q++) {
          const [r0, r1] = [0, 1].map((end) => radius_m[Math.floor(q / GAUSS_POINTS) + end]);
          const nodal = [value(cubic, r0), slope(cubic, r0), value(cubic, r1), slope(cubic, r1)];
          const sum = (d: Float64Array) => nodal.reduce((total, v, i) => total + v * d[q * 4 + i], 0);
          const r = 1 / rinv[q];
          const size = 1 + Math.max(...nodal.map(Math.abs));
          expect(Math.abs(sum(d0) - value(cubic, r))).toBeLessThan(1e-12 * size);
          expect(Math.abs(sum(d1) - slope(cubic, r))).toBeLessThan(1e-9 * size);
          expect(Math.abs(sum(d2) - curvature(cubic, r))).toBeLessThan(1e-7 * size);
        }
      }),
    );
  });

  it('have Gauss areas that add up to π (r₁² - r₀²), and integrate r⁶ dr exactly as four points must', () => {
    fc.assert(
      fc.property(meshes, (radius_m) => {
        const { rw, rinv } = buildHermiteTables(radius_m);
        const [r0, r1] = [radius_m[0], radius_m[radius_m.length - 1]];
        const area = rw.reduce((sum, a) => sum + a, 0);
        expect(area / (Math.PI * (r1 ** 2 - r0 ** 2))).toBeCloseTo(1, 12);
        const sixth = rw.reduce((sum, a, q) => sum + a * rinv[q] ** -6, 0);
        expect(sixth / ((Math.PI / 4) * (r1 ** 8 - r0 ** 8))).toBeCloseTo(1, 12);
      }),
    );
  });
});
