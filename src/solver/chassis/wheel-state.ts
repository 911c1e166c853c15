/**
 * Springs through a linkage. By virtual work Q dx = F ds, so at the wheel
 *   Q = F r,   dQ/dx = k r^2 + F dr/dx
 * summed over the springs. Where the wheel travels at an angle a from the upright, z = x cos a, the upright force and rate are
 *   W = Q / cos a,   K = (dQ/dx) / cos^2 a
 * Source: principle of virtual work, as any text on mechanics has it (W. T. Thomson, Theory of Vibration, from memory). The
 * second term of the rate is that of a changing ratio; it is 0 with a constant one. Left out: friction, tyre, chain and brake.
 *
 * symbol  unit   meaning
 * x, s    m      wheel travel and shaft travel from full extension
 * r       -      motion ratio ds/dx
 * F, k    N, N/m force and rate of a spring at the shaft
 * Q       N      force along the wheel travel
 * a       rad    angle of the wheel travel from the upright
 * W, K    N, N/m upright force and rate at the wheel
 */
import type { ChassisInput, WheelState } from './types.ts';

export function wheelState({ linkage, springs, legAngle_rad }: ChassisInput, wheelTravel_m: number): WheelState {
  const link = linkage(wheelTravel_m);
  const { ratio: r, ratioSlope_1_m } = link;
  const laws = springs.map((law) => law(link.shaftTravel_m));
  const F = laws.reduce((sum, { force_N }) => sum + force_N, 0);
  const k = laws.reduce((sum, { rate_N_m }) => sum + rate_N_m, 0);
  const cos = Math.cos(legAngle_rad);
  const rateOfSprings_N_m = k * r ** 2;
  const rateOfLinkage_N_m = F * ratioSlope_1_m;
  return {
    wheelTravel_m,
    link,
    springForce_N: F * r,
    uprightForce_N: (F * r) / cos,
    rateOfSprings_N_m,
    rateOfLinkage_N_m,
    wheelRate_N_m: (rateOfSprings_N_m + rateOfLinkage_N_m) / cos ** 2,
  };
}
