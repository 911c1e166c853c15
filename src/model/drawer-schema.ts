/** Shape of the drawer and of the aims. How their entries must relate is in drawer-relations.ts. */
import { listOf, numberIn, record, size, textUpTo, wholeNumber } from './fields.ts';
import { MAX_DIAMETER_MM } from './stack-schema.ts';

const MAX_SIZES = 10_000;
const MAX_AIMS = 100;
const MAX_AIM_POINTS = 200;

export const drawerSchema = listOf(
  record({
    outerDiameter_mm: size(MAX_DIAMETER_MM),
    thickness_mm: size(20),
    count: wholeNumber(0, 10_000),
    innerDiameter_mm: size(MAX_DIAMETER_MM).optional(),
  }),
  MAX_SIZES,
);

export const aimsSchema = listOf(
  record({
    id: textUpTo(100).min(1, { error: 'a text of at least 1 character' }),
    name: textUpTo(200),
    points: listOf(
      record({
        shaftSpeed_m_s: numberIn({ from: -100, upTo: 100 }),
        force_N: numberIn({ from: -1_000_000, upTo: 1_000_000 }),
      }),
      MAX_AIM_POINTS,
    ).min(1, { error: 'a list of at least 1 point' }),
  }),
  MAX_AIMS,
);
