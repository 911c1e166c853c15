/**
 * Samples of a valve along the mean pressure on its pressure zone, as far as flow and drop rise with it.
 * They rise wherever the opening does and the ports lose more than their jets give back (stack-path.ts); the opening is a monotone
 * cubic between the points of its table, so it can fall only from one of these to the next, and the samples see that.
 *
 * symbol  unit  meaning
 * P, p    Pa    mean pressure on the pressure zone
 */
import type { OpeningTable } from './opening-table.ts';

export interface RisingPart {
  /** Mean pressures on the zone, flows and drops over the valve there [Pa, m3/s, Pa]. */
  readonly pressure: readonly number[];
  readonly flow: readonly number[];
  readonly drop: readonly number[];
  /** Why the samples end before the table does; the pressure of the last good one, and that of the first that is none [Pa]. */
  readonly cut?: { readonly reason: 'falls' | 'no-number'; readonly pressure_Pa: number; readonly beyond_Pa: number };
}

/** Samples put between two points of the table. */
const BETWEEN = 2;
/** Points that lie nearer to the next one than this share do not count. */
const NEAREST = 1e-6;
/** Below the first point above 0 flow goes with the root of the pressure: there pressures go down by this factor, this often. */
const NEAR_REST_FACTOR = 8;
const NEAR_REST_COUNT = 4;

/** Pressures from rest to the end of the table, denser than its points. */
export function samplePressures({ table: { pressure_Pa }, crackingPressure_Pa }: OpeningTable): number[] {
  const top = pressure_Pa.at(-1);
  if (top === undefined) return [];
  const cracking = crackingPressure_Pa < top ? [crackingPressure_Pa] : [];
  const knots = apart([0, ...pressure_Pa, ...cracking].sort((p, q) => p - q));
  const between = knots.slice(2).flatMap((high, i) => inside(knots[i + 1], high));
  const nearRest = Array.from(
    { length: knots.length > 1 ? NEAR_REST_COUNT : 0 },
    (_, i) => knots[1] / NEAR_REST_FACTOR ** (i + 1),
  );
  return [...knots, ...between, ...nearRest].sort((p, q) => p - q);
}

/** The search for the cracking pressure leaves points so near to each other that only rounding tells their flows apart. */
const apart = (sorted: readonly number[]): number[] =>
  sorted.filter((p, i) => (p === 0 ? i === 0 : !(sorted[i + 1] - p <= NEAREST * p)));

const inside = (low: number, high: number): number[] =>
  Array.from({ length: BETWEEN }, (_, i) => low + ((high - low) * (i + 1)) / (BETWEEN + 1));

/** @param at  flow and drop at a mean pressure on the zone, NaN where a path does not solve */
export function risingPart(
  pressures_Pa: readonly number[],
  at: (P: number) => { flow: number; drop: number },
): RisingPart {
  const points = pressures_Pa.map(at);
  const end = points.findIndex((point, i) => !follows(point, points[i - 1]));
  const good = end < 0 ? points.length : end;
  const part = {
    pressure: pressures_Pa.slice(0, good),
    flow: points.slice(0, good).map(({ flow }) => flow),
    drop: points.slice(0, good).map(({ drop }) => drop),
  };
  if (end < 0) return part;
  const isNumber = Number.isFinite(points[end].flow) && Number.isFinite(points[end].drop);
  const reason = isNumber ? 'falls' : 'no-number';
  return { ...part, cut: { reason, pressure_Pa: part.pressure.at(-1) ?? 0, beyond_Pa: pressures_Pa[end] } };
}

/** The drop rises strictly; so does the flow, once there is one. */
function follows(point: { flow: number; drop: number }, before: { flow: number; drop: number } | undefined): boolean {
  if (!before) return Number.isFinite(point.flow) && Number.isFinite(point.drop);
  return point.drop > before.drop && (point.flow > before.flow || (point.flow === 0 && before.flow === 0));
}
