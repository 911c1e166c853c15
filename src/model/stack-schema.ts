/**
 * Shape of a shim stack and of the stack file. Bounds are limits of physical sense, wide on purpose; how the sizes must
 * relate to one another is in stack-relations.ts.
 */
import { listOf, numberIn, record, size, textUpTo, wholeNumber } from './fields.ts';
import { z } from './zod.ts';

/** Largest bore, piston or shim that a document may name [mm]. */
export const MAX_DIAMETER_MM = 500;
/** Single shims that one stack may hold, counts expanded. */
export const MAX_SHIMS = 200;

export const STACK_FORMAT = 'shimwright/stack';
export const STACK_VERSION = 1;

const strength_MPa = numberIn({ above: 0, upTo: 10_000 }).optional();

export const materialSchema = record({
  youngsModulus_GPa: numberIn({ from: 0.01, upTo: 1000 }),
  poissonsRatio: numberIn({ above: 0, below: 0.5 }),
  yieldStrength_MPa: strength_MPa,
  tensileStrength_MPa: strength_MPa,
  enduranceLimit_MPa: strength_MPa,
});

export const shimRowSchema = record({
  outerDiameter_mm: size(MAX_DIAMETER_MM),
  thickness_mm: size(20),
  count: wholeNumber(1, MAX_SHIMS).optional(),
  innerDiameter_mm: size(MAX_DIAMETER_MM).optional(),
  dish_mm: numberIn({ from: -20, upTo: 20 }).optional(),
  material: materialSchema.optional(),
  notches: record({ count: wholeNumber(1, 100), width_mm: size(MAX_DIAMETER_MM) }).optional(),
});

export const shimRowsSchema = listOf(shimRowSchema, MAX_SHIMS);

export const ringSchema = record({
  innerDiameter_mm: numberIn({ from: 0, upTo: MAX_DIAMETER_MM }),
  outerDiameter_mm: size(MAX_DIAMETER_MM),
});

export const seatHeightSchema = numberIn({ from: -20, upTo: 20 });

const backingPlateSchema = record({
  gap_mm: numberIn({ from: 0, upTo: 100 }),
  outerDiameter_mm: size(MAX_DIAMETER_MM).optional(),
});

/** Force of a spring at rest [N]. */
export const preload_N = numberIn({ from: 0, upTo: 100_000 });
/** Of a spring that stores what it is pressed by [N/mm]. */
export const rate_N_mm = numberIn({ from: 0.001, upTo: 1_000_000 });
const MAX_CLICKS = 1000;

/** Turned by clicks: where it stands, from closed, and how many it has. */
export const clickShapes = {
  travelPerClick_mm: size(20),
  clicks: wholeNumber(0, MAX_CLICKS),
  clickCount: wholeNumber(1, MAX_CLICKS),
};

export const preloadAdjusterSchema = record(clickShapes);

const coilSpringSchema = record({
  diameter_mm: size(MAX_DIAMETER_MM),
  rate_N_mm,
  preload_N,
  adjuster: preloadAdjusterSchema.optional(),
});

/** A rate of 0 is a check spring of constant force. */
const floatSchema = record({ travel_mm: size(100), rate_N_mm: numberIn({ from: 0, upTo: 1_000_000 }), preload_N });

/** Keys that a valving and a stack file share. */
export const springShapes = {
  backingPlate: backingPlateSchema.optional(),
  coilSpring: coilSpringSchema.optional(),
  float: floatSchema.optional(),
};

const portsUnderShimsSchema = record({
  count: wholeNumber(1, 100),
  coveredFraction: numberIn({ above: 0, upTo: 1 }),
});

export const stackFileSchema = record({
  format: z.literal(STACK_FORMAT),
  version: z.literal(STACK_VERSION),
  name: textUpTo(200),
  material: materialSchema.optional(),
  clampDiameter_mm: size(MAX_DIAMETER_MM),
  shims: shimRowsSchema,
  pressureZone: ringSchema,
  seat: ringSchema.extend({ height_mm: seatHeightSchema }).optional(),
  ports: portsUnderShimsSchema.optional(),
  ...springShapes,
}).meta({ title: 'Shimwright stack file, version 1' });
