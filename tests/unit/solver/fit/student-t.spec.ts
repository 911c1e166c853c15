import { describe, expect, it } from 'vitest';
import { incompleteBeta, studentT } from '../../../../src/solver/fit/student-t.ts';

describe("Student's t", () => {
  // Two-sided 95 % and 99 %, as every table of the distribution prints them (from memory).
  it.each([
    [0.95, 1, 12.706],
    [0.95, 2, 4.303],
    [0.95, 5, 2.571],
    [0.95, 10, 2.228],
    [0.95, 30, 2.042],
    [0.95, 1e6, 1.96],
    [0.99, 10, 3.169],
    [0.9, 20, 1.725],
  ])('is for %s and %s degrees of freedom %s', (probability, nu, t) => {
    expect(studentT(probability, nu)).toBeCloseTo(t, 3);
  });

  it('rises as degrees of freedom, whole or not, grow fewer', () => {
    const t = [30, 9.7, 9.2, 3.5, 1.2].map((nu) => studentT(0.95, nu));
    expect(t).toEqual([...t].sort((a, b) => a - b));
  });
});

describe('the incomplete beta function', () => {
  it('has its closed forms and its symmetry', () => {
    // I_x(1, b) = 1 - (1 - x)^b, I_x(a, 1) = x^a.
    expect(incompleteBeta(1, 3, 0.2)).toBeCloseTo(1 - 0.8 ** 3, 14);
    expect(incompleteBeta(2.5, 1, 0.7)).toBeCloseTo(0.7 ** 2.5, 14);
    expect(incompleteBeta(2, 5, 0.3) + incompleteBeta(5, 2, 0.7)).toBeCloseTo(1, 14);
    expect([incompleteBeta(2, 3, 0), incompleteBeta(2, 3, 1)]).toEqual([0, 1]);
  });
});
