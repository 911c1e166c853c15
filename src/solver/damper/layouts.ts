/**
 * The chambers of each layout and the way to the gas:
 *   monotube            gas, compression chamber  <- piston ->  rebound chamber
 *   all others          gas, reservoir  <- base ->  compression chamber  <- piston ->  rebound chamber
 * In compression the piston presses A_p v out of the compression chamber, of which (A_p - A_r) v goes on into the rebound chamber
 * and A_r v to the gas; rebound goes the other way. Where the piston has a clearance it drags oil along with half its own
 * speed; seen from the piston and with A_p the bore that is pi D c v / 2 past the valves, from the pressed chamber to the other.
 *
 * symbol    unit  meaning
 * A_p, A_r  m2    bore and rod cross-sections
 * v         m/s   shaft speed, positive in compression
 * c, D      m     clearance of the piston, mean diameter of the gap
 */
import { wallDrivenArea } from '../restriction/annular-gap.ts';
import type { Valve } from '../valve/explicit-valve.ts';
import type { Chamber, Network } from './network.ts';
import { pistonAreas } from './piston-areas.ts';
import type { DamperInput } from './types.ts';

export type ChamberName = 'compression' | 'rebound';

export interface DamperValves {
  /** Oil through the piston out of the compression chamber, and out of the rebound chamber. */
  readonly compression: Valve;
  readonly rebound: Valve;
  readonly base?: BaseValves;
}

export interface BaseValves {
  /** Out of the compression chamber, and back into it. */
  readonly compression: Valve;
  readonly refill: Valve;
}

export function networkOf(damper: DamperInput, valves: DamperValves): Network<ChamberName> {
  const { piston_m2, annulus_m2 } = pistonAreas(damper);
  const dragged_m2 = draggedArea(damper);
  const rebound: Chamber<ChamberName> = {
    name: 'rebound',
    sweptArea_m2: dragged_m2 - annulus_m2,
    outward: valves.rebound,
    inward: valves.compression,
    behind: [],
  };
  if (!valves.base) return { chambers: [rebound] };
  const { compression: outward, refill: inward } = valves.base;
  const sweptArea_m2 = piston_m2 - dragged_m2;
  return { chambers: [{ name: 'compression', sweptArea_m2, outward, inward, behind: [rebound] }] };
}

/** Volume that the moving piston drags through its clearance, per metre [m2]. */
export function draggedArea({ pistonBand, boreDiameter_m }: DamperInput): number {
  return pistonBand ? wallDrivenArea({ outerDiameter_m: boreDiameter_m, ...pistonBand }) : 0;
}
