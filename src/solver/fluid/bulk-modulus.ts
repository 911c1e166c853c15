/**
 * Oil with free air in it under pressure. A volume of 1 at the pressure p0 of the atmosphere becomes
 *   V(p) = (1 - a0) exp(-(p - p0)/K) + a0 (p0/p)^(1/n),
 * and its stiffness is
 *   K_eff = -V / (dV/dp) = V / [(1 - a0) exp(-(p - p0)/K)/K + a0 (p0/p)^(1/n)/(n p)],
 * p absolute. The air is a fixed amount, all of it free: below the pressure at which it dissolves that is so; above, some of
 * it goes into the oil within seconds to minutes, and the oil is then stiffer than this says.
 * K_eff is K without air, rises to K with pressure, and at p0 with much air is no more than n p0/a0.
 * Source: the family of models compared by Gholizadeh, Burton & Schoenau, Int. J. Fluid Power 12(3) 2011 and 13(1) 2012 (abstracts);
 * with the share a of air at working pressure 1/K_eff = (1 - a)/K + a/(n p), the form of Merritt 1967 (from memory), who leaves
 * out the factor 1 - a. Left out: K rises with pressure (some 0.7 % per MPa, from memory) and falls with temperature; walls that give.
 *
 * symbol  unit  meaning
 * p       Pa    absolute pressure
 * p0      Pa    pressure of the atmosphere
 * K       Pa    bulk modulus of the oil without air
 * a0, a   -     share of free air by volume at p0, at p
 * n       -     polytropic exponent of the air: 1 isothermal, 1.4 adiabatic
 */
import { InputError } from '../../units/fault.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { COMPRESSIBILITY_TABLE } from './compressibility-table.ts';

export interface AeratedOil {
  /** Of the oil without air [Pa]. */
  readonly bulkModulus_Pa: number;
  /** Free air, share by volume at atmospheric pressure. */
  readonly airFraction: number;
  /** 1 isothermal, 1.4 adiabatic. */
  readonly airExponent: number;
}

/**
 * Oil and its air, with the values of the table for what is not known.
 * @throws InputError `fluid.bulk-modulus.not-positive`, `fluid.air.share` unless 0 <= a0 < 1, `fluid.air.exponent` for n < 1.
 */
export function aeratedOil(known: Partial<AeratedOil> = {}): AeratedOil {
  const oil = {
    bulkModulus_Pa: known.bulkModulus_Pa ?? COMPRESSIBILITY_TABLE.bulkModulus_Pa.value,
    airFraction: known.airFraction ?? COMPRESSIBILITY_TABLE.airFraction.value,
    airExponent: known.airExponent ?? COMPRESSIBILITY_TABLE.airExponent.value,
  };
  const { bulkModulus_Pa: K, airFraction: a0, airExponent: n } = oil;
  if (!(K > 0)) throw fault('fluid.bulk-modulus.not-positive', 'fluid.bulkModulus_Pa', K, 'more than 0', 'Pa');
  if (!(a0 >= 0 && a0 < 1)) throw fault('fluid.air.share', 'fluid.airFraction', a0, '0 or more and less than 1');
  if (!(n >= 1)) throw fault('fluid.air.exponent', 'fluid.airExponent', n, '1 or more');
  return oil;
}

/** Volume over that at atmospheric pressure, V(p). @throws InputError `fluid.pressure.not-absolute` for p <= 0. */
export function relativeVolume(oil: AeratedOil, p: number): number {
  const { liquid, air } = partsAt(oil, p);
  return liquid + air;
}

/** Bulk modulus with the air in it, K_eff [Pa]. @throws InputError as `relativeVolume` */
export function effectiveBulkModulus(oil: AeratedOil, p: number): number {
  const { bulkModulus_Pa: K, airExponent: n } = oil;
  const { liquid, air } = partsAt(oil, p);
  return (liquid + air) / (liquid / K + air / (n * p));
}

/** Share of free air by volume at pressure p. @throws InputError as `relativeVolume` */
export function airShare(oil: AeratedOil, p: number): number {
  const { liquid, air } = partsAt(oil, p);
  return air / (liquid + air);
}

/**
 * Density under pressure [kg/m3] of oil that has `density_kg_m3` without air at atmospheric pressure; the air weighs nothing
 * beside it. @throws InputError as `relativeVolume`
 */
export const densityAtPressure = (oil: AeratedOil, density_kg_m3: number, p: number): number =>
  ((1 - oil.airFraction) * density_kg_m3) / relativeVolume(oil, p);

/** Volumes at p of what takes 1 together at p0. */
function partsAt({ bulkModulus_Pa: K, airFraction: a0, airExponent: n }: AeratedOil, p: number) {
  if (!(p > 0)) throw fault('fluid.pressure.not-absolute', 'pressure_Pa', p, 'an absolute pressure above 0', 'Pa');
  const p0 = STANDARD_ATMOSPHERE_PA;
  return { liquid: (1 - a0) * Math.exp(-(p - p0) / K), air: a0 * (p0 / p) ** (1 / n) };
}

const fault = (code: string, path: string, got: number, wanted: string, unit?: string) =>
  new InputError({ code, path, got: String(got), wanted, ...(unit && { unit }) });
