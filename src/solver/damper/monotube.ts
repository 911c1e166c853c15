/**
 * Static force of a monotube damper whose gas presses on the compression chamber through a floating piston.
 *   compression, v > 0:  p_c = p_gas,  p_r = p_gas - dp(Q)
 *   rebound,     v < 0:  p_c = p_gas,  p_r = p_gas + dp(Q)
 *   Q = (A_p - A_r) |v|
 *   F = p_c A_p - p_r (A_p - A_r) - p_atm A_r + friction
 * v and F are positive in compression. A chamber cannot fall below the air-release pressure p_rel: where it would, dp is held at
 * p_gas - p_rel, the flows are those of that drop, and the rest of the displaced volume is a void behind the piston.
 * At rest the friction is anywhere in a band of the seal friction to both sides; 0 is reported.
 * Where the piston has a clearance, it drags oil through the gap with half its own speed. Seen from the piston and with A_p
 * the bore, that is pi D c |v| / 2 from the pressed chamber to the other; the pressure drives the rest of Q.
 * Source: balance of forces on rod and piston. Left out: compressibility, inertia of the oil, floating-piston friction, leakage
 * past the rod seal, drag of the oil in the clearance.
 *
 * symbol        unit  meaning
 * A_p, A_r      m2    bore and rod cross-sections
 * p_c, p_r      Pa    absolute pressures of compression and rebound chamber
 * dp, Q               drop over the piston [Pa] at the flow through it [m3/s]
 * p_rel, p_atm  Pa    air-release and atmospheric pressure, absolute
 */
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { wallDrivenArea } from '../restriction/annular-gap.ts';
import { cavitates } from '../restriction/cavitation.ts';
import { needleArea } from '../restriction/needle.ts';
import type { ExplicitValve, FailedValve, ValvePoint } from '../valve/explicit-valve.ts';
import type { FailedForce, ForcePoint, MonotubeInput } from './types.ts';

export interface MonotubeValves {
  readonly compression: ExplicitValve;
  readonly rebound: ExplicitValve;
}

export type MonotubeSizes = Pick<MonotubeInput, 'boreDiameter_m' | 'rodDiameter_m'>;

export interface MonotubeAreas {
  readonly piston_m2: number;
  readonly rod_m2: number;
  /** Displaced by the piston on the rod side. */
  readonly annulus_m2: number;
}

export function monotubeAreas({ boreDiameter_m, rodDiameter_m }: MonotubeSizes): MonotubeAreas {
  const piston_m2 = (Math.PI / 4) * boreDiameter_m ** 2;
  const rod_m2 = (Math.PI / 4) * rodDiameter_m ** 2;
  return { piston_m2, rod_m2, annulus_m2: piston_m2 - rod_m2 };
}

/** State of the damper at one shaft speed [m/s], or why its valve has none there. */
export function monotubePoint(
  damper: MonotubeInput,
  valves: MonotubeValves,
  airReleasePressure_Pa: number,
  v: number,
): ForcePoint | FailedForce {
  const valve = v < 0 ? valves.rebound : valves.compression;
  const dragged_m3_s = draggedFlow(damper, v);
  const free = valve.atFlow(monotubeAreas(damper).annulus_m2 * Math.abs(v) - dragged_m3_s);
  if (free.status !== 'converged') return failedForce(v, free);
  const p_gas = damper.gas.absolutePressure_Pa;
  // Only compression lowers a chamber below the gas pressure; the rebound stroke starves no chamber of this layout.
  const gasPressureNeeded_Pa = airReleasePressure_Pa + (v > 0 ? free.drop_Pa : 0);
  const airRelease = p_gas < gasPressureNeeded_Pa;
  const limited = airRelease && v > 0 ? valve.atDrop(Math.max(p_gas - airReleasePressure_Pa, 0)) : free;
  if (limited.status !== 'converged') return failedForce(v, limited);
  const flows = { ...limited.flows, leakage_m3_s: limited.flows.leakage_m3_s + dragged_m3_s };
  const cavitation = flows.bleed_m3_s > 0 && { bleedCavitates: bleedCavitates(damper, limited, v) };
  return { ...forcePoint(damper, { ...limited, flows }, v), airRelease, gasPressureNeeded_Pa, ...cavitation };
}

/** By the coefficient that its flow has on its narrowest area: that of the needle, or of the holes. */
function bleedCavitates({ bleed, fluid, gas }: MonotubeInput, { drop_Pa, flows }: ValvePoint, v: number): boolean {
  const { count, diameter_m, needle } = bleed;
  const holes_m2 = (count * Math.PI * diameter_m ** 2) / 4;
  const area_m2 = needle ? needleArea({ holeDiameter_m: diameter_m, ...needle }) : holes_m2;
  const Cd = flows.bleed_m3_s / (area_m2 * Math.sqrt((2 * drop_Pa) / fluid.density_kg_m3));
  const downstream_Pa = v > 0 ? gas.absolutePressure_Pa - drop_Pa : gas.absolutePressure_Pa;
  return cavitates(Cd, downstream_Pa + drop_Pa, downstream_Pa);
}

function draggedFlow({ pistonBand, boreDiameter_m }: MonotubeInput, v: number): number {
  return pistonBand ? wallDrivenArea({ outerDiameter_m: boreDiameter_m, ...pistonBand }) * Math.abs(v) : 0;
}

function forcePoint(
  damper: MonotubeInput,
  { drop_Pa, shimPressure_Pa, seatOpening_m, flows }: ValvePoint,
  v: number,
): Omit<ForcePoint, 'airRelease' | 'gasPressureNeeded_Pa'> {
  const { rod_m2: A_r, annulus_m2: A_a } = monotubeAreas(damper);
  const p_gas = damper.gas.absolutePressure_Pa;
  const direction = Math.sign(v);
  const gasForce_N = (p_gas - STANDARD_ATMOSPHERE_PA) * A_r;
  const frictionForce_N = direction * damper.sealFriction_N;
  const dampingForce_N = direction * drop_Pa * A_a;
  return {
    status: 'converged',
    shaftSpeed_m_s: v,
    force_N: gasForce_N + dampingForce_N + frictionForce_N,
    gasForce_N,
    frictionForce_N,
    dampingForce_N,
    compressionPressure_Pa: p_gas,
    reboundPressure_Pa: p_gas - direction * drop_Pa,
    gasPressure_Pa: p_gas,
    pistonDrop_Pa: drop_Pa,
    shimPressure_Pa,
    seatOpening_m,
    flows,
  };
}

const failedForce = (v: number, { status, reason }: FailedValve): FailedForce => ({
  status,
  shaftSpeed_m_s: v,
  reason,
});
