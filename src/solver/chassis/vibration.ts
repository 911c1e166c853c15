/**
 * The sprung mass on its springs, one degree of freedom:
 *   f = sqrt(K / m) / 2 pi,   c_crit = 2 sqrt(K m)
 * A damper of c at its shaft is C = n c r^2 / cos^2 a at the wheel (virtual work), so one damper is critical at
 *   c = c_crit cos^2 a / (n r^2)
 * Source: any text on vibration (J. P. Den Hartog, Mechanical Vibrations; W. T. Thomson, Theory of Vibration, from memory).
 * Left out: tyre, the other end of the vehicle, and that springs and linkage are not linear over a whole stroke.
 *
 * symbol  unit     meaning
 * K       N/m      upright wheel rate
 * m       kg       sprung mass
 * c, C    N s/m    damping at one shaft, and upright at the wheel
 * n       -        dampers side by side
 * r       -        motion ratio
 * a       rad      angle of the wheel travel from the upright
 */
import type { ChassisInput, Vibration, WheelState } from './types.ts';

type Built = Pick<ChassisInput, 'damperCount' | 'legAngle_rad'>;

/** Damping upright at the wheel for each of damping at one shaft: n r^2 / cos^2 a. */
export const wheelPerShaftDamping = ({ damperCount, legAngle_rad }: Built, { link }: WheelState): number =>
  (damperCount * link.ratio ** 2) / Math.cos(legAngle_rad) ** 2;

/** @param mass_kg that swings  @returns `no-swing` where rate or mass is 0 or less */
export function vibrationOf(built: Built, state: WheelState, mass_kg: number): Vibration {
  const { wheelRate_N_m: K } = state;
  if (!(K > 0 && mass_kg > 0)) return { status: 'no-swing' };
  const critical = 2 * Math.sqrt(K * mass_kg);
  return {
    status: 'swings',
    naturalFrequency_Hz: Math.sqrt(K / mass_kg) / (2 * Math.PI),
    criticalDamping_N_s_m: critical,
    criticalShaftDamping_N_s_m: critical / wheelPerShaftDamping(built, state),
  };
}
