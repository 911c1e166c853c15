/** Shape of the gas: pressure, volume or air gap, and what keeps it apart from the oil. */
import { numberIn, record, size } from './fields.ts';
import { MAX_DIAMETER_MM } from './stack-schema.ts';
import { z } from './zod.ts';

const MAX_VOLUME_ML = 100_000;

const airGapSchema = record({
  level_mm: size(5000),
  tubeDiameter_mm: size(MAX_DIAMETER_MM),
  insertedVolume_mL: numberIn({ from: 0, upTo: MAX_VOLUME_ML }),
});

const oilFillSchema = record({
  oilVolume_mL: numberIn({ above: 0, upTo: MAX_VOLUME_ML }),
  legVolume_mL: numberIn({ above: 0, upTo: MAX_VOLUME_ML }),
  insertedVolume_mL: numberIn({ from: 0, upTo: MAX_VOLUME_ML }),
});

const separatorSchema = z.discriminatedUnion(
  'kind',
  [
    record({
      kind: z.literal('floating-piston'),
      diameter_mm: size(MAX_DIAMETER_MM),
      friction_N: numberIn({ from: 0, upTo: 10_000 }),
    }),
    record({ kind: z.literal('bladder') }),
  ],
  { error: 'an object of kind "floating-piston" or "bladder"' },
);

/** Volume, air gap and oil poured in exclude one another: gas-relations.ts. */
export const gasSchema = record({
  gaugePressure_bar: numberIn({ from: 0, upTo: 300 }),
  volume_mL: numberIn({ above: 0, upTo: MAX_VOLUME_ML }).optional(),
  airGap: airGapSchema.optional(),
  oilFill: oilFillSchema.optional(),
  polytropicExponent: numberIn({ from: 1, upTo: 2 }),
  separator: separatorSchema.optional(),
});
