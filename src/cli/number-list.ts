import { UsageError } from './command.ts';

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;
const LONGEST = 10_000;

/**
 * `0.1,0.2` to numbers.
 * @throws UsageError for an empty list, an empty entry, NaN, infinity, anything but plain decimal numbers
 */
export function numberList(
  text: string,
  option: string,
  allowed: { readonly from?: number; readonly upTo?: number; readonly single?: boolean } = {},
): number[] {
  const entries = text.split(',');
  if (allowed.single && entries.length > 1) throw new UsageError(`--${option} takes one number`);
  if (entries.length > LONGEST) throw new UsageError(`--${option} takes at most ${LONGEST} numbers`);
  return entries.map((entry) => {
    const value = NUMBER.test(entry.trim()) ? Number(entry) : Number.NaN;
    const got = `--${option}: got ${JSON.stringify(entry)}`;
    if (!Number.isFinite(value)) throw new UsageError(`${got}, wanted numbers with a comma between, such as 0.1,0.2`);
    if (allowed.from !== undefined && value < allowed.from)
      throw new UsageError(`${got}, wanted ${allowed.from} or more`);
    if (allowed.upTo !== undefined && value > allowed.upTo)
      throw new UsageError(`${got}, wanted ${allowed.upTo} or less`);
    return value;
  });
}
