/** Compression of a gas charge by an entering rod. */
import { z } from '../../model/zod.ts';
import { gasAtStroke } from '../../solver/fluid/gas.ts';
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
