/**
 * Shape of the project document. Bounds are limits of physical sense, wide on purpose; how the sizes must relate to one
 * another is in project-relations.ts.
 */

import { listOf, numberIn, record, size, textUpTo, wholeNumber } from './fields.ts';
import { ISO_GRADES } from './project.ts';
import {
  MAX_DIAMETER_MM,
  materialSchema,
  ringSchema,
  seatHeightSchema,
  shimRowsSchema,
  springShapes,
} from './stack-schema.ts';
import { z } from './zod.ts';

export const PROJECT_FORMAT = 'shimwright/project';
export const PROJECT_VERSION = 1;

const name = textUpTo(200);
const notes = textUpTo(100_000);
/** What oil may have [°C]. */
export const OIL_TEMPERATURES = { from: -60, upTo: 250 } as const;

const temperature_degC = numberIn(OIL_TEMPERATURES);
const kinematicViscosity_cSt = numberIn({ from: 0.5, upTo: 100_000 });

const valvingSchema = record({
  clampDiameter_mm: size(MAX_DIAMETER_MM),
  shims: shimRowsSchema,
  seatHeight_mm: seatHeightSchema,
  ...springShapes,
  material: materialSchema.optional(),
});

const portsSchema = record({
  count: wholeNumber(1, 100),
  diameter_mm: size(200).optional(),
  area_mm2: numberIn({ above: 0, upTo: 20_000 }).optional(),
  length_mm: size(500),
});

const valveBodySchema = record({ ports: portsSchema, pressureZone: ringSchema, seat: ringSchema });

const needleSchema = record({
  coneAngle_deg: numberIn({ from: 1, upTo: 150 }),
  travelPerClick_mm: size(20),
  clicks: wholeNumber(0, 1000),
  clickCount: wholeNumber(1, 1000),
});

/** A count of 0 closes the bleed. */
const bleedSchema = record({
  count: wholeNumber(0, 100),
  diameter_mm: size(50),
  length_mm: size(500),
  needle: needleSchema.optional(),
});

const byPlace = <Item extends z.ZodType>(item: Item) => record({ pistonCompression: item, pistonRebound: item });

export const buildSchema = record({
  id: textUpTo(100).min(1, { error: 'a text of at least 1 character' }),
  name,
  notes,
  valves: byPlace(valvingSchema),
  bleed: bleedSchema,
});

const pistonBandSchema = record({
  clearance_mm: size(10),
  length_mm: size(500),
  eccentricity: numberIn({ from: 0, upTo: 1 }),
});

const damperSchema = record({
  name,
  layout: z.literal('monotube', { error: '"monotube"' }),
  boreDiameter_mm: size(MAX_DIAMETER_MM),
  rodDiameter_mm: size(MAX_DIAMETER_MM),
  travel_mm: size(5000),
  sealFriction_N: numberIn({ from: 0, upTo: 100_000 }),
  pistonBand: pistonBandSchema.optional(),
  valves: byPlace(valveBodySchema),
});

const viscosityPointSchema = record({ temperature_degC, kinematicViscosity_cSt });

const viscosityIndex = numberIn({ from: -200, upTo: 1000 });
const viscosityError = 'an object of kind "two-point", "viscosity-index" or "iso-grade"';
const viscositySchema = z.discriminatedUnion(
  'kind',
  [
    record({
      kind: z.literal('two-point'),
      points: z.tuple([viscosityPointSchema, viscosityPointSchema], { error: 'a list of 2 points' }),
    }),
    record({
      kind: z.literal('viscosity-index'),
      kinematicViscosity40_cSt: kinematicViscosity_cSt,
      viscosityIndex,
    }),
    record({
      kind: z.literal('iso-grade'),
      isoGrade: z.literal(ISO_GRADES, { error: `one of the grades ${ISO_GRADES.join(', ')}` }),
      viscosityIndex,
    }),
  ],
  { error: viscosityError },
);

const fluidSchema = record({
  name,
  viscosity: viscositySchema,
  densityAt15_kg_m3: numberIn({ from: 400, upTo: 3000 }),
  temperature_degC,
});

const gasSchema = record({
  gaugePressure_bar: numberIn({ from: 0, upTo: 300 }),
  volume_mL: numberIn({ above: 0, upTo: 100_000 }),
  polytropicExponent: numberIn({ from: 1, upTo: 2 }),
});

export const projectSchema = record({
  format: z.literal(PROJECT_FORMAT),
  version: z.literal(PROJECT_VERSION),
  name,
  notes: notes.default(''),
  invented: z.boolean({ error: 'true or false' }).optional(),
  damper: damperSchema,
  fluid: fluidSchema,
  gas: gasSchema,
  builds: listOf(buildSchema, 200).min(1, { error: 'a list of at least 1 build' }),
  baselineBuild: textUpTo(100),
  measurements: listOf(z.unknown(), 10_000).default([]),
  chassis: z.record(z.string(), z.unknown(), { error: 'an object' }).default({}),
  drawer: listOf(z.unknown(), 10_000).default([]),
}).meta({ title: 'Shimwright project, version 1' });
