import { describe, expect, it } from 'vitest';
import { WEIGHT_SPREADS, weightInWords } from '../../../../src/solver/fluid/weight-numbers.ts';

describe('weight numbers', () => {
  it('overlap with their neighbours, which is why none of them is a viscosity', () => {
    // Source: common practice (from memory): oils of one weight are sold over more than a fifth of their viscosity.
    for (const [i, { weight, low_mm2_s, high_mm2_s }] of WEIGHT_SPREADS.entries()) {
      expect(high_mm2_s / low_mm2_s).toBeGreaterThan(1.2);
      const next = WEIGHT_SPREADS.at(i + 1);
      if (next) expect([next.weight > weight, next.low_mm2_s < high_mm2_s]).toEqual([true, true]);
    }
  });

  it('are told as a spread, or not at all', () => {
    expect(weightInWords(7.5)).toMatch(/^oils sold as weight 7.5 have anything from about \d+ to \d+ cSt at 40 °C/);
    expect(weightInWords(6)).toBeUndefined();
  });
});
