/** Rows with counts, and the single shims they stand for. */
import type { ShimRow } from './project.ts';
import { MAX_SHIMS } from './stack-schema.ts';

/** How many shims a row stands for. */
export const countOf = ({ count = 1 }: Pick<ShimRow, 'count'>): number => count;

/** All shims of a stack, one by one, piston side first; each is the row it came from, without its count. */
export function expandShims(rows: readonly ShimRow[]): Omit<ShimRow, 'count'>[] {
  return rows.flatMap((row) => {
    const { count: _, ...shim } = row;
    // A count that the checks have refused must not fill the memory of a page that still shows it.
    const count = Math.min(Math.max(Math.trunc(countOf(row)) || 0, 0), MAX_SHIMS);
    return Array.from({ length: count }, () => ({ ...shim }));
  });
}
