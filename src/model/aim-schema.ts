/** Shape of the aims. How their points must relate is in drawer-relations.ts. */
import { listOf, numberIn, record, textUpTo } from './fields.ts';
import { z } from './zod.ts';

const MAX_AIMS = 100;
const MAX_AIM_POINTS = 200;
const MAX_CHANGES = 20;

const id = textUpTo(100).min(1, { error: 'a text of at least 1 character' });
const speed_m_s = numberIn({ above: 0, upTo: 100 });

const ratioGoalSchema = record({
  lowSpeedRatio: numberIn({ from: 0, upTo: 20 }),
  highSpeedRatio: numberIn({ from: 0, upTo: 20 }),
  kneeSpeed_m_s: speed_m_s,
});

const directions = ['compression', 'rebound', 'both'] as const;
const ranges = ['above', 'below', 'all'] as const;

const changeSchema = record({
  direction: z.enum(directions, { error: `one of ${directions.join(', ')}` }),
  range: z.enum(ranges, { error: `one of ${ranges.join(', ')}` }),
  speed_m_s,
  change_percent: numberIn({ from: -100, upTo: 1000 }),
});

const originSchema = z.discriminatedUnion(
  'kind',
  [
    record({ kind: z.literal('drawn') }),
    record({
      kind: z.literal('damping-ratio'),
      compression: ratioGoalSchema,
      rebound: ratioGoalSchema,
      wheelTravel_mm: numberIn({ from: 0, upTo: 2000 }),
    }),
    record({
      kind: z.literal('change'),
      buildId: textUpTo(100),
      changes: listOf(changeSchema, MAX_CHANGES).min(1, { error: 'a list of at least 1 change' }),
    }),
  ],
  { error: 'an object of kind "drawn", "damping-ratio" or "change"' },
);

export const aimsSchema = listOf(
  record({
    id,
    name: textUpTo(200),
    points: listOf(
      record({
        shaftSpeed_m_s: numberIn({ from: -100, upTo: 100 }),
        force_N: numberIn({ from: -1_000_000, upTo: 1_000_000 }),
      }),
      MAX_AIM_POINTS,
    ).min(1, { error: 'a list of at least 1 point' }),
    origin: originSchema.optional(),
  }),
  MAX_AIMS,
);
