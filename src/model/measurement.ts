/** What a test bench measured of a build, as it is kept with it. Signs of the document: speed and force are positive in compression. */
import type { AdjusterId } from './adjuster-ids.ts';

/** `force-speed`: points; `force-position-time`: samples of a stroke over time, with the speed that was derived from them. */
export const MEASUREMENT_KINDS = ['force-speed', 'force-position-time'] as const;
export type MeasurementKind = (typeof MEASUREMENT_KINDS)[number];

/** What was known of the damper while it was measured; what is absent was not written down. */
export interface MeasurementConditions {
  oilTemperature_degC?: number;
  /** Middle of the stroke, from full extension. */
  position_mm?: number;
  /** From closed, by the adjusters that the build then had. */
  clicks?: Partial<Record<AdjusterId, number>>;
  gasGaugePressure_bar?: number;
}

/** One number of each for every point. */
export interface MeasuredPoints {
  speed_m_s: number[];
  force_N: number[];
  position_mm?: number[];
  time_s?: number[];
}

/** How the amount of what was taken off became known. */
export const AMOUNT_SOURCES = ['typed', 'slowest-points'] as const;
export type AmountSource = (typeof AMOUNT_SOURCES)[number];

/**
 * What was done to the numbers of the file, in this order.
 * - `gas-force`, `friction`: taken off, so that the points have none of it.
 * - `speed-from-position`: slope of a local parabola over `window_s`, which takes `peakLoss_percent` off the peak speed of a sine stroke;
 *   `leftOut` samples at both ends of the run have no whole window.
 * - `peak-points`: of every half cycle only the sample of greatest speed was kept.
 * - `thinned`: of many samples every one that stands for its neighbours was kept.
 */
export type MeasurementStep =
  | { kind: 'gas-force'; force_N: number; from: AmountSource }
  | { kind: 'friction'; force_N: number; from: AmountSource }
  | { kind: 'speed-from-position'; window_s: number; peakLoss_percent: number; leftOut: number }
  | { kind: 'peak-points' }
  | { kind: 'thinned'; fromCount: number };

export interface Measurement {
  id: string;
  name: string;
  notes: string;
  /** Name of the file that it was read from. */
  sourceFile: string;
  kind: MeasurementKind;
  conditions: MeasurementConditions;
  /** Rows of numbers in the file. */
  rawCount: number;
  /** Whether the bench had taken the force of the gas off before it wrote the file. */
  gasTakenOffByBench?: boolean;
  steps: MeasurementStep[];
  points: MeasuredPoints;
  /** Places in the lists of points that lie off what their neighbours say: kept, shown, and left out of a fit. */
  outliers: number[];
}

/** Most points that one measurement keeps. */
export const MAX_POINTS = 2000;

/** What tells what is in a measured force. */
export type MeasuredForce = Pick<Measurement, 'steps' | 'gasTakenOffByBench'>;

/** Whether the force of the gas is still in the points. */
export const hasGasForce = ({ steps, gasTakenOffByBench }: MeasuredForce): boolean =>
  gasTakenOffByBench !== true && !steps.some(({ kind }) => kind === 'gas-force');

/** Whether friction is still in the points. */
export const hasFriction = ({ steps }: Pick<Measurement, 'steps'>): boolean =>
  !steps.some(({ kind }) => kind === 'friction');
