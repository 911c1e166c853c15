/** Measured points beside the curve of their build: how far they lie off it, and where they stand on the chart. */
import { type Residual, residualsOf } from '../../measured/residuals.ts';
import { hasFriction, hasGasForce, type Measurement } from '../../model/measurement.ts';
import type { ForceCurve, ForcePoint } from '../app/solved.ts';
import { isSolved } from '../section/shape-at.ts';

/** The solved points of a curve, rising in speed. */
export const modelOf = (curve: ForceCurve): ForcePoint[] =>
  curve.points.filter(isSolved).sort((a, b) => a.shaftSpeed_m_s - b.shaftSpeed_m_s);

/** Points on a curve that crosses its zero without one there have no neighbour on the other side. */
export const residualsOn = (measurement: Measurement, curve: ForceCurve): Residual[] =>
  residualsOf(measurement, modelOf(curve));

export interface DrawnPoint {
  /** Without sign, as the chart has it [m/s]. */
  readonly speed_m_s: number;
  readonly force_N: number;
  readonly isOutlier: boolean;
}

/**
 * Where the points stand on the force chart: what was taken off a measurement comes back from the build where the chart shows it, and
 * gas that is in it goes where the chart leaves it out. The residual of a point is then its distance from the line.
 */
export function drawnPoints(measurement: Measurement, curve: ForceCurve, withoutGas: boolean): DrawnPoint[] {
  const wrong = new Set(measurement.outliers);
  const model = modelOf(curve);
  const gas_N = model[0]?.gasForce_N ?? 0;
  const [gas, friction] = [hasGasForce(measurement), hasFriction(measurement)];
  const frictionAt = (speed: number): number => nearest(model, speed)?.frictionForce_N ?? 0;
  return measurement.points.speed_m_s.map((speed, i) => ({
    speed_m_s: Math.abs(speed),
    force_N:
      measurement.points.force_N[i] + (gas ? 0 : gas_N) - (withoutGas ? gas_N : 0) + (friction ? 0 : frictionAt(speed)),
    isOutlier: wrong.has(i),
  }));
}

/** Friction changes its sign at rest and little elsewhere: that of the nearest speed of the same direction stands for it. */
function nearest(model: readonly ForcePoint[], speed: number): ForcePoint | undefined {
  const same = model.filter(({ shaftSpeed_m_s }) => Math.sign(shaftSpeed_m_s) === Math.sign(speed));
  const distance = (point: ForcePoint): number => Math.abs(point.shaftSpeed_m_s - speed);
  return same.reduce<ForcePoint | undefined>(
    (best, point) => (!best || distance(point) < distance(best) ? point : best),
    undefined,
  );
}
