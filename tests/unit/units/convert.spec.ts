import { describe, expect, it } from 'vitest';
import { fromSI, toSI } from '../../../src/units/convert.ts';
import * as si from '../../../src/units/si.ts';

describe('toSI', () => {
  it('agrees with the named steps that the adapter uses', () => {
    expect(toSI(0.15, 'length', 'mm')).toBe(si.metresFromMillimetres(0.15));
    expect(toSI(206, 'modulus', 'GPa')).toBe(si.pascalsFromGigapascals(206));
    expect(toSI(0.2, 'pressure', 'MPa')).toBe(si.pascalsFromMegapascals(0.2));
    expect(fromSI(2e5, 'pressure', 'MPa')).toBe(si.megapascalsFromPascals(2e5));
    expect(fromSI(0.001, 'flow', 'L/min') / 60).toBe(si.litresPerSecondFromCubicMetresPerSecond(0.001));
    expect(toSI(10, 'pressure', 'bar')).toBe(si.pascalsFromBars(10));
    expect(toSI(90, 'volume', 'mL')).toBe(si.cubicMetresFromMillilitres(90));
    expect(toSI(15, 'kinematicViscosity', 'cSt')).toBe(si.squareMetresPerSecondFromCentistokes(15));
    expect(toSI(12, 'area', 'mm²')).toBe(si.squareMetresFromSquareMillimetres(12));
    expect(toSI(40, 'temperature', '°C')).toBe(si.kelvinFromCelsius(40));
    expect(fromSI(313.15, 'temperature', '°C')).toBe(si.celsiusFromKelvin(313.15));
    expect(fromSI(0.0254, 'length', 'mm')).toBe(si.millimetresFromInches(1));
  });

  // Fixed points of the temperature scales, by definition.
  it.each([
    [32, '°F', 273.15],
    [212, '°F', 373.15],
    [-459.67, '°F', 0],
    [0, '°C', 273.15],
    [1, 'K', 1],
  ] as const)('puts %s %s at %s K', (value, unit, kelvin) => {
    expect(toSI(value, 'temperature', unit)).toBeCloseTo(kelvin, 10);
    expect(fromSI(kelvin, 'temperature', unit)).toBeCloseTo(value, 10);
  });
});
