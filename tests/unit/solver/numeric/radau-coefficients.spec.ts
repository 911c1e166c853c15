import { describe, expect, it } from 'vitest';
import {
  collocationWeights,
  ERROR_E,
  ERROR_G,
  RADAU_A,
  RADAU_B,
  RADAU_C,
} from '../../../../src/solver/numeric/radau-coefficients.ts';

const POWERS = [1, 2, 3];
const sum = (weights: readonly number[], value: (i: number) => number) =>
  weights.reduce((total, weight, i) => total + weight * value(i), 0);

/** Butcher's simplifying assumptions, from any text on Runge-Kutta methods: with them the order follows. */
describe('the coefficients of Radau IIA', () => {
  it.each([1, 2, 3, 4, 5])('integrate a power %d exactly: B(5)', (k) => {
    expect(sum(RADAU_B, (i) => RADAU_C[i] ** (k - 1))).toBeCloseTo(1 / k, 14);
  });

  it('do not integrate the sixth: the order is 5', () => {
    expect(Math.abs(sum(RADAU_B, (i) => RADAU_C[i] ** 5) - 1 / 6)).toBeGreaterThan(1e-4);
  });

  it.each(POWERS)('give each stage the integral of a power %d: C(3)', (k) => {
    for (const [i, row] of RADAU_A.entries()) {
      expect(sum(row, (j) => RADAU_C[j] ** (k - 1))).toBeCloseTo(RADAU_C[i] ** k / k, 14);
    }
  });

  it.each([1, 2])('hold the adjoint assumption for %d: D(2)', (k) => {
    for (let j = 0; j < 3; j++) {
      const left = sum(RADAU_B, (i) => RADAU_C[i] ** (k - 1) * RADAU_A[i][j]);
      expect(left).toBeCloseTo((RADAU_B[j] * (1 - RADAU_C[j] ** k)) / k, 14);
    }
  });

  it('end in the last stage, so a stiff part dies away within a step', () => {
    expect(RADAU_C[2]).toBe(1);
    expect(RADAU_B).toBe(RADAU_A[2]);
  });

  it('have 1/g for the real eigenvalue of the inverse of A', () => {
    // det(A - g I) = 0, by Sarrus.
    const m = RADAU_A.map((row, i) => row.map((a, j) => (i === j ? a - ERROR_G : a)));
    const plus = m[0][0] * m[1][1] * m[2][2] + m[0][1] * m[1][2] * m[2][0] + m[0][2] * m[1][0] * m[2][1];
    const minus = m[0][2] * m[1][1] * m[2][0] + m[0][1] * m[1][0] * m[2][2] + m[0][0] * m[1][2] * m[2][1];
    expect(plus - minus).toBeCloseTo(0, 15);
  });

  it.each(POWERS)('see no error in t^%d, and one in t^4: the embedded formula has order 3', (k) => {
    const error = (power: number) => (power === 1 ? ERROR_G : 0) + sum(ERROR_E, (i) => RADAU_C[i] ** power);
    expect(error(k)).toBeCloseTo(0, 14);
    expect(Math.abs(error(4))).toBeGreaterThan(1e-3);
  });

  it('weigh the stages to a cubic that starts at 0', () => {
    const out = new Float64Array(3);
    for (const x of [0, 0.3, 0.7, 1, 1.6]) {
      collocationWeights(x, out);
      for (const k of POWERS) expect(sum(Array.from(out), (i) => RADAU_C[i] ** k)).toBeCloseTo(x ** k, 12);
    }
  });
});
