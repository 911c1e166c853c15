/**
 * What was measured less what a build does, point by point. The build's force is brought to what the measurement has in it: without
 * the gas where that was taken off, without friction likewise.
 */
import { hasFriction, hasGasForce, type MeasuredForce, type Measurement } from '../model/measurement.ts';

/** A build at one shaft speed. */
export interface ModelPoint {
  readonly shaftSpeed_m_s: number;
  readonly force_N: number;
  readonly gasForce_N: number;
  readonly frictionForce_N: number;
}

export interface Residual {
  readonly speed_m_s: number;
  readonly measured_N: number;
  /** The build at that speed, with what the measurement has in it. */
  readonly build_N: number;
  /** measured - build. */
  readonly residual_N: number;
  readonly isOutlier: boolean;
}

export interface Scatter {
  /** Points that count: within the speeds of the build, no outliers. */
  readonly count: number;
  /** Root of the mean square of the residuals, and the same over that of the build's force. */
  readonly rms_N: number;
  readonly rms_share: number;
  /** Mean of the residuals: above 0 where the damper is stronger in compression than the build says. */
  readonly mean_N: number;
}

const alike = ({ force_N, gasForce_N, frictionForce_N }: ModelPoint, contents: MeasuredForce): number =>
  force_N - (hasGasForce(contents) ? 0 : gasForce_N) - (hasFriction(contents) ? 0 : frictionForce_N);

/** Straight between two speeds that were solved; undefined beyond them. @param curve  rising speeds */
function at(curve: readonly ModelPoint[], speed_m_s: number, contents: MeasuredForce): number | undefined {
  const after = curve.findIndex((point) => point.shaftSpeed_m_s >= speed_m_s);
  if (after < 0) return undefined;
  const high = curve[after];
  if (high.shaftSpeed_m_s === speed_m_s) return alike(high, contents);
  if (after === 0) return undefined;
  const low = curve[after - 1];
  const share = (speed_m_s - low.shaftSpeed_m_s) / (high.shaftSpeed_m_s - low.shaftSpeed_m_s);
  return alike(low, contents) + share * (alike(high, contents) - alike(low, contents));
}

/** One entry for every point within the speeds of the curve, in the order of the measurement. @param curve  rising speeds, solved */
export function residualsOf(measurement: Measurement, curve: readonly ModelPoint[]): Residual[] {
  const wrong = new Set(measurement.outliers);
  return measurement.points.speed_m_s.flatMap((speed_m_s, i) => {
    const build_N = at(curve, speed_m_s, measurement);
    if (build_N === undefined) return [];
    const measured_N = measurement.points.force_N[i];
    return [{ speed_m_s, measured_N, build_N, residual_N: measured_N - build_N, isOutlier: wrong.has(i) }];
  });
}

export interface ResidualAt {
  /** The build at the speed, with what the measurement has in it. */
  readonly build_N: number;
  readonly residual_N: number;
}

const meanOf = (residuals: readonly Residual[]): number =>
  residuals.reduce((sum, { residual_N }) => sum + residual_N, 0) / residuals.length;

/** Points this share of a speed away from it are of that speed: samples of both halves of a stroke count as one mean. */
const NEAR = 0.02;

/**
 * How far a build lies off its measurement at a speed that need not have been measured: the mean of the points of that speed, else
 * straight between the residuals of the next slower and the next faster points of that direction. Outliers do not count.
 * @param curve  rising speeds, solved     @returns undefined beyond what was measured in that direction, and at rest
 */
export function residualAt(
  measurement: Measurement,
  curve: readonly ModelPoint[],
  speed_m_s: number,
): ResidualAt | undefined {
  const build_N = at(curve, speed_m_s, measurement);
  if (build_N === undefined) return undefined;
  const sound = residualsOf(measurement, curve).filter((each) => !each.isOutlier && each.speed_m_s * speed_m_s > 0);
  const near = sound.filter((each) => Math.abs(each.speed_m_s - speed_m_s) <= NEAR * Math.abs(speed_m_s));
  if (near.length > 0) return { build_N, residual_N: meanOf(near) };
  const [wanted, speeds] = [Math.abs(speed_m_s), sound.map((each) => Math.abs(each.speed_m_s))];
  const low = Math.max(...speeds.filter((speed) => speed < wanted));
  const high = Math.min(...speeds.filter((speed) => speed > wanted));
  if (!Number.isFinite(low) || !Number.isFinite(high)) return undefined;
  const [slower, faster] = [low, high].map((speed) => meanOf(sound.filter((_, i) => speeds[i] === speed)));
  return { build_N, residual_N: slower + ((wanted - low) / (high - low)) * (faster - slower) };
}

/** Of one direction, 1 compression or -1 rebound; undefined where it has no point that counts. */
export function scatterOf(residuals: readonly Residual[], direction: 1 | -1): Scatter | undefined {
  const counted = residuals.filter((each) => !each.isOutlier && each.speed_m_s * direction > 0);
  if (counted.length === 0) return undefined;
  const rms = (values: readonly number[]): number => Math.hypot(...values) / Math.sqrt(values.length);
  const rms_N = rms(counted.map(({ residual_N }) => residual_N));
  const build_N = rms(counted.map((each) => each.build_N));
  const mean_N = counted.reduce((sum, { residual_N }) => sum + residual_N, 0) / counted.length;
  return { count: counted.length, rms_N, rms_share: build_N > 0 ? rms_N / build_N : 0, mean_N };
}
