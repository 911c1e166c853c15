/** The wanted curve as points: an aim of the project, the curve of a build, or such a curve changed. */
import type { SpeedForces } from '../../../workers/protocol.ts';
import type { Aim, AimPoint } from '../../model/aim.ts';
import type { Project, ValvePlace } from '../../model/project.ts';
import { type Direction, directionOf } from '../app/places.ts';
import type { Change } from './form.ts';

/** Points each way of an aim that is read off a curve. */
const POINTS = 10;
/** Spacing grows with this power of the place in the list, as on the charts: a curve bends most at low speed. */
const CROWDING = 1.7;
/** A change eases in over these multiples of its speed: a step in a wanted curve is one that no stack can give. */
const EASE = { from: 0.8, to: 1.25 } as const;

export const waysOf = (places: readonly ValvePlace[]): Direction[] => [...new Set(places.map(directionOf))];

/** Rising, both ways or one [m/s]. */
export function aimSpeeds(places: readonly ValvePlace[], top_m_s: number): number[] {
  const up = Array.from({ length: POINTS }, (_, i) => top_m_s * ((i + 1) / POINTS) ** CROWDING);
  return waysOf(places)
    .flatMap((way) => up.map((speed) => way * speed))
    .sort((a, b) => a - b);
}

/** Points of the directions in which the stacks work: in the other nothing that may change is at work. */
export const pointsFor = (points: readonly AimPoint[], places: readonly ValvePlace[]): AimPoint[] => {
  const ways = waysOf(places);
  return points.filter(({ shaftSpeed_m_s }) => ways.some((way) => shaftSpeed_m_s * way > 0));
};

/** Force less gas. @returns undefined where a speed did not solve */
export function pointsOfForces({ shaftSpeed_m_s, force_N, gasForce_N }: SpeedForces): AimPoint[] | undefined {
  const points = shaftSpeed_m_s.flatMap((speed, i) => {
    const [force, gas] = [force_N[i], gasForce_N[i]];
    return force === null || gas === null ? [] : [{ shaftSpeed_m_s: speed, force_N: force - gas }];
  });
  return points.length === shaftSpeed_m_s.length ? points : undefined;
}

/** From 0 where nothing is changed to 1 where all of it is. */
function shareOf({ side, speed_m_s }: Change, speed: number): number {
  const [from, to] = [EASE.from * speed_m_s, EASE.to * speed_m_s];
  const above = Math.min(Math.max((Math.abs(speed) - from) / (to - from), 0), 1);
  return side === 'above' ? above : 1 - above;
}

export const changed = (points: readonly AimPoint[], change: Change): AimPoint[] =>
  points.map(({ shaftSpeed_m_s, force_N }) => ({
    shaftSpeed_m_s,
    force_N: force_N * (1 + (change.percent / 100) * shareOf(change, shaftSpeed_m_s)),
  }));

export const aimById = ({ aims = [] }: Project, id: string): Aim | undefined => aims.find((aim) => aim.id === id);
