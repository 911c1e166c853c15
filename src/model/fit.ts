/** Coefficients that were fitted to what was measured of a build. They stand beside the physical values and replace none of them. */

export const FIT_COEFFICIENTS = [
  'jetDischarge',
  'sharpEdgeDischarge',
  'longOrificeFactor',
  'portMomentum',
  'bleedAreaFactor',
  'viscosityFactor',
  'frictionFactor',
  'forceOffset_N',
  'compressionSeatShift_m',
  'reboundSeatShift_m',
  'baseSeatShift_m',
] as const;
export type FitCoefficientName = (typeof FIT_COEFFICIENTS)[number];

/** A value with its interval of 95 %, in the unit that its name ends in, or none. */
export interface FittedValue {
  name: FitCoefficientName;
  /** Without a fit. */
  physical: number;
  value: number;
  low: number;
  high: number;
  /** Standard error over what the coefficient was known to before: 1 where the measurements add nothing. */
  leftOpen: number;
}

export interface Fit {
  /** Ids of the measurements of the build that it was fitted to. */
  measurements: string[];
  /** As it was asked for. */
  theory: 'auto' | 'small-deflection' | 'large-deflection' | 'port-periodic';
  coefficients: FittedValue[];
  /** Coefficients that the measurements cannot tell, or not from one another: a list for each such direction. */
  untold: FitCoefficientName[][];
  /** Standard deviation of the measured forces round the fitted ones. */
  scatter_N: number;
  pointCount: number;
}
