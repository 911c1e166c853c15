/** What is said of stacks that were judged against an aim. */
import { showNumber, showPercent } from '../app/quantities.ts';
import { text } from '../text/en.ts';
import { searchWords as words } from '../text/search.ts';

export const percent = (share: number): string => `${showNumber(share * 100, 1)} %`;

export function reserve(value: number | undefined): string {
  if (value === undefined) return words.unknown;
  return value < 1 ? text.shims.over(showNumber(value, 2)) : showNumber(value, 2);
}

/** How much nearer to the aim, as a share of how far the present stacks are off it. */
export function againstPresent(rms_N: number, present_N: number): string {
  const share = present_N > 0 ? 1 - rms_N / present_N : 0;
  const shown = showPercent(Math.abs(share));
  if (shown === showPercent(0)) return words.asFar;
  return share > 0 ? words.nearer(shown) : words.farther(shown);
}
