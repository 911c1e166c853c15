/** One list of what several starts of a search found, the same whichever machine ran which of them. */
import type { ShimRow, ValvePlace } from './project.ts';

interface Found {
  readonly shims: Readonly<Partial<Record<ValvePlace, readonly ShimRow[]>>>;
  readonly judgement: { readonly rms_N: number };
}

/** Equal for the same stacks. */
const keyOf = ({ shims }: Found): string =>
  JSON.stringify([shims.pistonCompression ?? [], shims.pistonRebound ?? [], shims.baseCompression ?? []]);

/** The nearest to the aim, equal stacks once, best first; of equally near ones the one whose list of shims comes first in the order of letters. */
export function rankFound<F extends Found>(starts: readonly { readonly answers: readonly F[] }[], count: number): F[] {
  const byKey = new Map(starts.flatMap(({ answers }) => answers.map((found) => [keyOf(found), found] as const)));
  return [...byKey.entries()]
    .sort(([a, x], [b, y]) => x.judgement.rms_N - y.judgement.rms_N || (a < b ? -1 : 1))
    .map(([, found]) => found)
    .slice(0, count);
}
