import { describe, expect, it } from 'vitest';
import { aeratedOilFromDocument } from '../../../../src/solver/from-model/compressibility.ts';

const withCode = (code: string) => expect.objectContaining({ fault: expect.objectContaining({ code }) });

describe('aeratedOilFromDocument', () => {
  it('turns gigapascals and percent into SI', () => {
    expect(aeratedOilFromDocument({ bulkModulus_GPa: 1.7, entrainedAir_percent: 2 })).toMatchObject({
      bulkModulus_Pa: 1.7e9,
      airFraction: 0.02,
    });
    expect(aeratedOilFromDocument({ entrainedAir_percent: 0 }).airFraction).toBe(0);
  });

  it('takes mineral oil with half a percent of isothermal air where the document says nothing', () => {
    // Source: 1.5 GPa of the textbook range 1.4 to 2.0 (from memory); 0.5 % common practice.
    expect(aeratedOilFromDocument({})).toEqual({ bulkModulus_Pa: 1.5e9, airFraction: 0.005, airExponent: 1 });
  });

  it('refuses an oil that cannot be', () => {
    expect(() => aeratedOilFromDocument({ entrainedAir_percent: 100 })).toThrow(withCode('fluid.air.share'));
    expect(() => aeratedOilFromDocument({ bulkModulus_GPa: 0 })).toThrow(withCode('fluid.bulk-modulus.not-positive'));
  });
});
