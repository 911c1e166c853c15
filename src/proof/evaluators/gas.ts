/** Compression of a gas charge by an entering rod; air spring of a fork leg. */
import { z } from '../../model/zod.ts';
import { airGapVolume } from '../../solver/fluid/air-gap.ts';
import { gasAtStroke, gasForce } from '../../solver/fluid/gas.ts';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { evaluated, evaluateRows, evaluator } from '../evaluator.ts';

const schema = z.strictObject({
  absolutePressure_MPa: z.number(),
  rows: z.array(z.strictObject({ label: z.string(), volumeRatio: z.number(), polytropicExponent: z.number() })),
});

/** `pressure` [MPa, absolute] of each row, after the rod has lowered the volume by the ratio. */
export const gasCompression = evaluator(schema, ({ absolutePressure_MPa, rows }) =>
  evaluateRows(rows, ({ volumeRatio, polytropicExponent }) => {
    const volume_m3 = 1e-4;
    const rodArea_m2 = 2e-4;
    const stroke_m = (volume_m3 * (1 - 1 / volumeRatio)) / rodArea_m2;
    const charge = { absolutePressure_Pa: absolutePressure_MPa * 1e6, volume_m3, polytropicExponent };
    return evaluated({ pressure: gasAtStroke(charge, rodArea_m2, stroke_m).absolutePressure_Pa / 1e6 });
  }),
);

const airGapSchema = z.strictObject({
  tubeDiameter_mm: z.number(),
  level_mm: z.number(),
  insertedVolume_mL: z.number(),
  travel_mm: z.number(),
  rows: z.array(z.strictObject({ label: z.string(), polytropicExponent: z.number(), stroke_mm: z.number() })),
});

/** `force` [N] of the air in a leg as wide as its tube, closed at full extension under the atmosphere, after each stroke. */
export const airGapForce = evaluator(
  airGapSchema,
  ({ tubeDiameter_mm, level_mm, insertedVolume_mL, travel_mm, rows }) => {
    const tubeDiameter_m = tubeDiameter_mm / 1000;
    const area_m2 = (Math.PI / 4) * tubeDiameter_m ** 2;
    const gap = { tubeDiameter_m, level_m: level_mm / 1000, insertedVolume_m3: insertedVolume_mL / 1e6 };
    const volume_m3 = airGapVolume(gap, area_m2, travel_mm / 1000);
    return evaluateRows(rows, ({ polytropicExponent, stroke_mm }) => {
      const charge = { absolutePressure_Pa: STANDARD_ATMOSPHERE_PA, volume_m3, polytropicExponent };
      return evaluated({ force: gasForce(gasAtStroke(charge, area_m2, stroke_mm / 1000), area_m2) });
    });
  },
);
