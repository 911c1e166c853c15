import { describe, expect, it } from 'vitest';
import { numberText } from '../../../../src/cli/render/number-text.ts';

describe('numberText', () => {
  it.each([
    [1234.56, 'N', '1234.6'],
    [13.6856, 'bar gauge', '13.69'],
    [0.0832371, 'mm', '0.083'],
    [100, '%', '100.0'],
    // Without a unit: four digits, none behind a whole number.
    [0.996646, undefined, '0.9966'],
    [-0.00412345, undefined, '-0.004123'],
    [12345, undefined, '12345'],
    [0.123456, 'furlong', '0.1235'],
  ])('writes %d %s as %s', (value, unit, written) => expect(numberText(value, unit)).toBe(written));

  it('tells a number that is 0 from one that is too small for the decimals, which has no sign', () => {
    expect([0, -0, 0.0004, -0.0004].map((value) => numberText(value, 'mm'))).toEqual(['0', '0', '0.000', '0.000']);
    expect(numberText(-0.0006, 'mm')).toBe('-0.001');
  });
});
