import { describe, expect, it } from 'vitest';
import { parseInto } from '../../../src/units/expression.ts';

/** Nine degrees Fahrenheit are five kelvins, by the definition of the scales. */
describe('how far two temperatures lie apart', () => {
  it.each([
    ['9 °F', 'K', 5],
    ['5 °C', '°F', 9],
    ['2+3', '°C', 5],
    ['-5 K', '°C', -5],
  ] as const)('is read from %s without the zero of its scale', (text, unit, expected) => {
    const read = parseInto(text, 'temperatureDifference', unit, '°C');
    expect(read.ok && read.value).toBeCloseTo(expected, 8);
  });
});
