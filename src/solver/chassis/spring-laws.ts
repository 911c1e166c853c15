/**
 * Springs at the shaft by shaft travel s from full extension:
 *   coil         F = k (s + s0),                         dF/ds = k
 *   progressive  F = f(s + s0),                          dF/ds = f'
 *   air          F = A ((p0 (V0 / (V0 - A s))^n - p_atm),  dF/ds = n p A^2 / V
 * Source: elementary statics and the polytropic law; n = 1 slow, as for a sag, 1.2 to 1.4 fast (common practice).
 *
 * symbol  unit   meaning
 * k       N/m    rate of a coil
 * s, s0   m      shaft travel, and shortening at full extension
 * f       N      force of a progressive spring by its shortening
 * A       m2     area that the stroke takes from the air per metre
 * p0, V0  Pa, m3 absolute pressure and volume at full extension
 * n       -      polytropic exponent
 */
import { type GasCharge, gasAtStroke, gasForce } from '../fluid/gas.ts';
import { smoothTable } from './smooth-table.ts';
import type { SpringLaw } from './types.ts';

export const coilLaw =
  (rate_N_m: number, preload_m: number): SpringLaw =>
  (s) => ({ force_N: rate_N_m * (s + preload_m), rate_N_m });

/** @param compression_m strictly rising, length n >= 2  @param force_N rising, length n */
export function progressiveLaw(
  compression_m: readonly number[],
  force_N: readonly number[],
  preload_m: number,
): SpringLaw {
  const curve = smoothTable(compression_m, force_N, 'go-on');
  return (s) => {
    const { value, slope } = curve(s + preload_m);
    return { force_N: value, rate_N_m: slope };
  };
}

/**
 * @param area_m2 what leaves the air per metre of shaft travel
 * @throws InputError `gas.volume.too-small` once the shaft has taken all of the air, `gas.pressure.not-absolute`
 */
export const airLaw =
  (charge: GasCharge, area_m2: number): SpringLaw =>
  (s) => {
    const now = gasAtStroke(charge, area_m2, s);
    const { absolutePressure_Pa: p, volume_m3: V, polytropicExponent: n } = now;
    return { force_N: gasForce(now, area_m2), rate_N_m: (n * p * area_m2 ** 2) / V };
  };
