import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type AirGap, airGapLevel, airGapVolume, airOverFill } from '../../../../src/solver/fluid/air-gap.ts';
import { gasAtStroke, gasForce } from '../../../../src/solver/fluid/gas.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../../../src/units/si.ts';

const GAP: AirGap = { level_m: 0.1, tubeDiameter_m: 0.04, insertedVolume_m3: 40e-6 };
const LEG_M2 = (Math.PI / 4) * 0.037 ** 2;
const TRAVEL = 0.3;

const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

describe('airGapVolume', () => {
  it('is the air over the oil, less what comes in, and what the leg gives back over the travel', () => {
    // Own arithmetic: pi/4 40^2 100 = 125 664 mm3, less 40 000, and pi/4 37^2 300 = 322 563 mm3: 408.227 mL.
    expect(airGapVolume(GAP, LEG_M2, TRAVEL) / 408.2268e-6).toBeCloseTo(1, 6);
  });

  // Source: F = A p_atm [(L0/(L0 - x))^n - 1] for a leg as wide as its tube: 20 mm of air compressed, 120 mm extended.
  it.each([
    [1, 0.05],
    [1, 0.1],
    [1.4, 0.05],
    [1.4, 0.1],
  ])('gives the closed form of an air spring, n = %d after %d m', (n, x) => {
    const D = 0.041;
    const A = (Math.PI / 4) * D * D;
    const volume_m3 = airGapVolume({ level_m: 0.02, tubeDiameter_m: D, insertedVolume_m3: 0 }, A, 0.1);
    const charge = { absolutePressure_Pa: STANDARD_ATMOSPHERE_PA, volume_m3, polytropicExponent: n };
    const closed = A * 101325 * ((0.12 / (0.12 - x)) ** n - 1);
    expect(Math.abs(gasForce(gasAtStroke(charge, A, x), A) / closed - 1)).toBeLessThan(1e-9);
  });

  it.each<[string, Partial<AirGap>]>([
    ['gas.air-gap.level', { level_m: 0 }],
    ['gas.air-gap.level', { level_m: Number.NaN }],
    ['gas.air-gap.tube', { tubeDiameter_m: 0 }],
    ['gas.air-gap.inserted', { insertedVolume_m3: -1e-6 }],
    ['gas.air-gap.inserted', { insertedVolume_m3: Number.NaN }],
    ['gas.air-gap.full', { insertedVolume_m3: 126e-6 }],
  ])('refuses with %s', (code, wrong) => {
    expect(() => airGapVolume({ ...GAP, ...wrong }, LEG_M2, TRAVEL)).toThrow(withCode(code));
  });
});

describe('airOverFill', () => {
  const FILL = { oilVolume_m3: 380e-6, legVolume_m3: 600e-6, insertedVolume_m3: 40e-6 };

  it('is what the leg holds, less oil and what comes in, and what the leg gives back over the travel', () => {
    // Own arithmetic: 600 - 380 - 40 = 180 mL and pi/4 37^2 300 = 322 563 mm3: 502.563 mL.
    expect(airOverFill(FILL, LEG_M2, TRAVEL) / 502.5631e-6).toBeCloseTo(1, 6);
  });

  it('is the volume over the level that the same oil stands at', () => {
    // 220 mL of air before spring and spacers come in, in a tube of 40 mm: 175.070 mm down to the oil.
    const level_m = 220e-6 / ((Math.PI / 4) * 0.04 ** 2);
    expect(level_m).toBeCloseTo(0.17507, 5);
    const byLevel = airGapVolume({ level_m, tubeDiameter_m: 0.04, insertedVolume_m3: 40e-6 }, LEG_M2, TRAVEL);
    expect(airOverFill(FILL, LEG_M2, TRAVEL)).toBeCloseTo(byLevel, 12);
  });

  it('refuses oil that leaves no air', () => {
    expect(() => airOverFill({ ...FILL, oilVolume_m3: 560e-6 }, LEG_M2, TRAVEL)).toThrow(withCode('gas.air-gap.full'));
  });
});

describe('airGapLevel', () => {
  it('undoes airGapVolume', () => {
    const sizes = fc.record({
      level_m: fc.double({ min: 0.06, max: 0.3, noNaN: true }),
      tubeDiameter_m: fc.double({ min: 0.03, max: 0.06, noNaN: true }),
      insertedVolume_m3: fc.double({ min: 0, max: 40e-6, noNaN: true }),
    });
    fc.assert(
      fc.property(sizes, fc.double({ min: 0.05, max: 0.4, noNaN: true }), ({ level_m, ...tube }, travel_m) => {
        const volume_m3 = airGapVolume({ level_m, ...tube }, LEG_M2, travel_m);
        expect(airGapLevel(volume_m3, tube, LEG_M2, travel_m) / level_m).toBeCloseTo(1, 9);
      }),
    );
  });

  it('refuses a volume that the stroke uses up, and a tube that cannot be', () => {
    expect(() => airGapLevel(0.3e-3, GAP, LEG_M2, TRAVEL)).toThrow(withCode('gas.air-gap.volume'));
    expect(() => airGapLevel(Number.NaN, GAP, LEG_M2, TRAVEL)).toThrow(withCode('gas.air-gap.volume'));
    expect(() => airGapLevel(1e-3, { ...GAP, tubeDiameter_m: -1 }, LEG_M2, TRAVEL)).toThrow(
      withCode('gas.air-gap.tube'),
    );
  });
});
