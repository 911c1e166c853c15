import { describe, expect, it } from 'vitest';
import { airLaw, progressiveLaw } from '../../../../src/solver/chassis/spring-laws.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../../../src/units/si.ts';

const area_m2 = (Math.PI / 4) * 0.041 ** 2;
const law = (polytropicExponent: number) =>
  airLaw({ absolutePressure_Pa: STANDARD_ATMOSPHERE_PA, volume_m3: area_m2 * 0.12, polytropicExponent }, area_m2);

describe('an air spring', () => {
  // F = A p_atm ((L0/(L0 - x))^n - 1), 41 mm, 120 mm of air at atmospheric pressure, worked out independently.
  it.each([
    [1, [26.75, 95.55, 267.55, 668.87]],
    [1.2, [32.72, 121.66, 366.17, 1014.79]],
    [1.4, [38.9, 150.73, 489.02, 1509.79]],
  ])('with an exponent of %d pushes as the closed form says', (exponent, forces_N) => {
    const spring = law(exponent);
    const got = [0.02, 0.05, 0.08, 0.1].map((s) => spring(s).force_N);
    for (const [i, force] of forces_N.entries()) expect(got[i]).toBeCloseTo(force, 1);
  });

  it('has the rate that its force rises with', () => {
    const spring = law(1.3);
    const h = 1e-6;
    expect(spring(0.06).rate_N_m).toBeCloseTo((spring(0.06 + h).force_N - spring(0.06 - h).force_N) / (2 * h), 3);
  });

  it('refuses a stroke that takes all of the air', () => {
    expect(() => law(1)(0.12)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code: 'gas.volume.too-small' }) }),
    );
  });
});

describe('a progressive spring', () => {
  it('goes through its points, shortened by its preload, and on with its end slope', () => {
    const spring = progressiveLaw([0, 0.05, 0.1], [0, 1000, 2500], 0.05);
    expect(spring(0).force_N).toBe(1000);
    expect(spring(0.05).force_N).toBeCloseTo(2500, 9);
    const { rate_N_m } = spring(0.05);
    expect(spring(0.06)).toEqual({ force_N: expect.closeTo(2500 + 0.01 * rate_N_m, 9), rate_N_m });
  });

  it('is a coil where its points lie on a line', () => {
    const { force_N, rate_N_m } = progressiveLaw([0, 0.02, 0.1], [0, 400, 2000], 0)(0.07);
    expect(force_N).toBeCloseTo(1400, 9);
    expect(rate_N_m).toBeCloseTo(20_000, 6);
  });
});
