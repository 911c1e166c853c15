import { describe, expect, it } from 'vitest';
import { HEAT_TABLE, temperatureRise } from '../../../../src/solver/fluid/heat.ts';

const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

describe('temperatureRise', () => {
  it('warms a damper that takes 21.06 J five times a second by some kelvin a minute', () => {
    // Source: energy of a quadratic damper, (8/3) c2 w^2 X^3 = 21.0551561 J at 5 Hz, any vibration text. Own arithmetic:
    // 105.276 W into 0.25 kg of oil (500 J/K) and 0.8 kg of metal (560 J/K) is 5.959 K a minute.
    const power_W = 5 * 21.0551561;
    expect(60 * temperatureRise(power_W, { oil_kg: 0.25, metal_kg: 0.8 })).toBeCloseTo(5.959, 3);
  });

  it('warms the oil alone at P over m c, the more the less there is', () => {
    expect(temperatureRise(1000, { oil_kg: 0.5, metal_kg: 0 })).toBeCloseTo(1, 12);
    expect(temperatureRise(1000, { oil_kg: 0.25, metal_kg: 0 })).toBeCloseTo(2, 12);
    expect(temperatureRise(0, { oil_kg: 0.25, metal_kg: 0 })).toBe(0);
  });

  it.each([
    ['heat.mass.none', 100, { oil_kg: 0, metal_kg: 0 }],
    ['heat.mass.negative', 100, { oil_kg: -1, metal_kg: 2 }],
    ['heat.mass.negative', 100, { oil_kg: 1, metal_kg: Number.NaN }],
    ['heat.power', -1, { oil_kg: 1, metal_kg: 0 }],
    ['heat.power', Number.POSITIVE_INFINITY, { oil_kg: 1, metal_kg: 0 }],
  ])('refuses with %s', (code, power_W, masses) => {
    expect(() => temperatureRise(power_W, masses)).toThrow(withCode(code));
  });
});

describe('the table', () => {
  it('holds oil at 1.9 to 2.1 kJ/(kg K) and metal between steel and aluminium', () => {
    // Source: textbook values, from memory.
    const { oilSpecificHeat_J_kgK: oil, metalSpecificHeat_J_kgK: metal } = HEAT_TABLE;
    expect([oil.low, oil.value, oil.high]).toEqual([1900, 2000, 2100]);
    expect([metal.low, metal.value, metal.high]).toEqual([470, 700, 900]);
  });
});
