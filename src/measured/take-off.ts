/** Takes off a force what is not the oil's: that of the gas, the same everywhere, and friction, against the motion. */
import type { AmountSource, MeasurementStep } from '../model/measurement.ts';
import { tidy } from '../units/convert.ts';
import { median } from './outliers.ts';

/** How many of the slowest points of each direction speak for it. */
const SLOWEST = 3;

/**
 * Force of the gas from the slowest points: half way between the directions, since damping and friction there are nearly alike.
 * @returns undefined where one direction has no points
 */
export function gasForceOf(speed_m_s: readonly number[], force_N: readonly number[]): number | undefined {
  const slowest = (sign: 1 | -1): number[] =>
    speed_m_s
      .map((v, i) => ({ v: v * sign, F: force_N[i] }))
      .filter(({ v }) => v > 0)
      .sort((a, b) => a.v - b.v)
      .slice(0, SLOWEST)
      .map(({ F }) => F);
  const [up, down] = [slowest(1), slowest(-1)];
  if (up.length === 0 || down.length === 0) return undefined;
  return tidy((median(up) + median(down)) / 2);
}

export type Amount = { readonly force_N: number; readonly from: AmountSource };

export function takeOffGas(force_N: readonly number[], amount: Amount): { force_N: number[]; step: MeasurementStep } {
  return { force_N: force_N.map((force) => tidy(force - amount.force_N)), step: { kind: 'gas-force', ...amount } };
}

/** Friction acts against the motion, so that it adds to what the bench feels in both directions. */
export function takeOffFriction(
  speed_m_s: readonly number[],
  force_N: readonly number[],
  amount: Amount,
): { force_N: number[]; step: MeasurementStep } {
  return {
    force_N: force_N.map((force, i) => tidy(force - Math.sign(speed_m_s[i]) * amount.force_N)),
    step: { kind: 'friction', ...amount },
  };
}
