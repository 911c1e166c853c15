/**
 * Friction of fully developed flow in a smooth passage, laminar to turbulent in one formula:
 *   dp = f (L/d) rho u^2 / 2,   f = 8 [(8/Re)^12 + (A + B)^(-3/2)]^(1/12),
 *   A = [-2.457 ln((7/Re)^0.9)]^16,   B = (37530/Re)^16
 * Source: Churchill 1977 (checked at published points); f -> 64/Re below Re 2000. No entry or exit loss. Left out: roughness, which in the
 * full formula adds 3 % at 1e-4 of the diameter and 25 % at 1e-3 where Re is 1e5, and less below.
 *
 * symbol  unit  meaning
 * Re      -     rho u d / mu on the mean velocity u
 * f       -     Darcy friction factor
 */

/** Darcy friction factor [-] of a smooth passage at Re > 0. */
export function frictionFactor(Re: number): number {
  const laminar = (8 / Re) ** 12;
  if (Re < 1) return 64 / Re;
  const A = (-2.457 * Math.log((7 / Re) ** 0.9)) ** 16;
  const B = (37530 / Re) ** 16;
  return 8 * (laminar + (A + B) ** -1.5) ** (1 / 12);
}
