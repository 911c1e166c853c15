/** What a chassis does with the damper of a document: sag, rates, frequency, and the damping ratio of force curves. */
import type { Project, RatioGoal } from '../../model/project.ts';
import { metresFromMillimetres as metres } from '../../units/si.ts';
import { type DampingRatios, dampingRatios } from '../chassis/damping-ratio.ts';
import { sagUnder } from '../chassis/sag.ts';
import type { ChassisInput, Sag, Vibration, WheelState } from '../chassis/types.ts';
import { vibrationOf } from '../chassis/vibration.ts';
import { wantedForce } from '../chassis/wanted-force.ts';
import { wheelState } from '../chassis/wheel-state.ts';
import { chassisFromProject, missingIn, type Needed } from './chassis.ts';

/** Forces of one damper at its shaft without that of its gas. */
export interface DampingCurve {
  readonly shaftSpeed_m_s: readonly number[];
  readonly force_N: readonly (number | null)[];
}

export interface ChassisQuestion {
  /** Where it swings; the laden sag when absent. */
  readonly wheelTravel_mm?: number;
  /** By build id. */
  readonly curves: Readonly<Record<string, DampingCurve>>;
}

export interface BuildDamping extends DampingRatios {
  readonly shaftSpeed_m_s: readonly number[];
  /** Upright at the wheel, all dampers of this end [m/s], [N]. */
  readonly wheelSpeed_m_s: readonly number[];
  readonly wheelForce_N: readonly (number | null)[];
}

/** Where the sprung mass swings, and how. */
export interface SwingReading {
  readonly state: WheelState;
  readonly vibration: Vibration;
  /** The wheel alone on the springs, off the ground; without an unsprung mass it is not known. */
  readonly wheelInAir?: Vibration;
  /** By build id; empty where nothing swings. */
  readonly builds: Readonly<Record<string, BuildDamping>>;
}

export type ChassisReading =
  | { readonly status: 'incomplete'; readonly missing: readonly Needed[] }
  | {
      readonly status: 'read';
      readonly staticSag: Sag;
      readonly ladenSag: Sag;
      /** At full compression. */
      readonly fullTravel: WheelState;
      readonly swing: SwingReading | { readonly status: 'no-place'; readonly reason: string };
    };

/**
 * Forces at the wheel are those at the shafts through the motion ratio, W = n F r / cos a, at z = x cos a (virtual work).
 * @throws InputError as `chassisFromProject` does
 */
export function chassisReading(project: Project, { wheelTravel_mm, curves }: ChassisQuestion): ChassisReading {
  const chassis = chassisFromProject(project);
  if (!chassis) return { status: 'incomplete', missing: missingIn(project.chassis) };
  const laden_kg = chassis.vehicleSprungMass_kg + chassis.riderSprungMass_kg;
  const ladenSag = sagUnder(chassis, laden_kg);
  const place = wheelTravel_mm === undefined ? ladenSag : wheelState(chassis, metres(wheelTravel_mm));
  return {
    status: 'read',
    staticSag: sagUnder(chassis, chassis.vehicleSprungMass_kg),
    ladenSag,
    fullTravel: wheelState(chassis, chassis.wheelTravel_m),
    swing:
      'reason' in place
        ? { status: 'no-place', reason: place.reason }
        : swingAt(chassis, 'state' in place ? place.state : place, laden_kg, curves),
  };
}

function swingAt(
  chassis: ChassisInput,
  state: WheelState,
  mass_kg: number,
  curves: ChassisQuestion['curves'],
): SwingReading {
  const vibration = vibrationOf(chassis, state, mass_kg);
  const { unsprungMass_kg } = chassis;
  const read = ([id, curve]: [string, DampingCurve]): [string, BuildDamping][] =>
    vibration.status === 'swings' ? [[id, dampingOf(chassis, state, curve, vibration.criticalShaftDamping_N_s_m)]] : [];
  return {
    state,
    vibration,
    ...(unsprungMass_kg !== undefined && { wheelInAir: vibrationOf(chassis, state, unsprungMass_kg) }),
    builds: Object.fromEntries(Object.entries(curves).flatMap(read)),
  };
}

function dampingOf(
  chassis: ChassisInput,
  state: WheelState,
  { shaftSpeed_m_s, force_N }: DampingCurve,
  critical_N_s_m: number,
): BuildDamping {
  const cos = Math.cos(chassis.legAngle_rad);
  const { ratio } = state.link;
  const perShaftForce = (chassis.damperCount * ratio) / cos;
  return {
    shaftSpeed_m_s,
    wheelSpeed_m_s: shaftSpeed_m_s.map((speed) => (speed * cos) / ratio),
    wheelForce_N: force_N.map((force) => (force === null ? null : force * perShaftForce)),
    ...dampingRatios(shaftSpeed_m_s, force_N, critical_N_s_m),
  };
}

/** What damping ratios ask of one damper. */
export interface RatioWish {
  readonly wheelTravel_mm: number;
  readonly compression: RatioGoal;
  readonly rebound: RatioGoal;
  /** Rising, never 0, positive in compression. */
  readonly speeds_m_s: readonly number[];
}

export type WantedCurve =
  | { readonly status: 'wanted'; readonly force_N: readonly number[] }
  | { readonly status: 'incomplete'; readonly missing: readonly Needed[] }
  /** The wheel rate there is 0 or less, so that no damping is critical. */
  | { readonly status: 'no-swing' };

/** @throws InputError as `chassisFromProject` does */
export function wantedCurve(project: Project, wish: RatioWish): WantedCurve {
  const chassis = chassisFromProject(project);
  if (!chassis) return { status: 'incomplete', missing: missingIn(project.chassis) };
  const state = wheelState(chassis, metres(wish.wheelTravel_mm));
  const vibration = vibrationOf(chassis, state, chassis.vehicleSprungMass_kg + chassis.riderSprungMass_kg);
  if (vibration.status !== 'swings') return vibration;
  const force = (speed: number): number => {
    const goal = speed > 0 ? wish.compression : wish.rebound;
    return Math.sign(speed) * wantedForce(goal, vibration.criticalShaftDamping_N_s_m, Math.abs(speed));
  };
  return { status: 'wanted', force_N: wish.speeds_m_s.map(force) };
}
