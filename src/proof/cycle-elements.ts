/**
 * One chamber of oil behind one valve on gas without end: a dashpot A^2 dp/Q in series with the spring K A^2/V of the oil. The closed forms
 * of vibration texts hold for it.
 *
 * symbol  unit   meaning
 * A, V    m2,m3  swept area and volume of the chamber
 * K       Pa     bulk modulus
 */
import { tabulateFlow } from '../solver/cycle/flow-table.ts';
import type { CycleModel } from '../solver/cycle/types.ts';

export interface ElementInput {
  readonly area_m2: number;
  /** At half the travel [m3]. */
  readonly volume_m3: number;
  readonly bulkModulus_Pa: number;
  /** Of the valve, both ways. */
  readonly flow: (drop_Pa: number) => number;
  readonly largestDrop_Pa: number;
  readonly travel_m: number;
  readonly friction?: (speed_m_s: number) => number;
}

/** Large enough that its own stiffness, p A^2/V, is nothing. */
const GAS_M3 = 1e6;
const GAS_PA = 2e7;
/** How far the table of the valve may be off. */
const SHARE = 1e-8;

export function elementModel(input: ElementInput): CycleModel {
  const { area_m2: A, volume_m3: V, bulkModulus_Pa, flow, largestDrop_Pa, travel_m, friction = () => 0 } = input;
  const valve = { steady: tabulateFlow(flow, largestDrop_Pa, SHARE) };
  const gas = { absolutePressure_Pa: GAS_PA, volume_m3: GAS_M3, polytropicExponent: 1, separatorFriction_Pa: 0 };
  const chamber = {
    name: 'chamber',
    parent: 'gas',
    sweptArea_m2: A,
    extendedVolume_m3: V + (A * travel_m) / 2,
    link: { outward: valve, inward: valve },
  };
  return {
    root: { name: 'gas', sweptArea_m2: 0, extendedVolume_m3: GAS_M3 + V, gas },
    chambers: [chamber],
    oil: { bulkModulus_Pa, airFraction: 0, airExponent: 1 },
    airReleasePressure_Pa: 1e5,
    friction,
    travel_m,
    checkLag_s: 0,
  };
}
