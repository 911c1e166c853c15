/**
 * A creeping loss and an inertial loss in series: dp = a Q + b Q^2. Rising and smooth for a, b >= 0 (not both 0), so
 * both directions are closed forms; written so that neither limit loses digits:
 *   Q = 2 dp / (a + sqrt(a^2 + 4 b dp)).
 *
 * symbol  unit      meaning
 * a       Pa s/m3   creeping resistance
 * b       Pa s2/m6  inertial resistance
 */
import { exact } from '../numeric/solved.ts';
import type { Restriction } from './types.ts';

/** Flow that the two resistances a [Pa s/m3] and b [Pa s2/m6] leave to a drop >= 0 [m3/s]. */
export const quadraticFlow = (a: number, b: number, dp: number): number =>
  dp === 0 ? 0 : (2 * dp) / (a + Math.sqrt(a * a + 4 * b * dp));

/** Restriction with the two resistances. */
export function quadraticLoss(a: number, b: number): Restriction {
  return {
    flow: (dp) => exact(quadraticFlow(a, b, dp)),
    drop: (Q) => exact((a + b * Q) * Q),
  };
}

/** Resistance b of a jet of area A [m2] and discharge coefficient Cd: dp = rho/2 (Q / (Cd A))^2. */
export const jetResistance = (density_kg_m3: number, Cd: number, A: number): number =>
  density_kg_m3 / (2 * (Cd * A) ** 2);
