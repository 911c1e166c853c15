/** Building blocks of the schemas: every refusal says what was wanted, in words. */
import { z } from './zod.ts';

export interface NumberRange {
  /** Open lower bound. */
  readonly above?: number;
  /** Closed lower bound. */
  readonly from?: number;
  /** Open upper bound. */
  readonly below?: number;
  /** Closed upper bound. */
  readonly upTo?: number;
}

function inWords({ above, from, below, upTo }: NumberRange): string {
  const bounds = [
    above !== undefined && `above ${above}`,
    from !== undefined && `of at least ${from}`,
    below !== undefined && `below ${below}`,
    upTo !== undefined && `at most ${upTo}`,
  ];
  return bounds.filter(Boolean).join(' and ');
}

function bounded(schema: z.ZodNumber, range: NumberRange, error: string): z.ZodNumber {
  let out = schema;
  if (range.above !== undefined) out = out.gt(range.above, { error });
  if (range.from !== undefined) out = out.gte(range.from, { error });
  if (range.below !== undefined) out = out.lt(range.below, { error });
  if (range.upTo !== undefined) out = out.lte(range.upTo, { error });
  return out;
}

/** A finite number in a range; NaN and infinities are refused. */
export function numberIn(range: NumberRange): z.ZodNumber {
  const error = `a number ${inWords(range)}`;
  return bounded(z.number({ error }), range, error);
}

/** A whole number in a closed range. */
export function wholeNumber(from: number, upTo: number): z.ZodNumber {
  const error = `a whole number from ${from} to ${upTo}`;
  return bounded(z.int({ error }), { from, upTo }, error);
}

/** A micrometre: nothing in a damper is made thinner, and less would only upset the arithmetic. */
export const MIN_SIZE_MM = 0.001;

/** A size in millimetres: finite, positive, within `upTo_mm`. */
export const size = (upTo_mm: number): z.ZodNumber => numberIn({ from: MIN_SIZE_MM, upTo: upTo_mm });

/** A text of bounded length. */
export function textUpTo(length: number): z.ZodString {
  const error = `a text of at most ${length} characters`;
  return z.string({ error }).max(length, { error });
}

/** A list of bounded length. */
export function listOf<Item extends z.ZodType>(item: Item, upTo: number): z.ZodArray<Item> {
  const error = `a list of at most ${upTo} entries`;
  return z.array(item, { error }).max(upTo, { error });
}

/** An object whose unknown fields are kept. */
export const record = <Shape extends z.ZodRawShape>(shape: Shape): z.ZodObject<Shape, z.core.$loose> =>
  z.looseObject(shape, { error: 'an object' });
