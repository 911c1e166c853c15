/** An aim as a change of a build: its force with parts of it made firmer or softer. */
import type { AimPoint, ForceChange } from '../../model/project.ts';
import { valueAt } from './value-at.ts';

/** Beyond its bound a change fades out over this share of the bounding speed: a step in force is no aim for a valve. */
const FADE = 0.2;

/** How much of a change acts at a speed: 1 in its range, falling to 0 beyond it. */
export function shareOf({ range, speed_m_s, direction }: ForceChange, shaftSpeed_m_s: number): number {
  const isWay = direction === 'both' || (direction === 'compression') === shaftSpeed_m_s > 0;
  if (!isWay) return 0;
  if (range === 'all') return 1;
  const beyond = (range === 'above' ? -1 : 1) * (Math.abs(shaftSpeed_m_s) / speed_m_s - 1);
  return Math.min(1, Math.max(0, 1 - beyond / FADE));
}

/** Several changes act one on the other, in any order. */
export const factorOf = (changes: readonly ForceChange[], shaftSpeed_m_s: number): number =>
  changes.reduce((all, each) => all * (1 + (each.change_percent / 100) * shareOf(each, shaftSpeed_m_s)), 1);

/** Speeds of the points of an aim, as shares of the top speed: closer at low speed, where a curve bends most. */
const SHARES = [0.025, 0.05, 0.1, 0.175, 0.25, 0.375, 0.5, 0.75, 1];

/** Two speeds nearer than this share of the larger one are one. */
const SAME = 0.02;

/** Both directions, rising; the speeds asked for are among them. */
export function aimSpeeds(top_m_s: number, also_m_s: readonly number[] = []): number[] {
  const asked = [...new Set(also_m_s.filter((speed) => speed > 0 && speed <= top_m_s))];
  const isNearAsked = (speed: number): boolean => asked.some((each) => Math.abs(each - speed) < SAME * each);
  const spread = SHARES.map((share) => share * top_m_s).filter((speed) => !isNearAsked(speed));
  const speeds = [...asked, ...spread].map((speed) => Number(speed.toFixed(4))).sort((a, b) => a - b);
  return [...speeds.map((speed) => -speed).reverse(), ...speeds];
}

/** Where a change begins and where it has faded out. */
export const boundsOf = (changes: readonly ForceChange[]): number[] =>
  changes.flatMap(({ range, speed_m_s }) =>
    range === 'all' ? [] : [speed_m_s, speed_m_s * (range === 'above' ? 1 - FADE : 1 + FADE)],
  );

/** A force curve without gas, both directions, rising in speed. */
export interface ShaftCurve {
  readonly shaftSpeed_m_s: readonly number[];
  readonly force_N: readonly (number | null)[];
}

/** Speeds that the curve does not reach, or that did not solve, are left out. */
export function pointsOn(curve: ShaftCurve, speeds: readonly number[], changes: readonly ForceChange[]): AimPoint[] {
  return speeds.flatMap((speed) => {
    const way = curve.shaftSpeed_m_s.flatMap((at, i): [number, number | null][] =>
      at * speed > 0 ? [[Math.abs(at), curve.force_N[i]]] : [],
    );
    way.sort(([a], [b]) => a - b);
    const force = valueAt(way, Math.abs(speed));
    if (force === undefined) return [];
    return [{ shaftSpeed_m_s: speed, force_N: Number((force * factorOf(changes, speed)).toFixed(1)) }];
  });
}
