/** Shape of the valves: what is machined into piston and base, and what opens beside the stacks. */
import { numberIn, record, size, wholeNumber } from './fields.ts';
import {
  clickShapes,
  MAX_DIAMETER_MM,
  materialSchema,
  preload_N,
  preloadAdjusterSchema,
  rate_N_mm,
  ringSchema,
  seatHeightSchema,
  shimRowsSchema,
  springShapes,
} from './stack-schema.ts';
import type { z } from './zod.ts';

export const valvingSchema = record({
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
  coveredFraction: numberIn({ above: 0, upTo: 1 }).optional(),
});

export const valveBodySchema = record({ ports: portsSchema, pressureZone: ringSchema, seat: ringSchema });

const coneAngle_deg = numberIn({ from: 1, upTo: 150 });
const needleSchema = record({ coneAngle_deg, ...clickShapes });

/** A count of 0 closes the bleed. */
export const bleedSchema = record({
  count: wholeNumber(0, 100),
  diameter_mm: size(50),
  length_mm: size(500),
  needle: needleSchema.optional(),
});

export const poppetSchema = record({
  seatDiameter_mm: size(MAX_DIAMETER_MM),
  coneAngle_deg,
  rate_N_mm,
  preload_N,
  travel_mm: size(100),
  adjuster: preloadAdjusterSchema.optional(),
});

/** A rate of 0 is a spring of constant force. */
export const refillCheckSchema = record({
  ports: portsSchema,
  seat: record({ innerDiameter_mm: size(MAX_DIAMETER_MM), outerDiameter_mm: size(MAX_DIAMETER_MM) }),
  rate_N_mm: numberIn({ from: 0, upTo: 1_000_000 }),
  preload_N,
  travel_mm: size(100),
});

/** The base is asked for, or refused, by layout: layout-relations.ts. */
export const byPlace = <Item extends z.ZodType>(item: Item) =>
  record({ pistonCompression: item, pistonRebound: item, baseCompression: item.optional() });
