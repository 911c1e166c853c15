/** Shape of the tolerances: none is above what would be another part. */
import { numberIn, record } from './fields.ts';

const length_mm = numberIn({ from: 0, upTo: 5 });

export const tolerancesSchema = record({
  thickness_mm: length_mm.optional(),
  shimDiameter_mm: length_mm.optional(),
  clampDiameter_mm: length_mm.optional(),
  seatHeight_mm: length_mm.optional(),
  portEdgeDiameter_mm: length_mm.optional(),
  portDiameter_mm: length_mm.optional(),
  bleedDiameter_mm: length_mm.optional(),
  viscosity_percent: numberIn({ from: 0, upTo: 100 }).optional(),
  oilTemperatureDifference_K: numberIn({ from: 0, upTo: 100 }).optional(),
  gasPressure_bar: numberIn({ from: 0, upTo: 100 }).optional(),
});
