import { UsageError } from './command.ts';

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const LONGEST = 10_000;

export interface Allowed {
  /** Of the numbers, as the messages name it. */
  readonly unit?: string;
  readonly from?: number;
  /** Numbers must be more than this. */
  readonly above?: number;
  readonly upTo?: number;
  readonly single?: boolean;
}

/**
 * `0.1,0.2` to numbers.
 * @throws UsageError for an empty list, an empty entry, NaN, infinity, anything but plain decimal numbers, and for numbers not allowed
 */
export function numberList(text: string, option: string, allowed: Allowed = {}): number[] {
  const entries = text.split(',');
  if (allowed.single && entries.length > 1) throw new UsageError(`--${option} takes one number`);
  if (entries.length > LONGEST) throw new UsageError(`--${option} takes at most ${LONGEST} numbers`);
  return entries.map((entry) => {
    const value = NUMBER.test(entry.trim()) ? Number(entry) : Number.NaN;
    const wanted = wantedInstead(value, allowed);
    if (wanted) throw new UsageError(`--${option}: got ${JSON.stringify(entry)}, wanted ${wanted}`);
    return value;
  });
}

/** In words, for a number that is not allowed. */
function wantedInstead(value: number, { unit, from, above, upTo, single }: Allowed): string | undefined {
  const withUnit = (bound: number) => (unit ? `${bound} ${unit}` : `${bound}`);
  const inUnit = unit ? ` in ${unit}` : '';
  if (!Number.isFinite(value))
    return single ? `a number${inUnit}` : `numbers${inUnit} with a comma between, such as 0.1,0.2`;
  if (from !== undefined && value < from) return `${withUnit(from)} or more`;
  if (above !== undefined && value <= above) return `more than ${withUnit(above)}`;
  if (upTo !== undefined && value > upTo) return `${withUnit(upTo)} or less`;
  return undefined;
}
