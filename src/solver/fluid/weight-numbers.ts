/**
 * "Weight" numbers on bottles of fork and damper oil. No standard of viscosity stands behind them: makers print what they
 * like, and the same number is sold over such a spread that neighbours overlap. So no viscosity is ever made of a weight here;
 * what can be told is the spread, as a warning.
 * Source: common practice, viscosities at 40 °C as data sheets print them (from memory, rounded outwards).
 */

export interface WeightSpread {
  readonly weight: number;
  readonly low_mm2_s: number;
  readonly high_mm2_s: number;
}

export const WEIGHT_SPREADS: readonly WeightSpread[] = [
  { weight: 2.5, low_mm2_s: 11, high_mm2_s: 16 },
  { weight: 5, low_mm2_s: 15, high_mm2_s: 27 },
  { weight: 7.5, low_mm2_s: 21, high_mm2_s: 43 },
  { weight: 10, low_mm2_s: 29, high_mm2_s: 48 },
  { weight: 15, low_mm2_s: 43, high_mm2_s: 70 },
  { weight: 20, low_mm2_s: 62, high_mm2_s: 105 },
];

/** A sentence for a person; undefined for a number that is not sold. */
export function weightInWords(weight: number): string | undefined {
  const spread = WEIGHT_SPREADS.find((entry) => entry.weight === weight);
  if (!spread) return undefined;
  const { low_mm2_s: low, high_mm2_s: high } = spread;
  return `oils sold as weight ${weight} have anything from about ${low} to ${high} cSt at 40 °C: common practice, no standard; take the cSt values of the data sheet`;
}
