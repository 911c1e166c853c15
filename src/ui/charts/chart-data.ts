/** What each chart shows, as plain lists of numbers in SI: taken from the solver's points, nothing worked out here. */
import type { FailedForce, ForceCurve, ForcePoint } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';

export type ChartName = 'force' | 'paths' | 'pressures' | 'opening';

export interface Series {
  readonly buildId: string;
  /** Which of the lines of one build. */
  readonly part: 'compression' | 'rebound' | 'compressionChamber' | 'reboundChamber' | 'only';
  /** Shaft speeds, all >= 0 [m/s]. */
  readonly speeds_m_s: readonly number[];
  /** null where a speed did not solve: the line has a gap there. */
  readonly values: readonly (number | null)[];
}

type Read = (point: ForcePoint) => number;

function series(
  buildId: string,
  part: Series['part'],
  points: readonly (ForcePoint | FailedForce)[],
  read: Read,
): Series {
  return {
    buildId,
    part,
    speeds_m_s: points.map((point) => Math.abs(point.shaftSpeed_m_s)),
    values: points.map((point) => (isSolved(point) ? read(point) : null)),
  };
}

/** Of all oil that passes the piston, by whatever path. */
export function bleedShare({ flows }: ForcePoint): number {
  const whole = Object.values(flows).reduce((sum: number, flow: number) => sum + Math.abs(flow), 0);
  return whole === 0 ? 0 : Math.abs(flows.bleed_m3_s) / whole;
}

/** The lines of one build on one chart; only the force chart shows both directions at once. */
export function seriesOf(chart: ChartName, buildId: string, curve: ForceCurve, direction: 1 | -1): Series[] {
  const points = pointsOf(curve, direction);
  switch (chart) {
    case 'force':
      return [
        series(buildId, 'compression', pointsOf(curve, 1), (p) => p.force_N),
        series(buildId, 'rebound', pointsOf(curve, -1), (p) => p.force_N),
      ];
    case 'paths':
      return [series(buildId, 'only', points, bleedShare)];
    case 'pressures':
      return [
        series(buildId, 'compressionChamber', points, (p) => p.compressionPressure_Pa),
        series(buildId, 'reboundChamber', points, (p) => p.reboundPressure_Pa),
      ];
    case 'opening':
      return [series(buildId, 'only', points, (p) => p.seatOpening_m)];
  }
}

/** A little room over and under the numbers, and always the zero line. */
export function rangeOf(values: readonly (number | null)[]): [number, number] {
  const known = values.filter((value): value is number => value !== null);
  const low = Math.min(0, ...known);
  const high = Math.max(0, ...known);
  if (low === high) return [0, 1];
  const room = (high - low) * 0.1;
  return [low < 0 ? low - room : 0, high > 0 ? high + room : 0];
}

/** Speeds of one direction that did not solve, with the reasons. */
export const failedOf = (curve: ForceCurve): FailedForce[] =>
  curve.points.filter((point): point is FailedForce => !isSolved(point));

/** The lowest speed of a direction at which the rim ruffles into waves, beyond what the theory is proven for. */
export function wavesFrom(curve: ForceCurve, direction: 1 | -1): number | undefined {
  const { waves } = direction === 1 ? curve.stacks.compression : curve.stacks.rebound;
  if (waves?.status !== 'found') return undefined;
  const first = pointsOf(curve, direction).find(
    (point) => isSolved(point) && point.shimPressure_Pa >= waves.pressure_Pa,
  );
  return first && Math.abs(first.shaftSpeed_m_s);
}

/** The lowest speed of a direction at which a chamber falls to the air-release pressure. */
export function airReleaseFrom(curve: ForceCurve, direction: 1 | -1): number | undefined {
  const first = pointsOf(curve, direction).find((point) => isSolved(point) && point.airRelease);
  return first && Math.abs(first.shaftSpeed_m_s);
}
