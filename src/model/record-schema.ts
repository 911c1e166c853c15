/** Shape of the teardown record. How its entries must relate is in record-relations.ts. */
import { ADJUSTER_IDS } from './adjuster-ids.ts';
import { listOf, numberIn, record, size, textUpTo, wholeNumber } from './fields.ts';
import { FIRST_OFF, RATE_SOURCES, RECORD_STEPS, STEP_STATES, VERDICTS, WEAR_KINDS } from './record.ts';
import { MAX_DIAMETER_MM, MAX_SHIMS } from './stack-schema.ts';
import { z } from './zod.ts';

const MAX_PARTS = 200;
const MAX_LENGTH_MM = 5000;
const MAX_CLICKS = 1000;

const id = textUpTo(100).min(1, { error: 'a text of at least 1 character' });
const name = textUpTo(200);
const words = textUpTo(10_000).optional();
const diameter_mm = size(MAX_DIAMETER_MM).optional();

const oneOf = <const Names extends readonly [string, ...string[]]>(names: Names) =>
  z.enum(names, { error: `one of ${names.map((each) => `"${each}"`).join(', ')}` });

const optionalEach = <const Key extends string, Item extends z.ZodType>(keys: readonly Key[], item: Item) =>
  record(Object.fromEntries(keys.map((key) => [key, item.optional()])) as Record<Key, z.ZodOptional<Item>>);

const springSchema = record({
  id,
  name,
  rate_N_mm: numberIn({ above: 0, upTo: 10_000 }).optional(),
  rateFrom: oneOf(RATE_SOURCES).optional(),
  freeLength_mm: size(MAX_LENGTH_MM).optional(),
  wireDiameter_mm: size(MAX_DIAMETER_MM).optional(),
  notes: words,
});

const wearPartSchema = record({
  id,
  kind: oneOf(WEAR_KINDS),
  name,
  innerDiameter_mm: diameter_mm,
  outerDiameter_mm: diameter_mm,
  width_mm: diameter_mm,
  verdict: oneOf(VERDICTS).optional(),
  notes: words,
});

const torqueSchema = record({ id, name, torque_N_m: numberIn({ from: 0, upTo: 1000 }).optional() });

const shimsOffSchema = record({
  firstOff: oneOf(FIRST_OFF),
  shims: listOf(
    record({
      outerDiameter_mm: size(MAX_DIAMETER_MM),
      thickness_mm: size(20),
      count: wholeNumber(1, MAX_SHIMS).optional(),
    }),
    MAX_SHIMS,
  ),
});

export const recordSchema = record({
  machine: name.optional(),
  date: z.iso.date({ error: 'a day as 2026-11-26' }).optional(),
  recordedBy: name.optional(),
  runTime_h: numberIn({ from: 0, upTo: 1_000_000 }).optional(),
  distance_km: numberIn({ from: 0, upTo: 10_000_000 }).optional(),
  condition: words,
  clicksAsFound: optionalEach(ADJUSTER_IDS, wholeNumber(0, MAX_CLICKS)).optional(),
  oilOut: record({ volume_mL: numberIn({ from: 0, upTo: 100_000 }).optional(), look: words, smell: words }).optional(),
  springs: listOf(springSchema, MAX_PARTS).optional(),
  wearParts: listOf(wearPartSchema, MAX_PARTS).optional(),
  torques: listOf(torqueSchema, MAX_PARTS).optional(),
  shimsOff: optionalEach(['pistonCompression', 'pistonRebound', 'baseCompression'], shimsOffSchema).optional(),
  steps: optionalEach(RECORD_STEPS, record({ state: oneOf(STEP_STATES).optional(), notes: words })).optional(),
});
