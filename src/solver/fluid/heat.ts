/**
 * How fast a damper warms by what it dissipates, if no heat leaves it:
 *   dT/dt = P / (m_o c_o + m_m c_m)
 * An upper bound: a real damper cools to the air, and metal that is not named warms as well. Oil and metal share one temperature.
 * Source: elementary balance of energy; specific heats from memory, each with its range.
 *
 * symbol    unit      meaning
 * P         W         mean power dissipated: energy per cycle times frequency
 * m_o, m_m  kg        masses of oil and of the metal that warms with it
 * c_o, c_m  J/(kg K)  their specific heats
 */
import { InputError } from '../../units/fault.ts';
import type { CoefficientEntry } from '../restriction/coefficients.ts';

export const HEAT_TABLE = {
  oilSpecificHeat_J_kgK: {
    value: 2000,
    low: 1900,
    high: 2100,
    unit: 'J/(kg K)',
    meaning: 'specific heat of the oil',
    source: 'mineral oil at the temperatures of a damper, 1.9 to 2.1 kJ/(kg K) (textbook range, from memory)',
  },
  metalSpecificHeat_J_kgK: {
    value: 700,
    low: 470,
    high: 900,
    unit: 'J/(kg K)',
    meaning: 'specific heat of the metal that warms with the oil',
    source: 'steel 470, aluminium 900 (from memory); the value stands for about equal masses of both',
  },
} as const satisfies Record<string, CoefficientEntry>;

export interface HeatedMasses {
  readonly oil_kg: number;
  /** Metal that warms with the oil [kg]. */
  readonly metal_kg: number;
}

/**
 * Rise of temperature per second [K/s] at a mean power [W] without any cooling.
 * @throws InputError `heat.mass.negative`, `heat.mass.none` when nothing would warm, `heat.power` for a power that is no finite
 *   number of at least 0.
 */
export function temperatureRise(power_W: number, { oil_kg, metal_kg }: HeatedMasses): number {
  if (!(oil_kg >= 0)) throw fault('heat.mass.negative', 'oil_kg', oil_kg, '0 or more', 'kg');
  if (!(metal_kg >= 0)) throw fault('heat.mass.negative', 'metal_kg', metal_kg, '0 or more', 'kg');
  if (!(oil_kg + metal_kg > 0)) throw fault('heat.mass.none', 'oil_kg', oil_kg, 'oil or metal that warms', 'kg');
  if (!(power_W >= 0 && Number.isFinite(power_W))) throw fault('heat.power', 'power_W', power_W, '0 or more', 'W');
  const { oilSpecificHeat_J_kgK: oil, metalSpecificHeat_J_kgK: metal } = HEAT_TABLE;
  return power_W / (oil_kg * oil.value + metal_kg * metal.value);
}

const fault = (code: string, path: string, got: number, wanted: string, unit: string) =>
  new InputError({ code, path, got: String(got), wanted, unit });
