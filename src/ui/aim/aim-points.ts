/** Moving one point of an aim by hand. */
import type { AimPoint } from '../../model/project.ts';

/** Points of one aim keep at least this much speed between them, and from rest [m/s]. */
const ROOM_M_S = 0.005;

/** Steps by key, plain and with Shift. */
const STEPS = { force_N: [5, 50], speed_m_s: [0.01, 0.1] } as const;

/** What a key does to a point: force up and down, size of the speed left and right. */
export function stepOf(key: string, isLarge: boolean): { force_N: number; speed_m_s: number } | undefined {
  const [force, speed] = [STEPS.force_N[isLarge ? 1 : 0], STEPS.speed_m_s[isLarge ? 1 : 0]];
  const moves: Record<string, readonly [number, number]> = {
    ArrowUp: [force, 0],
    ArrowDown: [-force, 0],
    ArrowRight: [0, speed],
    ArrowLeft: [0, -speed],
  };
  const move = moves[key];
  return move && { force_N: move[0], speed_m_s: move[1] };
}

/** On the board of a chart [px]. */
export interface Place {
  readonly x: number;
  readonly y: number;
}

/** Number of the place nearest to another. @param places at least one */
export function nearestPlace(places: readonly Place[], to: Place): number {
  const far = places.map(({ x, y }) => Math.hypot(x - to.x, y - to.y));
  return far.indexOf(Math.min(...far));
}

/** The points with one moved: it stays on its side of rest and between its neighbours, so that its place in the list holds. */
export function movedPoint(points: readonly AimPoint[], at: number, wanted: AimPoint): AimPoint[] {
  const isCompression = points[at].shaftSpeed_m_s > 0;
  const before = points[at - 1]?.shaftSpeed_m_s ?? Number.NEGATIVE_INFINITY;
  const after = points[at + 1]?.shaftSpeed_m_s ?? Number.POSITIVE_INFINITY;
  const low = Math.max(before, isCompression ? 0 : Number.NEGATIVE_INFINITY) + ROOM_M_S;
  const high = Math.min(after, isCompression ? Number.POSITIVE_INFINITY : 0) - ROOM_M_S;
  // Between neighbours that leave no room the speed stays.
  const speed = low <= high ? Math.min(high, Math.max(low, wanted.shaftSpeed_m_s)) : points[at].shaftSpeed_m_s;
  const moved = {
    ...points[at],
    shaftSpeed_m_s: Number(speed.toFixed(3)),
    force_N: Number(wanted.force_N.toFixed(1)),
  };
  return points.map((point, i) => (i === at ? moved : point));
}
