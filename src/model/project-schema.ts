/**
 * Shape of the project document. Bounds are limits of physical sense, wide on purpose; how the sizes must relate to one
 * another is in project-relations.ts.
 */
import { aimsSchema } from './aim-schema.ts';
import { assemblySchema } from './assembly-schema.ts';
import { chassisSchema } from './chassis-schema.ts';
import { damperSchema } from './damper-schema.ts';
import { drawerSchema } from './drawer-schema.ts';
import { listOf, numberIn, record, textUpTo } from './fields.ts';
import { fitSchema } from './fit-schema.ts';
import { gasSchema } from './gas-schema.ts';
import { measurementsSchema } from './measurement-schema.ts';
import { ISO_GRADES } from './project.ts';
import { recordSchema } from './record-schema.ts';
import { tolerancesSchema } from './tolerances-schema.ts';
import { bleedSchema, byPlace, poppetSchema, valvingSchema } from './valve-schema.ts';
import { z } from './zod.ts';

export const PROJECT_FORMAT = 'shimwright/project';
export const PROJECT_VERSION = 1;

const name = textUpTo(200);
const notes = textUpTo(100_000);
/** What oil may have [°C]. */
export const OIL_TEMPERATURES = { from: -60, upTo: 250 } as const;

const temperature_degC = numberIn(OIL_TEMPERATURES);
const kinematicViscosity_cSt = numberIn({ from: 0.5, upTo: 100_000 });

const buildSchema = record({
  id: textUpTo(100).min(1, { error: 'a text of at least 1 character' }),
  name,
  notes: notes.default(''),
  valves: byPlace(valvingSchema),
  bleed: bleedSchema,
  baseBleed: bleedSchema.optional(),
  basePoppet: poppetSchema.optional(),
  measurements: measurementsSchema.optional(),
  fit: fitSchema.optional(),
  assembly: assemblySchema.optional(),
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
  bulkModulus_GPa: numberIn({ from: 0.1, upTo: 10 }).optional(),
  entrainedAir_percent: numberIn({ from: 0, upTo: 30 }).optional(),
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
  chassis: chassisSchema.default({}),
  drawer: drawerSchema.default([]),
  aims: aimsSchema.optional(),
  record: recordSchema.optional(),
  tolerances: tolerancesSchema.optional(),
}).meta({ title: 'Shimwright project, version 1' });
