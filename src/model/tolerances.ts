/**
 * How far what is built and filled may lie off what the document says: to both sides, as 95 of 100 keep. A key that is absent has
 * the value of common practice that the solver knows.
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
