/**
 * What passes between piston and tube: driven by pressure, and dragged along by the wall.
 *   dp = 12 mu L Q/[pi D c^3 (1 + 1.5 e^2)] + (54/35)(rho/2)(Q/(pi D c))^2,   Q_drag = pi D c v/2,   D = bore - c
 *
 * symbol   unit  meaning
 * c, L, e  m, m, -  clearance, its length, distance of the axes over c
 */
import { dynamic, flowAt, type Oil } from './flow.ts';
import type { Sheet } from './sheet.ts';

export interface Gap {
  readonly bore: number;
  readonly clearance: number;
  readonly length: number;
  readonly eccentricity: number;
}

/** At a drop [Pa] and a shaft speed [m/s]; the whole of it [m3/s]. */
export function leakFlow(
  { bore, clearance: c, length, eccentricity }: Gap,
  dp: number,
  v: number,
  oil: Oil,
  { put }: Sheet,
) {
  const A = Math.PI * (bore - c) * c;
  const a = (12 * dynamic(oil) * length) / (A * c * c * (1 + 1.5 * eccentricity ** 2));
  const b = ((54 / 35) * oil.density) / 2 / (A * A);
  const driven = put('Q gap', 'at Δp = 12 μLQ/[πDc³(1 + 1.5 e²)] + (54/35)(ρ/2)(Q/πDc)²', flowAt(dp, a, b), 'mL/s');
  return driven + put('Q drag', 'πDc v/2', (A * v) / 2, 'mL/s');
}
