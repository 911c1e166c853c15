/**
 * A damper as chambers over time: the same tree as damper/layouts.ts, with volumes.
 *   monotube            root: compression chamber and gas   <- piston ->  rebound chamber
 *   all others          root: reservoir and gas  <- base ->  compression chamber  <- piston ->  rebound chamber
 *   V_c = A_p (L - x + e),   V_r = (A_p - A_r)(x + e),   gas: V = V_0 - A_g x
 * What the reservoir holds of oil no document says; it is taken as the swept volume of the bore, A_p L. Beside gas it does not count: it
 * yields by less than a hundredth of what the gas does.
 *
 * symbol         unit  meaning
 * A_p, A_r, A_g  m2    bore and rod cross-sections, what sinks into the gas (rod, or fork leg)
 * L, x           m     travel, stroke from full extension
 * e              m     length of oil left in each chamber at its end of the stroke
 */

import { smoothFrictionForce } from '../damper/friction.ts';
import { hydraulicStopForce } from '../damper/hydraulic-stop.ts';
import { type DamperValves, draggedArea } from '../damper/layouts.ts';
import { gasArea, pistonAreas } from '../damper/piston-areas.ts';
import type { DamperInput } from '../damper/types.ts';
import type { AeratedOil } from '../fluid/bulk-modulus.ts';
import { gasAtStroke } from '../fluid/gas.ts';
import type { CycleGas, CycleLink, CycleModel, LinkedChamber, RootChamber } from './types.ts';
import { directionFlow } from './valve-flow.ts';

export interface DamperModelOptions {
  readonly oil: AeratedOil;
  readonly airReleasePressure_Pa: number;
  readonly checkLag_s: number;
}

/** Oil does not hold together for ever: its vapour pressure is far below this (from memory) [Pa]. */
const LEAST_RELEASE_PA = 1000;

/**
 * @throws InputError `gas.volume.too-small` when the travel needs the whole gas
 * @throws ValveFailed where a valve has no state
 */
export function damperModel(damper: DamperInput, valves: DamperValves, options: DamperModelOptions): CycleModel {
  const { travel_m, hydraulicStop } = damper;
  const gas = gasAtExtension(damper);
  return {
    ...chambersOf(damper, gas, valves),
    oil: options.oil,
    airReleasePressure_Pa: Math.max(options.airReleasePressure_Pa, LEAST_RELEASE_PA),
    friction: (v) => smoothFrictionForce(damper.friction, v),
    ...(hydraulicStop && { stop: (x: number, v: number) => hydraulicStopForce({ ...damper, stroke_m: x }, v) }),
    travel_m,
    checkLag_s: options.checkLag_s,
  };
}

function gasAtExtension({ gas, stroke_m, travel_m, ...sizes }: DamperInput): CycleGas {
  const area_m2 = gasArea(sizes);
  const extended = gasAtStroke(gas, area_m2, 0 - stroke_m);
  gasAtStroke(extended, area_m2, travel_m);
  return { ...extended, separatorFriction_Pa: gas.separatorFriction_Pa };
}

function chambersOf(damper: DamperInput, gas: CycleGas, valves: DamperValves): Pick<CycleModel, 'root' | 'chambers'> {
  const { travel_m: L, endClearance_m: e, base } = damper;
  const { piston_m2: A_p, annulus_m2: A_a, rod_m2: A_r } = pistonAreas(damper);
  const compression = { name: 'compression', sweptArea_m2: A_p, extendedVolume_m3: A_p * (L + e) };
  const rebound: LinkedChamber = {
    name: 'rebound',
    parent: 'compression',
    sweptArea_m2: -A_a,
    extendedVolume_m3: A_a * e,
    link: {
      outward: directionFlow(valves.rebound),
      inward: directionFlow(valves.compression),
      draggedArea_m2: draggedArea(damper),
    },
  };
  if (!base || !valves.base) {
    const extendedVolume_m3 = compression.extendedVolume_m3 + gas.volume_m3;
    return { root: { ...compression, extendedVolume_m3, gas }, chambers: [rebound] };
  }
  const link: CycleLink = {
    outward: directionFlow(valves.base.compression),
    inward: directionFlow(valves.base.refill),
  };
  const root: RootChamber = {
    name: 'reservoir',
    sweptArea_m2: gasArea(damper) - A_r,
    extendedVolume_m3: A_p * L + gas.volume_m3,
    gas,
  };
  return { root, chambers: [{ ...compression, parent: 'reservoir', link }, rebound] };
}
