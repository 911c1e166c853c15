import { describe, expect, it } from 'vitest';
import { normalQuantile } from '../../../../src/solver/tolerance/normal-quantile.ts';
import { shiftedSobol, sobolDigits } from '../../../../src/solver/tolerance/sobol-sequence.ts';

const plain = (n: number, dimensions: number) => sobolDigits(n, dimensions).map((digits) => digits / 2 ** 32);

describe('Sobol’s sequence', () => {
  it('begins with the points that SciPy 1.17 (scipy.stats.qmc.Sobol, unscrambled) prints from the same table', () => {
    expect([0, 1, 2, 3, 4, 5, 6, 7].map((n) => plain(n, 8))).toEqual([
      [0, 0, 0, 0, 0, 0, 0, 0],
      [0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
      [0.75, 0.25, 0.25, 0.25, 0.75, 0.75, 0.25, 0.75],
      [0.25, 0.75, 0.75, 0.75, 0.25, 0.25, 0.75, 0.25],
      [0.375, 0.375, 0.625, 0.875, 0.375, 0.125, 0.375, 0.875],
      [0.875, 0.875, 0.125, 0.375, 0.875, 0.625, 0.875, 0.375],
      [0.625, 0.125, 0.875, 0.625, 0.625, 0.875, 0.125, 0.125],
      [0.125, 0.625, 0.375, 0.125, 0.125, 0.375, 0.625, 0.625],
    ]);
  });

  it('does so in high dimensions, the last of the table among them', () => {
    const point = plain(11, 400);
    expect([point[50], point[137], point[399]]).toEqual([0.3125, 0.1875, 0.5625]);
  });

  it('has one of 2^k points in each of 2^k equal parts of every axis, shifted or not', () => {
    const points = shiftedSobol(7, 400);
    for (const dimension of [0, 1, 60, 399]) {
      const parts = Array.from({ length: 64 }, (_, n) => Math.floor(points(n)[dimension] * 64)).sort((p, q) => p - q);
      expect(parts).toEqual(Array.from({ length: 64 }, (_, part) => part));
    }
  });

  it('is the same from the same seed, another from another, never on an edge, and goes on beyond its table', () => {
    expect(shiftedSobol(3, 410)(5)).toEqual(shiftedSobol(3, 410)(5));
    expect(shiftedSobol(4, 410)(5)).not.toEqual(shiftedSobol(3, 410)(5));
    for (const value of shiftedSobol(3, 410)(0)) {
      expect(value).toBeGreaterThan(0);
      expect(value).toBeLessThan(1);
    }
  });
});

describe('the inverse of the normal distribution', () => {
  it.each([
    [0.5, 0],
    [0.975, 1.959963984540054],
    [0.025, -1.959963984540054],
    [0.3, -0.5244005127080409],
    [0.9, 1.2815515655446004],
    [0.999, 3.090232306167813],
    [1e-12, -7.034483825301131],
  ])('of %f is that of printed tables and of scipy.stats.norm', (p, z) => {
    expect(normalQuantile(p)).toBeCloseTo(z, 12);
  });
});
