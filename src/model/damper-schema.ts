/** Shape of the damper that the builds share. */
import { numberIn, record, size, textUpTo } from './fields.ts';
import { ASSUMED_PARTS, LAYOUTS } from './project.ts';
import { MAX_DIAMETER_MM } from './stack-schema.ts';
import { byPlace, refillCheckSchema, valveBodySchema } from './valve-schema.ts';
import { z } from './zod.ts';

const force_N = numberIn({ from: 0, upTo: 100_000 });
const MAX_TRAVEL_MM = 5000;

const frictionLawSchema = record({
  breakaway_N: force_N,
  stribeckSpeed_m_s: numberIn({ from: 1e-6, upTo: 10 }),
  viscous_N_s_m: numberIn({ from: 0, upTo: 100_000 }),
});

const pistonBandSchema = record({
  clearance_mm: size(10),
  length_mm: size(500),
  eccentricity: numberIn({ from: 0, upTo: 1 }),
});

const ENDS = ['compression', 'rebound'] as const;
const hydraulicStopSchema = record({
  end: z.literal(ENDS, { error: '"compression" or "rebound"' }),
  length_mm: size(MAX_TRAVEL_MM),
  plungerDiameter_mm: size(MAX_DIAMETER_MM),
  clearance_mm: size(10),
});

export const damperSchema = record({
  name: textUpTo(200),
  layout: z.literal(LAYOUTS, { error: `one of the layouts ${LAYOUTS.map((layout) => `"${layout}"`).join(', ')}` }),
  boreDiameter_mm: size(MAX_DIAMETER_MM),
  rodDiameter_mm: size(MAX_DIAMETER_MM),
  travel_mm: size(MAX_TRAVEL_MM),
  sealFriction_N: force_N,
  frictionLaw: frictionLawSchema.optional(),
  pistonBand: pistonBandSchema.optional(),
  valves: byPlace(valveBodySchema),
  refillCheck: refillCheckSchema.optional(),
  hydraulicStop: hydraulicStopSchema.optional(),
  legDiameter_mm: size(MAX_DIAMETER_MM).optional(),
  endClearance_mm: numberIn({ from: 0.1, upTo: 1000 }).optional(),
  heatedMass_kg: numberIn({ from: 0, upTo: 1000 }).optional(),
  assumedParts: z
    .array(z.literal(ASSUMED_PARTS, { error: `one of ${ASSUMED_PARTS.map((part) => `"${part}"`).join(', ')}` }))
    .max(ASSUMED_PARTS.length)
    .optional(),
});
