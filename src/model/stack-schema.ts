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

export const shimRowSchema = record({
  outerDiameter_mm: size(MAX_DIAMETER_MM),
  thickness_mm: size(20),
  count: wholeNumber(1, MAX_SHIMS).optional(),
});

export const shimRowsSchema = listOf(shimRowSchema, MAX_SHIMS);

export const materialSchema = record({
  youngsModulus_GPa: numberIn({ from: 0.01, upTo: 1000 }),
  poissonsRatio: numberIn({ above: 0, below: 0.5 }),
});

export const ringSchema = record({
  innerDiameter_mm: numberIn({ from: 0, upTo: MAX_DIAMETER_MM }),
  outerDiameter_mm: size(MAX_DIAMETER_MM),
});

export const seatHeightSchema = numberIn({ from: -20, upTo: 20 });

export const backingPlateSchema = record({ gap_mm: numberIn({ from: 0, upTo: 100 }) });

export const stackFileSchema = record({
  format: z.literal(STACK_FORMAT),
  version: z.literal(STACK_VERSION),
  name: textUpTo(200),
  material: materialSchema.optional(),
  clampDiameter_mm: size(MAX_DIAMETER_MM),
  shims: shimRowsSchema,
  pressureZone: ringSchema,
  seat: ringSchema.extend({ height_mm: seatHeightSchema }).optional(),
  backingPlate: backingPlateSchema.optional(),
}).meta({ title: 'Shimwright stack file, version 1' });
