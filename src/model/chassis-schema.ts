/** Shape of the chassis. Bounds are limits of physical sense, wide on purpose; relations are in chassis-relations.ts. */
import { listOf, numberIn, record, size, wholeNumber } from './fields.ts';
import { z } from './zod.ts';

const MAX_TABLE = 200;
const MAX_TRAVEL_MM = 2000;
const MAX_FORCE_N = 1_000_000;

const mass = numberIn({ from: 0, upTo: 100_000 });
const shaftPerWheel = numberIn({ from: 0.01, upTo: 10 });
const preload_mm = numberIn({ from: 0, upTo: MAX_TRAVEL_MM });
const twoPoints = { error: 'a list of at least 2 points' };

const motionRatioSchema = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('constant'), shaftPerWheel }),
    record({
      kind: z.literal('table'),
      points: listOf(
        record({ wheelTravel_mm: numberIn({ from: 0, upTo: MAX_TRAVEL_MM }), shaftPerWheel }),
        MAX_TABLE,
      ).min(2, twoPoints),
    }),
  ],
  { error: 'an object of kind "constant" or "table"' },
);

const springSchema = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('coil'), rate_N_mm: numberIn({ above: 0, upTo: 10_000 }), preload_mm }),
    record({
      kind: z.literal('progressive'),
      points: listOf(
        record({
          compression_mm: numberIn({ from: 0, upTo: MAX_TRAVEL_MM }),
          force_N: numberIn({ from: 0, upTo: MAX_FORCE_N }),
        }),
        MAX_TABLE,
      ).min(2, twoPoints),
      preload_mm,
    }),
  ],
  { error: 'an object of kind "coil" or "progressive"' },
);

const airSpringSchema = record({
  pistonDiameter_mm: size(500),
  gaugePressure_bar: numberIn({ from: 0, upTo: 200 }),
  airLength_mm: size(MAX_TRAVEL_MM),
  polytropicExponent: numberIn({ from: 1, upTo: 1.7 }),
});

export const chassisSchema = record({
  vehicleSprungMass_kg: mass.optional(),
  riderSprungMass_kg: mass.optional(),
  unsprungMass_kg: numberIn({ above: 0, upTo: 100_000 }).optional(),
  wheelTravel_mm: size(MAX_TRAVEL_MM).optional(),
  motionRatio: motionRatioSchema.optional(),
  spring: springSchema.optional(),
  airSpring: airSpringSchema.optional(),
  springCount: wholeNumber(1, 8).optional(),
  damperCount: wholeNumber(1, 8).optional(),
  legAngle_deg: numberIn({ from: 0, upTo: 75 }).optional(),
});
