/**
 * Force that gives wanted damping ratios, in one direction: a line through rest up to the knee, and one of another slope beyond it,
 *   F = zeta_low c_crit v,                                    v <= v_knee
 *   F = zeta_low c_crit v_knee + zeta_high c_crit (v - v_knee),  v > v_knee
 * So the low-speed ratio is that of the secant, the high-speed ratio that of the tangent. Source: definition of the damping ratio.
 *
 * symbol  unit   meaning
 * F       N      size of the force of one damper at its shaft, its friction in it
 * v       m/s    size of the shaft speed
 * c_crit  N s/m  damping of one damper at its shaft that is critical
 */

export interface RatioGoal {
  readonly lowSpeedRatio: number;
  readonly highSpeedRatio: number;
  readonly kneeSpeed_m_s: number;
}

/** @param speed_m_s 0 or more  @returns size of the force [N] */
export function wantedForce(goal: RatioGoal, critical_N_s_m: number, speed_m_s: number): number {
  const { lowSpeedRatio, highSpeedRatio, kneeSpeed_m_s } = goal;
  const low = Math.min(speed_m_s, kneeSpeed_m_s);
  return critical_N_s_m * (lowSpeedRatio * low + highSpeedRatio * (speed_m_s - low));
}
