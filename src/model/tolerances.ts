/**
 * How far what is built and filled may lie off what the document says: to both sides, as 95 of 100 keep. A key that is absent has
 * the value of common practice.
 */
export interface Tolerances {
  /** Of every shim by itself. */
  thickness_mm?: number;
  /** Outer, of the shims of one size. */
  shimDiameter_mm?: number;
  /** Of the edge that clamps a stack. */
  clampDiameter_mm?: number;
  seatHeight_mm?: number;
  /** Of the edge at which the ports end under the face shim. */
  portEdgeDiameter_mm?: number;
  portDiameter_mm?: number;
  bleedDiameter_mm?: number;
  viscosity_percent?: number;
  oilTemperatureDifference_K?: number;
  gasPressure_bar?: number;
}

/**
 * Common practice in a careful workshop and no standard; rolling standards for precision strip grade thickness by thickness and width,
 * at several micrometres for such strip (all from memory). A person replaces them by what they measured.
 */
export const COMMON_TOLERANCES: Readonly<Required<Tolerances>> = {
  thickness_mm: 0.005,
  shimDiameter_mm: 0.05,
  clampDiameter_mm: 0.1,
  seatHeight_mm: 0.01,
  portEdgeDiameter_mm: 0.05,
  portDiameter_mm: 0.05,
  bleedDiameter_mm: 0.02,
  viscosity_percent: 5,
  oilTemperatureDifference_K: 5,
  gasPressure_bar: 0.1,
};
