/**
 * Stiffness of oil with air as the slope of its volume: no formula for the stiffness is used.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | K, n | Pa, - | bulk modulus of the oil, polytropic exponent of the air |
 * | V | - | volume of what takes 1 at the atmosphere |
 *
 * The slope is the central difference over ±h and ±2h with the h² term removed (Richardson).
 */

interface Row {
  readonly label: string;
  readonly airFraction: number;
  readonly absolutePressure_MPa: number;
}

const ATMOSPHERE = 101325;

/** The quantities of a `bulk-modulus` case. */
export function derive(input: unknown): Record<string, number> {
  const { bulkModulus_GPa, airExponent, rows } = input as {
    bulkModulus_GPa: number;
    airExponent: number;
    rows: readonly Row[];
  };
  const all: Record<string, number> = {};
  for (const { label, airFraction, absolutePressure_MPa } of rows) {
    const liquid = (p: number) => (1 - airFraction) / Math.exp((p - ATMOSPHERE) / (bulkModulus_GPa * 1e9));
    const air = (p: number) => airFraction * Math.exp(Math.log(ATMOSPHERE / p) / airExponent);
    const p = absolutePressure_MPa * 1e6;
    // Apart, so that the large slope of the air does not drown the small one of the oil.
    const slope = slopeOf(liquid, p, 1e-2 * bulkModulus_GPa * 1e9) + slopeOf(air, p, 1e-3 * p);
    const volume = liquid(p) + air(p);
    all[`${label} modulus`] = -volume / slope / 1e6;
    all[`${label} volume`] = volume;
    all[`${label} air share`] = air(p) / volume;
  }
  return all;
}

function slopeOf(f: (x: number) => number, x: number, h: number): number {
  const central = (step: number) => (f(x + step) - f(x - step)) / (2 * step);
  return (4 * central(h) - central(2 * h)) / 3;
}
