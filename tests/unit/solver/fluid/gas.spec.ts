import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GasCharge, gasAtStroke } from '../../../../src/solver/fluid/gas.ts';
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
