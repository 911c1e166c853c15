import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { viscosityAt100, viscosityIndex } from '../../../../src/solver/fluid/viscosity-index.ts';

const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

// Source: worked examples of ASTM D2270; the third partly from memory.
const EXAMPLES: [procedure: string, U: number, Y: number, index: number][] = [
  ['A', 73.3, 8.86, 92],
  ['B', 22.83, 5.05, 156],
  ['B', 53.47, 7.8, 111],
];

describe('viscosityIndex', () => {
  it.each(EXAMPLES)('procedure %s: %d at 40 °C and %d at 100 °C has index %d', (_, U, Y, index) => {
    expect(Math.round(viscosityIndex(U, Y))).toBe(index);
  });

  it.each([
    // Source: the same examples before rounding, with L and H of the table; its quadratics miss them by up to 0.13 %.
    [73.3, 8.86, 92.43],
    [22.83, 5.05, 156.37],
    [53.47, 7.8, 111.307],
  ])('%d at 40 °C and %d at 100 °C has %d before it is rounded', (U, Y, index) => {
    expect(Math.abs(viscosityIndex(U, Y) - index)).toBeLessThan(0.1);
  });

  it('is 0 and 100 for the two reference oils themselves', () => {
    // Source: ASTM D2270 table row Y = 8.86: L 119.94, H 69.48; the quadratics give 119.959 and 69.477.
    expect(viscosityIndex(119.94, 8.86)).toBeCloseTo(0, 0);
    expect(viscosityIndex(69.48, 8.86)).toBeCloseTo(100, 0);
    expect(Math.abs(viscosityIndex(119.959, 8.86))).toBeLessThan(2e-3);
    expect(Math.abs(viscosityIndex(69.477, 8.86) - 100)).toBeLessThan(2e-3);
    // H at Y = 5.05 is 28.979, where the table prints 28.97.
    expect(Math.abs(viscosityIndex(28.979, 5.05) - 100)).toBeLessThan(2e-3);
  });

  it('uses L and H of the standard above 70 mm2/s', () => {
    // Source: ASTM D2270, Y > 70: L = .8353 Y^2 + 14.67 Y - 216, H = .1684 Y^2 + 11.85 Y - 97.
    const Y = 90;
    const [L, H] = [0.8353 * Y ** 2 + 14.67 * Y - 216, 0.1684 * Y ** 2 + 11.85 * Y - 97];
    expect(viscosityIndex((L + H) / 2, Y)).toBeCloseTo(50, 1);
  });

  it('refuses an oil thinner than 2 mm2/s at 100 °C', () => {
    expect(() => viscosityIndex(5, 1.9)).toThrow(withCode('fluid.viscosity-index.thin'));
    expect(() => viscosityIndex(3, 4)).toThrow(withCode('fluid.viscosity-index.not-falling'));
  });
});

describe('viscosityAt100', () => {
  it.each([
    [73.3, 92.43, 8.86],
    [22.83, 156.37, 5.05],
    [53.47, 111.307, 7.8],
  ])('%d at 40 °C with index %d has %d at 100 °C', (U, index, Y) => {
    expect(Math.abs(viscosityAt100(U, index) / Y - 1)).toBeLessThan(5e-4);
  });

  it('refuses oils the index does not cover', () => {
    expect(() => viscosityAt100(4, 100)).toThrow(withCode('fluid.viscosity-index.thin'));
    expect(() => viscosityAt100(15, 1e6)).toThrow(withCode('fluid.viscosity-index.range'));
    expect(() => viscosityAt100(15, Number.NaN)).toThrow(withCode('fluid.viscosity-index.range'));
    expect(() => viscosityAt100(Number.NaN, 100)).toThrow(withCode('fluid.viscosity-index.thin'));
    expect(() => viscosityAt100(4, 100)).toThrow(
      'got 4 mm2/s at 40 °C with an index of 100, wanted an oil of at least 2 mm2/s at 100 °C',
    );
  });

  it('undoes viscosityIndex to within the steps of the table', () => {
    const oils = fc.record({
      Y: fc.double({ min: 2.2, max: 60, noNaN: true }),
      index: fc.integer({ min: -100, max: 400 }),
    });
    fc.assert(
      fc.property(oils, ({ Y, index }) => {
        const U = Y * (3 + Y / 5);
        fc.pre(U > 9);
        const Y100 = viscosityAt100(U, index);
        fc.pre(Y100 < U);
        expect(Math.abs(viscosityIndex(U, Y100) - index)).toBeLessThan(2.5);
      }),
    );
  });
});
