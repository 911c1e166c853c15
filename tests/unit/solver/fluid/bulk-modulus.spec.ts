import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  aeratedOil,
  airShare,
  densityAtPressure,
  effectiveBulkModulus,
  relativeVolume,
} from '../../../../src/solver/fluid/bulk-modulus.ts';
import { COMPRESSIBILITY_TABLE } from '../../../../src/solver/fluid/compressibility-table.ts';

const ATMOSPHERE = 101325;
const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);
const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

describe('effectiveBulkModulus', () => {
  // The table of values by air and pressure is a reference case: fluid/bulk-modulus-air.
  it('is that of the oil without air, and at high pressure with it', () => {
    const clean = aeratedOil({ bulkModulus_Pa: 1.5e9, airFraction: 0 });
    for (const p of [1e4, ATMOSPHERE, 1e6, 1e7])
      expect(relative(effectiveBulkModulus(clean, p), 1.5e9)).toBeLessThan(1e-12);
    for (const airFraction of [0.001, 0.01, 0.05]) {
      for (const airExponent of [1, 1.4]) {
        const oil = aeratedOil({ bulkModulus_Pa: 1.5e9, airFraction, airExponent });
        const misses = [1e7, 1e8, 1e9].map((p) => 1 - effectiveBulkModulus(oil, p) / 1.5e9);
        expect(misses[0]).toBeGreaterThan(misses[1]);
        expect(misses[1]).toBeGreaterThan(misses[2]);
        expect(misses[2]).toBeLessThan(0.01);
      }
    }
    expect(
      relative(effectiveBulkModulus(aeratedOil({ bulkModulus_Pa: 1.5e9, airFraction: 1e-12 }), 1e5), 1.5e9),
    ).toBeLessThan(1e-6);
  });

  it('adds the softness of oil and air by their shares at working pressure', () => {
    // Source: Merritt 1967 (from memory), 1/K_eff = 1/K + (Vg/V)/(n p): 220 000 psi, 1 % of air at 500 psi, n = 1.4 give 53 100 psi.
    // With the factor 1 - a that he leaves out it is 0.24 % more.
    const psi = 6894.757;
    const [K, p, n, share] = [220_000 * psi, 500 * psi, 1.4, 0.01];
    const shrunk = { oil: Math.exp(-(p - ATMOSPHERE) / K), air: (ATMOSPHERE / p) ** (1 / n) };
    const airFraction = (share * shrunk.oil) / (shrunk.air * (1 - share) + share * shrunk.oil);
    const oil = aeratedOil({ bulkModulus_Pa: K, airFraction, airExponent: n });
    expect(relative(airShare(oil, p), share)).toBeLessThan(1e-12);
    expect(relative(effectiveBulkModulus(oil, p), 53_100 * psi)).toBeLessThan(3e-3);
    expect(relative(1 / (1 / effectiveBulkModulus(oil, p) + share / K), 53_100 * psi)).toBeLessThan(1e-4);
    // The same 1 % counted at the atmosphere would be a tenth of that air, and more than three times as stiff.
    const atAtmosphere = aeratedOil({ bulkModulus_Pa: K, airFraction: share, airExponent: n });
    expect(effectiveBulkModulus(atAtmosphere, p) / effectiveBulkModulus(oil, p)).toBeGreaterThan(3);
  });

  it('rises with pressure and falls with air', () => {
    const cases = fc.record({
      airFraction: fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
      airExponent: fc.double({ min: 1, max: 1.4, noNaN: true }),
      p: fc.double({ min: 2e4, max: 2e7, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ p, ...air }) => {
        const K = effectiveBulkModulus(aeratedOil(air), p);
        expect(effectiveBulkModulus(aeratedOil(air), 1.1 * p)).toBeGreaterThan(K);
        expect(effectiveBulkModulus(aeratedOil({ ...air, airFraction: 1.1 * air.airFraction }), p)).toBeLessThan(K);
      }),
    );
  });
});

describe('relativeVolume and densityAtPressure', () => {
  it('are 1 and the density of the mixture at the atmosphere', () => {
    const oil = aeratedOil({ airFraction: 0.02 });
    expect(relativeVolume(oil, ATMOSPHERE)).toBeCloseTo(1, 14);
    expect(densityAtPressure(oil, 850, ATMOSPHERE)).toBeCloseTo(0.98 * 850, 9);
  });

  it('keep the mass', () => {
    const oil = aeratedOil({ airFraction: 0.01, airExponent: 1.2 });
    for (const p of [5e4, 1e6, 1e7]) {
      expect(relative(densityAtPressure(oil, 850, p) * relativeVolume(oil, p), 0.99 * 850)).toBeLessThan(1e-12);
    }
  });

  it('follow Boyle where there is hardly any oil', () => {
    // Source: Boyle's law; 5 % of oil left, 95 % of air at ten times the pressure take a tenth.
    const foam = aeratedOil({ airFraction: 0.95, airExponent: 1 });
    expect(relativeVolume(foam, 10 * ATMOSPHERE)).toBeCloseTo(0.05 + 0.095, 4);
  });
});

describe('aeratedOil', () => {
  it('takes what is not known from its table', () => {
    expect(aeratedOil()).toEqual({
      bulkModulus_Pa: COMPRESSIBILITY_TABLE.bulkModulus_Pa.value,
      airFraction: COMPRESSIBILITY_TABLE.airFraction.value,
      airExponent: COMPRESSIBILITY_TABLE.airExponent.value,
    });
    expect(aeratedOil({ airFraction: 0 }).airFraction).toBe(0);
  });

  it.each([
    ['fluid.bulk-modulus.not-positive', { bulkModulus_Pa: 0 }],
    ['fluid.air.share', { airFraction: 1 }],
    ['fluid.air.share', { airFraction: -0.01 }],
    ['fluid.air.share', { airFraction: Number.NaN }],
    ['fluid.air.exponent', { airExponent: 0.9 }],
  ])('refuses with %s', (code, wrong) => {
    expect(() => aeratedOil(wrong)).toThrow(withCode(code));
  });

  it('knows no gauge pressure: 0 is refused', () => {
    for (const law of [relativeVolume, effectiveBulkModulus, airShare]) {
      expect(() => law(aeratedOil(), 0)).toThrow(withCode('fluid.pressure.not-absolute'));
    }
  });
});

describe('the table', () => {
  it('gives every value within its range, with a source', () => {
    for (const { value, low, high, source } of Object.values(COMPRESSIBILITY_TABLE)) {
      expect([low <= value, value <= high, source.length > 20]).toEqual([true, true, true]);
    }
  });

  it('holds mineral oil at 1.4 to 2.0 GPa', () => {
    // Source: textbook range, from memory.
    const { low, high, value } = COMPRESSIBILITY_TABLE.bulkModulus_Pa;
    expect([low, value, high]).toEqual([1.4e9, 1.5e9, 2e9]);
  });
});
