/**
 * A cone on its seat under a spring, opened by the drop: the lift x is tried until the balance of forces gives that drop.
 *   dp = (F_0 + k x)/[A_s - 2 Cd Cv A cos a],   A = pi s (d - s cos a),   s = x sin a
 *   dp = 32 mu Q/(pi A s) + rho/2 (Q/(Cd A))^2
 *
 * symbol    unit    meaning
 * d, A_s    m, m2   diameter and area of the seat
 * a         rad     half the cone angle
 * F_0, k    N, N/m  spring at rest, with what its adjuster has taken off; its rate
 */
import { dynamic, fallingRoot, flowAt, type Oil, SHARP } from './flow.ts';
import type { Sheet } from './sheet.ts';

export interface PoppetSizes {
  readonly seatDiameter: number;
  readonly halfAngle: number;
  readonly rate: number;
  readonly preload: number;
  readonly travel: number;
}

const JET_VELOCITY = 0.98;

/** At a drop [Pa]; what passes [m3/s]. */
export function poppetFlow(sizes: PoppetSizes, dp: number, oil: Oil, { put }: Sheet): number {
  const { seatDiameter: d, halfAngle: alpha, rate, preload, travel } = sizes;
  const A_s = (Math.PI / 4) * d * d;
  if (dp * A_s <= preload) return put('Q poppet', 'closed up to F₀/A_s', 0, 'mL/s');
  const slit = (x: number) => x * Math.sin(alpha);
  const area = (x: number) => Math.PI * slit(x) * (d - slit(x) * Math.cos(alpha));
  const holds = (x: number) => (preload + rate * x) / (A_s - 2 * SHARP * JET_VELOCITY * area(x) * Math.cos(alpha));
  const tried = fallingRoot((x) => dp - holds(x), 0, travel);
  const x = put('x poppet', 'tried until the next line is Δp', tried, 'mm');
  const A = area(x);
  put('p poppet', '(F₀ + kx)/[A_s − 1.198 A cos α], A = πs(d − s cos α), s = x sin α', holds(x), 'MPa');
  put('A poppet', 'of the next line', A, 'mm²');
  const Q = flowAt(dp, (32 * dynamic(oil)) / (Math.PI * A * slit(x)), oil.density / 2 / (SHARP * A) ** 2);
  return put('Q poppet', 'at Δp = 32 μQ/(πAs) + ρ/2 (Q/0.611 A)²', Q, 'mL/s');
}
