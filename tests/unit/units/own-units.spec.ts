import { describe, expect, it } from 'vitest';
import { displayOf } from '../../../src/units/format.ts';
import { digitsIn, readOwnUnits, unitChoices, unitIn } from '../../../src/units/own-units.ts';
import { isUnitOf, type Kind, UNITS } from '../../../src/units/unit-table.ts';

const KINDS = Object.keys(UNITS) as Kind[];

describe('units of one’s own', () => {
  it('hold for their kind alone', () => {
    const units = { family: 'metric', own: { pressure: 'psi' } } as const;
    expect(unitIn(units, 'pressure')).toBe('psi');
    expect(unitIn(units, 'length')).toBe('mm');
    expect(unitIn({ family: 'imperial', own: { length: 'mm' } }, 'length')).toBe('mm');
  });

  it('of a temperature are those of a difference of two as well', () => {
    expect(unitIn({ family: 'metric', own: { temperature: '°F' } }, 'temperatureDifference')).toBe('°F');
    expect(unitIn({ family: 'imperial' }, 'temperatureDifference')).toBe('°F');
  });

  it.each(KINDS)('are offered for %s with those of both families, each a unit that is known', (kind) => {
    const choices: readonly string[] = unitChoices(kind);
    expect(choices.filter((symbol) => !isUnitOf(kind, symbol))).toEqual([]);
    if (choices.length > 1)
      for (const family of ['metric', 'imperial'] as const) expect(choices).toContain(displayOf(family, kind).unit);
  });

  it('are read about as finely as those of the family', () => {
    // A bar is 14.5 psi and 100 kPa; a hundredth of a millimetre is 0.39 thou; 0.01 m/s is 0.033 ft/s.
    const pressure = { metric: 1, imperial: 0 };
    const length = { metric: 2, imperial: 4 };
    expect(digitsIn({ family: 'metric', own: { pressure: 'psi' } }, 'pressure', pressure)).toBe(0);
    expect(digitsIn({ family: 'metric', own: { pressure: 'kPa' } }, 'pressure', pressure)).toBe(0);
    expect(digitsIn({ family: 'metric', own: { pressure: 'MPa' } }, 'pressure', pressure)).toBe(2);
    expect(digitsIn({ family: 'imperial', own: { length: 'thou' } }, 'length', length)).toBe(0);
    expect(digitsIn({ family: 'imperial', own: { length: 'mm' } }, 'length', length)).toBe(2);
    expect(digitsIn({ family: 'metric' }, 'length', length)).toBe(2);
  });

  it('that were kept are taken where this version offers them', () => {
    expect(readOwnUnits({ pressure: 'psi', length: 'cubit', nothing: 'mm', speed: 3, modulus: 'psi' })).toEqual({
      pressure: 'psi',
    });
    for (const broken of [null, 3, 'psi', [], undefined]) expect(readOwnUnits(broken)).toEqual({});
  });
});
