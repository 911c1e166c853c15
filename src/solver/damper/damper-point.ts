/**
 * Static force of a damper at one shaft speed, from the pressures of its chambers:
 *   F = p_c A_p - p_r (A_p - A_r) - p_s A_r + (p_s - p_atm) A_g + friction + stop
 * p_s is what the oil next to the gas stands at; in a monotube that is the compression chamber itself. A_g is what leaves the gas
 * per metre of stroke: the rod, or in a fork the leg, on whose seal the air acts. For A_g = A_r the two terms with p_s come
 * down to -p_atm A_r. A floating piston holds a pressure by its friction: p_s = p_gas + sign(v) p_f, but the oil there falls no
 * lower than to air release. Where that would be, the piston stands still, and what the gas would have gained opens as a void.
 * v and F are positive in compression. At rest the friction is anywhere in a band to both sides; 0 is reported.
 * Source: balance of forces on rod and piston. Left out: compressibility, inertia of the oil, leakage past the rod seal,
 * drag of the oil in the clearance of the piston.
 *
 * symbol           unit  meaning
 * A_p, A_r, A_g    m2    bore and rod cross-sections, area of the gas
 * p_c, p_r, p_s    Pa    absolute pressures of compression and rebound chamber, and of the oil next to the gas
 * p_gas, p_f       Pa    absolute pressure of the gas, pressure that the friction of its floating piston holds
 * p_atm            Pa    atmospheric pressure
 */
import { gasForce } from '../fluid/gas.ts';
import type { FailedValve } from '../valve/explicit-valve.ts';
import { cavitatingPaths, jetsOf } from '../valve/throats.ts';
import { frictionForce } from './friction.ts';
import { hydraulicStopForce } from './hydraulic-stop.ts';
import { type ChamberName, type DamperValves, draggedArea, networkOf } from './layouts.ts';
import { type ChamberState, type Network, networkState } from './network.ts';
import { gasArea, pistonAreas } from './piston-areas.ts';
import type { BasePoint, DamperInput, FailedForce, ForcePoint } from './types.ts';

/** State of a damper at one shaft speed [m/s], or why a valve has none there. */
export function damperPoint(
  damper: DamperInput,
  network: Network<ChamberName>,
  airReleasePressure_Pa: number,
  v: number,
): ForcePoint | FailedForce {
  const { absolutePressure_Pa: p_gas, separatorFriction_Pa: p_f } = damper.gas;
  const held_Pa = Math.sign(v) * p_f;
  const p_s = Math.max(p_gas + held_Pa, Math.min(p_gas, airReleasePressure_Pa));
  const state = networkState(network, v, p_s, airReleasePressure_Pa);
  if (state.status !== 'converged') return failedForce(v, state);
  const { compression, rebound } = state.chambers;
  const gasPressureNeeded_Pa = airReleasePressure_Pa + state.deepest_Pa - held_Pa;
  const voids = voidsIn({ compression, rebound });
  return {
    ...forcePoint(damper, v, { p_s, p_c: compression?.pressure_Pa ?? p_s, rebound }),
    ...(compression && { base: basePoint(damper, compression, p_s) }),
    airRelease: p_gas < gasPressureNeeded_Pa,
    ...(p_s > p_gas + held_Pa ? { voids_m3_s: withVoidAtGas(damper, voids, v) } : voids && { voids_m3_s: voids }),
    gasPressureNeeded_Pa,
  };
}

type Voids = NonNullable<ForcePoint['voids_m3_s']>;

function voidsIn(chambers: Partial<Record<ChamberName, ChamberState>>): Voids | undefined {
  const open = Object.entries(chambers).filter(([, chamber]) => chamber && chamber.voidRate_m3_s > 0);
  if (open.length === 0) return undefined;
  return Object.fromEntries(open.map(([name, { voidRate_m3_s }]) => [name, voidRate_m3_s]));
}

/** With the void beside a floating piston that stands still: what leaves the gas, less what the other voids take of it. */
function withVoidAtGas(damper: DamperInput, voids: Voids = {}, v: number): Voids {
  const others = Object.values(voids).reduce((sum, rate) => sum + rate, 0);
  return { ...voids, [damper.base ? 'reservoir' : 'compression']: gasArea(damper) * Math.abs(v) - others };
}

interface Loads {
  readonly p_s: number;
  readonly p_c: number;
  readonly rebound: ChamberState;
}

function forcePoint(
  damper: DamperInput,
  v: number,
  { p_s, p_c, rebound }: Loads,
): Omit<ForcePoint, 'airRelease' | 'gasPressureNeeded_Pa'> {
  const { piston_m2: A_p, annulus_m2: A_a } = pistonAreas(damper);
  const A_g = gasArea(damper);
  const { absolutePressure_Pa: p_gas } = damper.gas;
  const p_r = rebound.pressure_Pa;
  const gasForce_N = gasForce(damper.gas, A_g);
  const dampingForce_N = (p_c - p_s) * A_p - (p_r - p_s) * A_a;
  const frictionForce_N = frictionForce(damper.friction, v) + (p_s - p_gas) * A_g;
  const stopForce_N = hydraulicStopForce(damper, v);
  const { shimPressure_Pa, seatOpening_m, flows } = rebound.valve;
  const cavitating = cavitatingPaths(rebound.valve, Math.max(p_c, p_r), damper.fluid.density_kg_m3);
  const jets = jetsOf(rebound.valve);
  const leakage_m3_s = flows.leakage_m3_s + draggedArea(damper) * Math.abs(v);
  return {
    status: 'converged',
    shaftSpeed_m_s: v,
    force_N: gasForce_N + dampingForce_N + frictionForce_N + stopForce_N,
    gasForce_N,
    frictionForce_N,
    dampingForce_N,
    stopForce_N,
    compressionPressure_Pa: p_c,
    reboundPressure_Pa: p_r,
    gasPressure_Pa: p_gas,
    pistonDrop_Pa: rebound.valve.drop_Pa,
    shimPressure_Pa,
    seatOpening_m,
    flows: { ...flows, leakage_m3_s },
    ...(flows.bleed_m3_s > 0 && { bleedCavitates: cavitating.some(({ path }) => path === 'bleed') }),
    ...(cavitating.length > 0 && { cavitating }),
    ...(jets.length > 0 && { jets }),
  };
}

function basePoint({ fluid }: DamperInput, { valve, pressure_Pa }: ChamberState, p_s: number): BasePoint {
  const { drop_Pa, shimPressure_Pa, seatOpening_m, flows } = valve;
  const cavitating = cavitatingPaths(valve, Math.max(pressure_Pa, p_s), fluid.density_kg_m3);
  const jets = jetsOf(valve);
  return {
    drop_Pa,
    shimPressure_Pa,
    seatOpening_m,
    flows,
    ...(cavitating.length > 0 && { cavitating }),
    ...(jets.length > 0 && { jets }),
  };
}

/** As `damperPoint`, at every speed. */
export function damperPoints(
  damper: DamperInput,
  valves: DamperValves,
  airReleasePressure_Pa: number,
  speeds_m_s: readonly number[],
): (ForcePoint | FailedForce)[] {
  const network = networkOf(damper, valves);
  return speeds_m_s.map((v) => damperPoint(damper, network, airReleasePressure_Pa, v));
}

const failedForce = (v: number, { status, reason }: FailedValve): FailedForce => ({
  status,
  shaftSpeed_m_s: v,
  reason,
});
