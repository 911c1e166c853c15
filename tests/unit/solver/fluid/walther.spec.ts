import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kinematicViscosity, waltherLaw } from '../../../../src/solver/fluid/walther.ts';
import { kelvinFromCelsius } from '../../../../src/units/si.ts';

const at = (temperature_degC: number, kinematicViscosity_mm2_s: number) => ({
  temperature_K: kelvinFromCelsius(temperature_degC),
  kinematicViscosity_mm2_s,
});

const relative = (got: number, wanted: number) => Math.abs(got / wanted - 1);

describe('waltherLaw', () => {
  // Source: public worked example of ASTM D341 (a spreadsheet, not the standard), recomputed with the offset 273.15.
  it('gives 8.5332 mm2/s at 80 °C for an oil of 32 at 40 °C and 5.4 at 100 °C', () => {
    const law = waltherLaw(at(40, 32), at(100, 5.4));
    expect(relative(law.A, 9.53082)).toBeLessThan(1e-5);
    expect(relative(law.B, 3.74658)).toBeLessThan(1e-5);
    expect(relative(kinematicViscosity(law, kelvinFromCelsius(80)), 8.5332)).toBeLessThan(1e-4);
  });

  // Source: the same law computed independently for 15 mm2/s at 40 °C and 3.5 mm2/s at 100 °C.
  it.each([
    [-20, 432.85],
    [0, 96.502],
    [20, 33.064],
    [60, 8.213],
    [80, 5.12],
    [120, 2.561],
  ])('at %d °C gives %d mm2/s for a damper oil', (temperature_degC, nu) => {
    const law = waltherLaw(at(40, 15), at(100, 3.5));
    const halfPrintedDigit = 0.0005;
    const got = kinematicViscosity(law, kelvinFromCelsius(temperature_degC));
    expect(Math.abs(got - nu)).toBeLessThan(1e-4 * nu + halfPrintedDigit);
  });

  // Source: the printed inverse of ASTM D341 closes the round trip to 2e-4 on the low branch.
  it.each([0.3, 0.5, 0.8, 1, 1.5, 1.9])('returns the %d mm2/s it was given, below 2 mm2/s', (nu) => {
    const law = waltherLaw(at(40, 2 + 2 * nu), at(150, nu));
    expect(relative(kinematicViscosity(law, kelvinFromCelsius(150)), nu)).toBeLessThan(3e-4);
  });

  it('has no step where the low branch begins', () => {
    const law = waltherLaw(at(40, 15), at(100, 3.5));
    const temperatures = Array.from({ length: 301 }, (_, i) => 138 + i / 50);
    const nu = temperatures.map((t) => kinematicViscosity(law, kelvinFromCelsius(t)));
    expect(nu[0]).toBeGreaterThan(2);
    expect(nu[300]).toBeLessThan(2);
    const ratios = nu.slice(2).map((_, i) => (nu[i + 1] - nu[i + 2]) / (nu[i] - nu[i + 1]));
    for (const ratio of ratios) expect(Math.abs(ratio - 1)).toBeLessThan(2e-3);
  });

  it('does not mind the order of the points', () => {
    expect(waltherLaw(at(100, 3.5), at(40, 15))).toEqual(waltherLaw(at(40, 15), at(100, 3.5)));
  });

  it.each([
    ['fluid.temperature.equal', at(40, 15), at(40, 3.5)],
    ['fluid.viscosity.not-falling', at(40, 3.5), at(100, 15)],
    ['fluid.viscosity.thin', at(40, 15), at(100, 0.1)],
    ['fluid.viscosity.thin', at(40, Number.NaN), at(100, 3.5)],
    ['fluid.temperature.not-positive', at(-300, 15), at(100, 3.5)],
  ])('refuses with %s', (code, first, second) => {
    expect(() => waltherLaw(first, second)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code }) }),
    );
  });

  it('refuses a temperature at which the oil would be thinner than the law covers', () => {
    const law = waltherLaw(at(40, 2.5), at(100, 1));
    expect(() => kinematicViscosity(law, kelvinFromCelsius(900))).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code: 'fluid.temperature.out-of-range' }) }),
    );
  });

  it.each<[string, ReturnType<typeof at>, number, string]>([
    ['thick', at(100, 22), -60, 'at most 20000000 mm2/s'],
    ['thick, where the law leaves all numbers behind', at(41, 3.5), -20, 'at most 20000000 mm2/s'],
    ['thin', at(41, 3.5), 60, 'at least 0.21 mm2/s'],
  ])('refuses a temperature at which the oil would be too %s, and says which', (_, warm, temperature_degC, limit) => {
    const law = waltherLaw(at(40, warm.temperature_K > 350 ? 680 : 15), warm);
    expect(() => kinematicViscosity(law, kelvinFromCelsius(temperature_degC))).toThrow(
      expect.objectContaining({
        fault: expect.objectContaining({
          code: 'fluid.temperature.out-of-range',
          got: `${temperature_degC} °C`,
          wanted: expect.stringContaining(limit),
        }),
      }),
    );
  });

  it('runs through both points and falls with temperature', () => {
    const points = fc.record({
      warm: fc.double({ min: 1, max: 50, noNaN: true }),
      ratio: fc.double({ min: 1.2, max: 15, noNaN: true }),
      t: fc.double({ min: -20, max: 140, noNaN: true }),
    });
    fc.assert(
      fc.property(points, ({ warm, ratio, t }) => {
        const law = waltherLaw(at(40, warm * ratio), at(100, warm));
        expect(relative(kinematicViscosity(law, kelvinFromCelsius(100)), warm)).toBeLessThan(3e-4);
        const [here, warmer] = [t, t + 1].map((x) => kinematicViscosity(law, kelvinFromCelsius(x)));
        expect(warmer).toBeLessThan(here);
      }),
    );
  });
});
