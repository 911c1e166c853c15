/** Shape of the drawer. How its entries must relate is in drawer-relations.ts. */
import { listOf, record, size, wholeNumber } from './fields.ts';
import { MAX_DIAMETER_MM } from './stack-schema.ts';

const MAX_SIZES = 10_000;

export const drawerSchema = listOf(
  record({
    outerDiameter_mm: size(MAX_DIAMETER_MM),
    thickness_mm: size(20),
    count: wholeNumber(0, 10_000),
    innerDiameter_mm: size(MAX_DIAMETER_MM).optional(),
  }),
  MAX_SIZES,
);
