/** Areas, gas and friction of a damper at mid-stroke, by hand. */
import type { Project } from '../../../src/model/project.ts';
import { circle, metres } from './document.ts';
import type { Sheet } from './sheet.ts';

export interface Areas {
  readonly A_p: number;
  readonly A_r: number;
  /** Of what leaves the gas. */
  readonly A_g: number;
}

export function areasOf({ damper }: Project, { put }: Sheet): Areas {
  const A_p = put('A_p', 'bore', circle(metres(damper.boreDiameter_mm)), 'mm²');
  const A_r = put('A_r', 'rod', circle(metres(damper.rodDiameter_mm)), 'mm²');
  const leg_mm = damper.layout === 'cartridge' ? damper.legDiameter_mm : undefined;
  const A_g = leg_mm === undefined ? A_r : put('A_g', 'leg at its seal', circle(metres(leg_mm)), 'mm²');
  put('A_p − A_r', '', A_p - A_r, 'mm²');
  return { A_p, A_r, A_g };
}

export const ATMOSPHERE_PA = 101325;

export interface Gas {
  /** Absolute [Pa]. */
  readonly pressure: number;
  readonly force: number;
}

/** Gas at mid-stroke: p V^n with absolute p. */
export function gasByHand(project: Project, { A_g }: Areas, { put }: Sheet): Gas {
  const { gas, damper } = project;
  if (gas.separator?.kind === 'floating-piston' && gas.separator.friction_N)
    throw new Error('the friction of a floating piston is not worked out here');
  const half = metres(damper.travel_mm) / 2;
  const p0 = gas.gaugePressure_bar * 1e5 + ATMOSPHERE_PA;
  const V0 = gas.airGap ? airGap(project, A_g) : (gas.volume_mL ?? 0) * 1e-6;
  put('V₀', gas.airGap ? '(π/4) D² · level − what comes in + A_g · travel' : 'gas at full extension', V0, 'mL');
  const V = put('V', gas.airGap ? 'V₀ − A_g · half the travel' : 'V₀ − A_r · half the travel', V0 - A_g * half, 'mL');
  const pressure = put('p_gas', 'p₀ (V₀/V)ⁿ, absolute', p0 * (V0 / V) ** gas.polytropicExponent, 'MPa');
  const area = gas.airGap ? 'A_g' : 'A_r';
  return { pressure, force: put('F_gas', `(p_gas − 0.101325 MPa) ${area}`, (pressure - ATMOSPHERE_PA) * A_g, 'N') };
}

function airGap({ gas, damper }: Project, A_g: number): number {
  const { level_mm = 0, tubeDiameter_mm = 0, insertedVolume_mL = 0 } = gas.airGap ?? {};
  const compressed = circle(metres(tubeDiameter_mm)) * metres(level_mm) - insertedVolume_mL * 1e-6;
  return compressed + A_g * metres(damper.travel_mm);
}

/** Without sign [N]. */
export function frictionAt({ damper }: Project, speed: number): number {
  const { sealFriction_N: slow, frictionLaw: law } = damper;
  if (!law) return slow;
  const { breakaway_N, stribeckSpeed_m_s, viscous_N_s_m } = law;
  return slow + (breakaway_N - slow) * Math.exp(-((speed / stribeckSpeed_m_s) ** 2)) + viscous_N_s_m * speed;
}
