import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { floatingPistonPressure, type GasCharge, gasAtStroke, gasForce } from '../../../../src/solver/fluid/gas.ts';
import { absoluteFromGauge, pascalsFromBars } from '../../../../src/units/si.ts';

const charge = (polytropicExponent: number, absolutePressure_Pa = 1e6): GasCharge => ({
  absolutePressure_Pa,
  volume_m3: 60e-6,
  polytropicExponent,
});
const ROD_AREA = 2e-4;
/** Stroke at which the volume has fallen by `ratio`. */
const strokeFor = (ratio: number) => (60e-6 * (1 - 1 / ratio)) / ROD_AREA;

describe('gasAtStroke', () => {
  // Source: closed forms of the ideal polytropic law; n = 1.4 digits computed independently, MPa from 1 MPa.
  it.each([
    [1, 1.5, 1.5e6],
    [1, 3, 3e6],
    [1.4, 1.2, 1.2908e6],
    [1.4, 1.5, 1.7641e6],
    [1.4, 2, 2.639e6],
    [1.4, 3, 4.6555e6],
  ])('n = %d, volume ratio %d gives %d Pa', (n, ratio, p) => {
    const got = gasAtStroke(charge(n), ROD_AREA, strokeFor(ratio)).absolutePressure_Pa;
    expect(Math.abs(got / p - 1)).toBeLessThan(n === 1 ? 1e-9 : 3e-5);
  });

  // Source: p0 r^n by a calculator, 11 digits.
  it.each([
    [1.5, 1.7641185338],
    [2, 2.6390158215],
    [3, 4.6555367217],
  ])('n = 1.4, volume ratio %d gives %d times the pressure, to the last digit', (ratio, factor) => {
    const got = gasAtStroke(charge(1.4), ROD_AREA, strokeFor(ratio)).absolutePressure_Pa;
    expect(Math.abs(got / (1e6 * factor) - 1)).toBeLessThan(1e-9);
  });

  // Source: reference equation of state of nitrogen (Span et al. 2000), isentropic from 1 MPa and 293.15 K.
  it.each([
    [1.2, 1.2947e6],
    [1.5, 1.7779e6],
    [2, 2.6817e6],
    [3, 4.8113e6],
  ])('stays within 4 %% of real nitrogen at a volume ratio of %d', (ratio, real) => {
    const got = gasAtStroke(charge(1.4), ROD_AREA, strokeFor(ratio)).absolutePressure_Pa;
    expect(got).toBeLessThan(real);
    expect(got).toBeGreaterThan(0.96 * real);
  });

  it('a charge of 0 bar gauge still pushes: pressure in the law is absolute', () => {
    const open = charge(1, absoluteFromGauge(pascalsFromBars(0)));
    expect(gasAtStroke(open, ROD_AREA, strokeFor(2)).absolutePressure_Pa).toBeCloseTo(2 * 101325, 6);
  });

  it.each([
    ['gas.pressure.not-absolute', charge(1.2, 0), 0],
    ['gas.volume.too-small', charge(1.2), 0.3],
    ['gas.volume.too-small', charge(1.2), Number.NaN],
  ])('refuses with %s', (code, gas, stroke) => {
    expect(() => gasAtStroke(gas, ROD_AREA, stroke)).toThrow(
      expect.objectContaining({ fault: expect.objectContaining({ code }) }),
    );
  });

  it('two strokes one after the other are one stroke', () => {
    const strokes = fc.double({ min: 0, max: 0.12, noNaN: true });
    fc.assert(
      fc.property(strokes, strokes, fc.double({ min: 1, max: 1.4, noNaN: true }), (x, y, n) => {
        const twice = gasAtStroke(gasAtStroke(charge(n), ROD_AREA, x), ROD_AREA, y);
        const once = gasAtStroke(charge(n), ROD_AREA, x + y);
        expect(Math.abs(twice.absolutePressure_Pa / once.absolutePressure_Pa - 1)).toBeLessThan(1e-9);
      }),
    );
  });
});

describe('gasForce', () => {
  it('is 301.6 N for 1.5 MPa gauge on a 16 mm rod, and nothing at the pressure of the atmosphere', () => {
    // Source: whole-damper check numbers, computed independently: 1.5 MPa on pi/4 16^2 = 201.06 mm2.
    const rod_m2 = (Math.PI / 4) * 0.016 ** 2;
    expect(gasForce({ absolutePressure_Pa: absoluteFromGauge(1.5e6) }, rod_m2)).toBeCloseTo(301.593, 3);
    expect(gasForce({ absolutePressure_Pa: 101325 }, rod_m2)).toBe(0);
  });

  it('rises with the stroke at the rate n p A^2 / V of any text on gas springs', () => {
    for (const n of [1, 1.2, 1.4]) {
      const at = (x: number) => gasForce(gasAtStroke(charge(n), ROD_AREA, x), ROD_AREA);
      const { absolutePressure_Pa: p, volume_m3: V } = gasAtStroke(charge(n), ROD_AREA, 0.05);
      expect((at(0.05 + 1e-6) - at(0.05 - 1e-6)) / 2e-6 / ((n * p * ROD_AREA ** 2) / V)).toBeCloseTo(1, 6);
    }
  });
});

describe('floatingPistonPressure', () => {
  it('is its seal friction over its face', () => {
    // Own arithmetic: 40 N on pi/4 46^2 = 1661.90 mm2.
    expect(floatingPistonPressure(40, 0.046) / 24068.8).toBeCloseTo(1, 5);
    expect(floatingPistonPressure(0, 0.046)).toBe(0);
  });
});
