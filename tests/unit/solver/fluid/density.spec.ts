import { describe, expect, it } from 'vitest';
import { oilDensity } from '../../../../src/solver/fluid/density.ts';
import { kelvinFromCelsius } from '../../../../src/units/si.ts';

// Source: API MPMS 11.1 / ASTM D1250 for lubricating oils, computed independently from the printed constant.
describe('oilDensity', () => {
  it.each([
    [860, 0, 860 * 1.01091],
    [860, 40, 844.22],
    [860, 60, 860 * 0.96685],
    [860, 100, 860 * 0.93695],
    [850, 40, 834.22],
    [880, 40, 864.22],
  ])('%d kg/m3 at 15 °C is, at %d °C, %d', (rho15, t, rho) => {
    expect(Math.abs(oilDensity(rho15, kelvinFromCelsius(t)) / rho - 1)).toBeLessThan(1e-5);
  });

  it('returns the given density at 15 °C', () => {
    expect(oilDensity(872, kelvinFromCelsius(15))).toBe(872);
  });

  it.each([0, -1, Number.NaN])('refuses a density of %d', (rho15) => {
    expect(() => oilDensity(rho15, 300)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code: 'fluid.density.not-positive' }) }),
    );
  });

  it('lies 0.2 % below the rule of 0.065 % per degree at 40 °C', () => {
    // Source: own arithmetic, 860 (1 - 0.00065 * 25) = 846.025 against 844.22.
    expect(846.025 / oilDensity(860, kelvinFromCelsius(40)) - 1).toBeCloseTo(0.00214, 4);
  });
});
