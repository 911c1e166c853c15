/**
 * Friction of seals and guides at the shaft: breakaway falls to sliding with speed, the oil film adds in proportion:
 *   F(v) = g(v) sign(v) + c v,   g(v) = F_c + (F_b - F_c) exp(-(v / v_s)^2)
 * At rest the friction may be anything from -F_b to F_b; 0 stands for it.
 *
 * A run over time wants a force without a step. There the sign is a steep tanh:
 *   F(v) = g(v) tanh(v / v_t) + c v
 * which is the law above for |v| well beyond v_t and goes over to it everywhere as v_t falls to 0. Over a sine stroke of peak speed
 * V pure sliding friction then takes less than 4 F X by the share (pi^2/24) (v_t/V)^2: 4e-5 at V = 100 v_t.
 * Source: Stribeck's curve in the Gaussian form of Bo & Pavelescu 1982 (from memory); energy 4 F X, any vibration text. Left
 * out: memory of the contact (presliding, lag of the oil film), pressure that presses a seal harder.
 *
 * symbol    unit   meaning
 * v         m/s    shaft speed, positive in compression
 * F_c, F_b  N      sliding and breakaway friction
 * v_s       m/s    speed scale of the fall from breakaway to sliding
 * c         N s/m  viscous friction
 * v_t       m/s    speed scale of the change of sign
 */
import { InputError } from '../../units/fault.ts';
import type { FrictionInput } from './types.ts';

/** v_t where nothing else is wanted [m/s]: far below the speeds a test measures, far above the rounding of any. */
export const REGULARISATION_SPEED_M_S = 1e-3;

/** Friction at the shaft [N] at a steady speed, with the sign of the speed; 0 at rest. */
export function frictionForce(friction: FrictionInput, v: number): number {
  return v === 0 ? 0 : Math.sign(v) * dryFriction(friction, v) + friction.viscous_N_s_m * v;
}

/**
 * The same without a step at v = 0 [N].
 * @throws InputError `friction.regularisation.not-positive` unless v_t > 0 [m/s]
 */
export function smoothFrictionForce(friction: FrictionInput, v: number, v_t = REGULARISATION_SPEED_M_S): number {
  if (!(v_t > 0)) {
    throw new InputError({
      code: 'friction.regularisation.not-positive',
      path: 'friction.regularisationSpeed_m_s',
      got: String(v_t),
      wanted: 'more than 0',
      unit: 'm/s',
    });
  }
  return v === 0 ? 0 : Math.tanh(v / v_t) * dryFriction(friction, v) + friction.viscous_N_s_m * v;
}

/** g(v) at a speed other than 0. */
function dryFriction({ sliding_N, breakaway_N, stribeckSpeed_m_s }: FrictionInput, v: number): number {
  return sliding_N + (breakaway_N - sliding_N) * Math.exp(-((v / stribeckSpeed_m_s) ** 2));
}
