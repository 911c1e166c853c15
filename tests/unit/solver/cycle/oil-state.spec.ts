import { describe, expect, it } from 'vitest';
import { gasEnergy, gasPressure } from '../../../../src/solver/cycle/gas-root.ts';
import { oilState } from '../../../../src/solver/cycle/oil-state.ts';
import { relativeVolume } from '../../../../src/solver/fluid/bulk-modulus.ts';

const OIL = { bulkModulus_Pa: 1.5e9, airFraction: 0.01, airExponent: 1.4 };
const P0 = 101325;

/** Simpson's rule in 2000 strips. */
function integral(f: (p: number) => number, from: number, to: number): number {
  const strips = 2000;
  const h = (to - from) / strips;
  let sum = 0;
  for (let i = 0; i < strips; i++) sum += f(from + i * h) + 4 * f(from + (i + 0.5) * h) + f(from + (i + 1) * h);
  return (sum * h) / 6;
}

describe('the state of oil', () => {
  const oil = oilState(OIL, P0);

  it('undoes the law of aerated oil at any pressure', () => {
    for (const p of [P0, 1.3e5, 4e5, 1e6, 3.3e6, 1e7, 8e7, 5e8]) {
      expect(Math.abs(oil.pressure(relativeVolume(OIL, p)) / p - 1)).toBeLessThan(1e-7);
    }
  });

  it('without air is p0 - K ln s', () => {
    const clean = oilState({ ...OIL, airFraction: 0 }, P0);
    for (const s of [0.9999, 0.999, 0.99, 0.97]) {
      expect(Math.abs(clean.pressure(s) / (P0 - 1.5e9 * Math.log(s)) - 1)).toBeLessThan(1e-7);
    }
  });

  it('does not fall below the pressure of air release, however much room there is', () => {
    expect(oil.floorVolume).toBe(1);
    for (const s of [1, 1.001, 1.5, 100]) expect(oil.pressure(s)).toBe(P0);
  });

  it('has no pressure where the oil would be pressed beyond its table', () => {
    expect(oil.pressure(0.3)).toBeNaN();
  });

  it.each([1, 1.4])('has the enthalpy that the integral of its volume gives, air exponent %d', (airExponent) => {
    const state = oilState({ ...OIL, airExponent }, P0);
    for (const p of [3e5, 2e6, 1e7]) {
      expect(state.enthalpy(p) / integral(state.volume, P0, p)).toBeCloseTo(1, 8);
      const work = integral((at) => -at * state.volumeSlope(at), P0, p);
      expect(state.energy(p) / work).toBeCloseTo(1, 6);
    }
    expect([state.enthalpy(P0), state.energy(P0)]).toEqual([0, expect.closeTo(0, 9)]);
  });

  it('has the slope of its volume', () => {
    const h = 10;
    for (const p of [3e5, 2e6]) {
      const slope = (oil.volume(p + h) - oil.volume(p - h)) / (2 * h);
      expect(oil.volumeSlope(p) / slope).toBeCloseTo(1, 6);
    }
  });
});

describe('gas beside oil', () => {
  const oil = oilState(OIL, P0);
  const gas = { absolutePressure_Pa: 1e6, volume_m3: 1e-4, polytropicExponent: 1.3, separatorFriction_Pa: 0 };

  it('without oil follows p V^n', () => {
    expect(gasPressure(gas, oil, 0, 0.5e-4) / (1e6 * 2 ** 1.3)).toBeCloseTo(1, 12);
    expect(gasPressure(gas, oil, 0, 2e-4) / (1e6 * 0.5 ** 1.3)).toBeCloseTo(1, 12);
  });

  it('fills the chamber together with it, next to empty and next to full', () => {
    for (const [m, V] of [
      [3e-4, 4e-4],
      [3e-4, 3.2e-4],
      [3e-4, 2.98e-4],
      [1e-5, 1e-3],
      [1, 1.0001],
    ]) {
      const p = gasPressure(gas, oil, m, V);
      expect(
        Math.abs(m * relativeVolume(OIL, p) + gas.volume_m3 * (gas.absolutePressure_Pa / p) ** (1 / 1.3) - V) / V,
      ).toBeLessThan(1e-12);
    }
  });

  it('has no pressure for no room', () => {
    expect(gasPressure(gas, oil, 3e-4, -1e-4)).toBeNaN();
  });

  it.each([1, 1.3])('stores the work that presses it, exponent %d', (polytropicExponent) => {
    const other = { ...gas, polytropicExponent };
    const work = integral((V) => 1e6 * (1e-4 / V) ** polytropicExponent, 0.4e-4, 1e-4);
    const pressed = 1e6 * (1 / 0.4) ** polytropicExponent;
    expect(gasEnergy(other, pressed) / work).toBeCloseTo(1, 9);
  });

  it('keeps its digits as the exponent nears 1', () => {
    // Source: the limit, p0 V0 ln(p/p0).
    for (const polytropicExponent of [1 + 1e-15, 1 + 1e-9]) {
      expect(gasEnergy({ ...gas, polytropicExponent }, 3e6) / (1e6 * 1e-4 * Math.log(3))).toBeCloseTo(1, 7);
      const air = oilState({ bulkModulus_Pa: 1e30, airFraction: 0.5, airExponent: polytropicExponent }, P0);
      expect((air.enthalpy(3e6) - 0.5 * (3e6 - P0)) / (0.5 * P0 * Math.log(3e6 / P0))).toBeCloseTo(1, 5);
    }
  });
});
