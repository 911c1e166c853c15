/**
 * State of the oil in a chamber. Its content m, the volume that it would take at atmospheric pressure, and the volume V of the chamber give
 *   s = V / m,   p = p(s) where s < s_r,   else p = p_r with a void V - m s_r,
 * with s(p) the law of aerated oil (fluid/bulk-modulus.ts) and s_r = s(p_r). Content and void then add up by construction. The heat
 * content per content, from which come energy and loss in a valve,
 *   i(p) = integral of s dp from p0,   e(p) = i - p s + p0
 * p(s) is read from a table over pressures in even ratio, with exact slopes dp/ds = -K_eff/s.
 * Source: own; balance of volume and of energy for a change without heat.
 *
 * symbol    unit  meaning
 * m, V      m3    content, volume of the chamber
 * s         -     volume over content
 * p, p_r    Pa    absolute pressure, that of air release
 * i, e      Pa    enthalpy and energy per content
 * K, a0, n  Pa,-  bulk modulus, share of free air at p0, exponent of the air
 */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { type AeratedOil, effectiveBulkModulus, relativeVolume } from '../fluid/bulk-modulus.ts';
import { HermiteTable } from '../numeric/hermite-table.ts';

/** The table ends here: far above what any damper bears, and no number beyond [Pa]. */
const HIGHEST_PA = 1e9;
const RATIO = 1.02;

export interface OilState {
  /** p_r. */
  readonly floor_Pa: number;
  /** s_r. */
  readonly floorVolume: number;
  /** p(s), never below p_r; NaN beyond the table. */
  readonly pressure: (s: number) => number;
  /** s(p). */
  readonly volume: (p: number) => number;
  /** ds/dp. */
  readonly volumeSlope: (p: number) => number;
  /** i(p). */
  readonly enthalpy: (p: number) => number;
  /** e(p). */
  readonly energy: (p: number) => number;
}

/** @param floor_Pa  p_r, above 0 */
export function oilState(oil: AeratedOil, floor_Pa: number): OilState {
  const table = pressureTable(oil, floor_Pa);
  const floorVolume = relativeVolume(oil, floor_Pa);
  const volume = (p: number) => relativeVolume(oil, p);
  const enthalpy = (p: number) => enthalpyOf(oil, p);
  return {
    floor_Pa,
    floorVolume,
    pressure: (s) => (s >= floorVolume ? floor_Pa : table.at(-s)),
    volume,
    volumeSlope: (p) => 0 - volume(p) / effectiveBulkModulus(oil, p),
    enthalpy,
    energy: (p) => enthalpy(p) - p * volume(p) + STANDARD_ATMOSPHERE_PA,
  };
}

/** p over -s, which rises. */
function pressureTable(oil: AeratedOil, floor_Pa: number): HermiteTable {
  const points = Math.ceil(Math.log(HIGHEST_PA / floor_Pa) / Math.log(RATIO));
  const pressures = Array.from({ length: points + 1 }, (_, k) => floor_Pa * RATIO ** k);
  const volumes = pressures.map((p) => relativeVolume(oil, p));
  const slopes = pressures.map((p, k) => effectiveBulkModulus(oil, p) / volumes[k]);
  return new HermiteTable(
    volumes.map((s) => 0 - s),
    pressures,
    slopes,
  );
}

function enthalpyOf({ bulkModulus_Pa: K, airFraction: a0, airExponent: n }: AeratedOil, p: number): number {
  const p0 = STANDARD_ATMOSPHERE_PA;
  const liquid = -(1 - a0) * K * Math.expm1(-(p - p0) / K);
  const [x, share] = [Math.log(p / p0), 1 - 1 / n];
  const air = share === 0 ? x : Math.expm1(share * x) / share;
  return liquid + a0 * p0 * air;
}
