/** Shape of a measurement. How its lists must relate is in measurement-relations.ts. */
import { ADJUSTER_IDS, type AdjusterId } from './adjuster-ids.ts';
import { listOf, numberIn, record, textUpTo, wholeNumber } from './fields.ts';
import { AMOUNT_SOURCES, MAX_POINTS, MEASUREMENT_KINDS } from './measurement.ts';
import { z } from './zod.ts';

const MAX_MEASUREMENTS = 100;
const MAX_RAW = 100_000_000;

/** What a shaft of a test bench does [m/s]. */
const speed_m_s = numberIn({ from: -100, upTo: 100 });
const force_N = numberIn({ from: -1_000_000, upTo: 1_000_000 });
const points = (item: z.ZodNumber) => listOf(item, MAX_POINTS);

const clicks = Object.fromEntries(ADJUSTER_IDS.map((id) => [id, wholeNumber(0, 1000).optional()])) as Record<
  AdjusterId,
  z.ZodOptional<z.ZodNumber>
>;

const conditionsSchema = record({
  oilTemperature_degC: numberIn({ from: -60, upTo: 250 }).optional(),
  position_mm: numberIn({ from: 0, upTo: 5000 }).optional(),
  clicks: record(clicks).optional(),
  gasGaugePressure_bar: numberIn({ from: 0, upTo: 300 }).optional(),
});

const from = z.literal(AMOUNT_SOURCES, { error: '"typed" or "slowest-points"' });
const stepSchema = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('gas-force'), force_N, from }),
    record({ kind: z.literal('friction'), force_N, from }),
    record({
      kind: z.literal('speed-from-position'),
      window_s: numberIn({ above: 0, upTo: 1000 }),
      peakLoss_percent: numberIn({ from: 0, upTo: 100 }),
      leftOut: wholeNumber(0, MAX_RAW),
    }),
    record({ kind: z.literal('peak-points') }),
    record({ kind: z.literal('thinned'), fromCount: wholeNumber(1, MAX_RAW) }),
  ],
  { error: 'an object of kind "gas-force", "friction", "speed-from-position", "peak-points" or "thinned"' },
);

const measurementSchema = record({
  id: textUpTo(100).min(1, { error: 'a text of at least 1 character' }),
  name: textUpTo(200),
  notes: textUpTo(100_000),
  sourceFile: textUpTo(300),
  kind: z.literal(MEASUREMENT_KINDS, { error: '"force-speed" or "force-position-time"' }),
  conditions: conditionsSchema,
  rawCount: wholeNumber(1, MAX_RAW),
  gasTakenOffByBench: z.boolean({ error: 'true or false' }).optional(),
  steps: listOf(stepSchema, 20),
  points: record({
    speed_m_s: points(speed_m_s).min(1, { error: 'a list of at least 1 point' }),
    force_N: points(force_N),
    position_mm: points(numberIn({ from: -10_000, upTo: 10_000 })).optional(),
    time_s: points(numberIn({ from: -1e9, upTo: 1e9 })).optional(),
  }),
  outliers: listOf(wholeNumber(0, MAX_POINTS - 1), MAX_POINTS),
});

export const measurementsSchema = listOf(measurementSchema, MAX_MEASUREMENTS);
