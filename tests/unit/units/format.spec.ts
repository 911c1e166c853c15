import { describe, expect, it } from 'vitest';
import { displayOf, editText, formatIn, formatNumber, formatQuantity } from '../../../src/units/format.ts';
import { isUnitOf, type Kind, UNITS } from '../../../src/units/unit-table.ts';

describe('formatQuantity', () => {
  it.each([
    [formatQuantity(0.00015, 'length', 'mm', 2), '0.15 mm'],
    [formatQuantity(0.0001524, 'length', 'thou', 1), '6.0 thou'],
    [formatQuantity(0.0001524, 'length', 'in', 3), '0.006 in'],
    [formatQuantity(-12.5, 'force', 'N', 1), '−12.5 N'],
    [formatQuantity(313.15, 'temperature', '°C', 0), '40 °C'],
    [formatQuantity(313.15, 'temperature', '°F', 0), '104 °F'],
    [formatQuantity(1e-3, 'flow', 'L/min', 1), '60.0 L/min'],
    [formatQuantity(2, 'number', '', 1), '2.0'],
  ])('writes %s', (written, expected) => {
    expect(written).toBe(expected);
  });

  it('has no sign on a value that rounds to nothing', () => {
    expect(formatNumber(-0.001, 1)).toBe('0.0');
    expect(formatNumber(-0, 0)).toBe('0');
  });

  it('shows a dash where there is no number', () => {
    expect(formatQuantity(Number.NaN, 'force', 'N', 1)).toBe('– N');
    expect(formatNumber(Number.POSITIVE_INFINITY, 1)).toBe('–');
  });
});

describe('the unit families', () => {
  it.each([
    [formatIn(0.00015, 'length', 'metric'), '0.15 mm'],
    [formatIn(0.00015, 'length', 'imperial'), '0.0059 in'],
    [formatIn(1e6, 'pressure', 'metric'), '10.0 bar'],
    [formatIn(1e6, 'pressure', 'imperial'), '145 psi'],
    [formatIn(1000, 'force', 'imperial'), '224.8 lbf'],
    [formatIn(0.5, 'speed', 'imperial'), '19.7 in/s'],
  ])('write %s', (written, expected) => {
    expect(written).toBe(expected);
  });

  it('name a unit of its kind for every kind', () => {
    for (const kind of Object.keys(UNITS) as Kind[])
      for (const family of ['metric', 'imperial'] as const)
        expect(isUnitOf(kind, displayOf(family, kind).unit), `${family} ${kind}`).toBe(true);
  });
});

describe('editText', () => {
  it('shows what was typed, without the rounding of the conversion', () => {
    expect(editText(0.00015, 'length', 'mm')).toBe('0.15');
    expect(editText(0.0001524, 'length', 'in')).toBe('0.006');
    expect(editText(0.1 * 3e-3, 'length', 'mm')).toBe('0.3');
    expect(editText(273.15, 'temperature', '°C')).toBe('0');
    expect(editText(0.001 + 273.15, 'temperature', '°C')).toBe('0.001');
  });
});
