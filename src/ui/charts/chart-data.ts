/** What each chart shows, as plain lists of numbers in SI: taken from the solver's points. */
import type { Direction } from '../app/places.ts';
import type { FailedForce, ForceCurve, ForcePoint, StackPlace } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { stackAtWork } from '../section/stack-at-work.ts';
import { type Comparison, comparedWith } from './difference.ts';
import { PATHS, type PathName, sharesOf, type ValveName, valveFlows } from './path-shares.ts';
import { type ShimPart, type ShimQuantity, type ShimSeries, shimSeries } from './shim-series.ts';
import { shownForce } from './shown-force.ts';

export type ChartName = 'force' | 'paths' | 'pressures' | 'opening' | 'shims';

export interface Series {
  readonly buildId: string;
  /** Which of the lines of one build. */
  readonly part: 'compression' | 'rebound' | 'compressionChamber' | 'reboundChamber' | PathName | 'only' | ShimPart;
  /** Shaft speeds, all >= 0 [m/s]. */
  readonly speeds_m_s: readonly number[];
  /** null where a speed did not solve: the line has a gap there. */
  readonly values: readonly (number | null)[];
  /** Round the circle, where the line is the mean of a lift that waves. */
  readonly range?: ShimSeries['range'];
}

/** What a chart shows beside the speeds. */
export interface Shown {
  readonly direction: Direction;
  readonly stack: StackPlace;
  /** What of the shims of the stack. */
  readonly shimQuantity: ShimQuantity;
  /** Whose paths. */
  readonly valve: ValveName;
  /** Takes the force of the gas off the force at the shaft. */
  readonly withoutGas: boolean;
  /** Measures the force from that of the baseline. */
  readonly comparison?: Comparison;
}

type Points = readonly (ForcePoint | FailedForce)[];
type Read = (point: ForcePoint) => number | undefined;

function series(buildId: string, part: Series['part'], points: Points, read: Read): Series {
  return {
    buildId,
    part,
    speeds_m_s: points.map((point) => Math.abs(point.shaftSpeed_m_s)),
    values: points.map((point) => (isSolved(point) ? (read(point) ?? null) : null)),
  };
}

/** One line for each path that oil takes at any of the speeds. */
function pathSeries(buildId: string, points: Points, valve: ValveName): Series[] {
  const shares = points.map((point) => (isSolved(point) ? sharesOf(valveFlows(point, valve)) : undefined));
  const taken = PATHS.filter((path) => shares.some((share) => (share?.[path] ?? 0) > 0));
  return taken.map((path) => ({
    buildId,
    part: path,
    speeds_m_s: points.map((point) => Math.abs(point.shaftSpeed_m_s)),
    values: shares.map((share) => (share ? (share[path] ?? 0) : null)),
  }));
}

/** Both directions at once. */
function forceSeries(buildId: string, curve: ForceCurve, { withoutGas, comparison }: Shown): Series[] {
  const read = (direction: Direction): Read =>
    comparison ? comparedWith(comparison, direction, withoutGas) : (point) => shownForce(point, withoutGas);
  return [
    series(buildId, 'compression', pointsOf(curve, 1), read(1)),
    series(buildId, 'rebound', pointsOf(curve, -1), read(-1)),
  ];
}

/** The lines of one build on one chart; only the force chart shows both directions at once. */
export function seriesOf(chart: ChartName, buildId: string, curve: ForceCurve, shown: Shown): Series[] {
  const points = pointsOf(curve, shown.direction);
  switch (chart) {
    case 'force':
      return forceSeries(buildId, curve, shown);
    case 'paths':
      return pathSeries(buildId, points, shown.valve);
    case 'pressures':
      return [
        series(buildId, 'compressionChamber', points, (p) => p.compressionPressure_Pa),
        series(buildId, 'reboundChamber', points, (p) => p.reboundPressure_Pa),
      ];
    case 'opening':
      return [series(buildId, 'only', points, (p) => stackAtWork(p, shown.stack)?.seatOpening_m)];
    case 'shims':
      return shimSeries(buildId, curve, shown);
  }
}

/** A little room over and under the numbers, and always the zero line. */
export function rangeOf(values: readonly (number | null)[]): [number, number] {
  const known = values.filter((value): value is number => value !== null);
  // Not spread into arguments: the loop of a long trace has more moments than a call takes.
  const low = known.reduce((least, value) => Math.min(least, value), 0);
  const high = known.reduce((most, value) => Math.max(most, value), 0);
  if (low === high) return [0, 1];
  const room = (high - low) * 0.1;
  return [low < 0 ? low - room : 0, high > 0 ? high + room : 0];
}

/** Speeds of one direction that did not solve, with the reasons. */
export const failedOf = (curve: ForceCurve): FailedForce[] =>
  curve.points.filter((point): point is FailedForce => !isSolved(point));

function firstSpeed(curve: ForceCurve, direction: Direction, holds: (p: ForcePoint) => boolean): number | undefined {
  const first = pointsOf(curve, direction).find((point) => isSolved(point) && holds(point));
  return first && Math.abs(first.shaftSpeed_m_s);
}

/** The lowest speed at which the rim of a stack ruffles into waves, beyond what the theory is proven for. */
export function wavesFrom(curve: ForceCurve, stack: StackPlace): number | undefined {
  const waves = curve.stacks[stack]?.waves;
  if (waves?.status !== 'found') return undefined;
  return firstSpeed(curve, stack === 'rebound' ? -1 : 1, (point) => {
    const pressure_Pa = stackAtWork(point, stack)?.shimPressure_Pa;
    return pressure_Pa !== undefined && pressure_Pa >= waves.pressure_Pa;
  });
}

/** The lowest speed of a direction at which a chamber falls to the air-release pressure. */
export const airReleaseFrom = (curve: ForceCurve, direction: Direction): number | undefined =>
  firstSpeed(curve, direction, (point) => point.airRelease);

/** The lowest speed of a direction from which one chamber is held at the air-release pressure. */
export const heldFrom = (
  curve: ForceCurve,
  direction: Direction,
  chamber: 'compression' | 'rebound',
): number | undefined => firstSpeed(curve, direction, (point) => (point.voids_m3_s?.[chamber] ?? 0) > 0);

/** The lowest speed of a direction from which a path of the piston or of the base valve cavitates. */
export const cavitatesFrom = (curve: ForceCurve, direction: Direction, valve: ValveName): number | undefined =>
  firstSpeed(curve, direction, ({ cavitating, base }) => {
    const paths = valve === 'piston' ? cavitating : base?.cavitating;
    return paths !== undefined && paths.length > 0;
  });
