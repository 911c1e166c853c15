/** What to take from where to lay stacks: out of the stacks that are there, out of the drawer, or not at hand at all. */
import type { DrawerShim } from './drawer.ts';
import { countOf } from './expand-shims.ts';
import type { ShimRow } from './project.ts';

export interface PickLine {
  readonly outerDiameter_mm: number;
  readonly thickness_mm: number;
  readonly needed: number;
  /** Already in the stacks that are taken apart. */
  readonly fromStacks: number;
  readonly fromDrawer: number;
  readonly missing: number;
}

type Size = Pick<ShimRow, 'outerDiameter_mm' | 'thickness_mm'>;
const keyOf = ({ outerDiameter_mm, thickness_mm }: Size): string => `${outerDiameter_mm} x ${thickness_mm}`;

/** How many there are of each size, whatever their bores. */
export function countsBySize(rows: readonly (Size & { readonly count?: number })[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const row of rows) counts.set(keyOf(row), (counts.get(keyOf(row)) ?? 0) + countOf(row));
  return counts;
}

export const countAt = (counts: ReadonlyMap<string, number>, size: Size): number => counts.get(keyOf(size)) ?? 0;

/**
 * Large before small, thin before thick. A shim that lies in a stack is taken before one in the drawer.
 * @param wanted rows of the stacks to lay
 * @param present rows of the stacks that are taken apart for them
 */
export function pickingList(
  wanted: readonly ShimRow[],
  present: readonly ShimRow[],
  drawer: readonly DrawerShim[],
): PickLine[] {
  const [needs, there, owned] = [wanted, present, drawer].map(countsBySize);
  const sizes = new Map(wanted.map((row) => [keyOf(row), row] as const));
  return [...sizes.values()]
    .map((size): PickLine => {
      const needed = countAt(needs, size);
      const fromStacks = Math.min(needed, countAt(there, size));
      const fromDrawer = Math.min(needed - fromStacks, countAt(owned, size));
      const { outerDiameter_mm, thickness_mm } = size;
      return {
        outerDiameter_mm,
        thickness_mm,
        needed,
        fromStacks,
        fromDrawer,
        missing: needed - fromStacks - fromDrawer,
      };
    })
    .sort((a, b) => b.outerDiameter_mm - a.outerDiameter_mm || a.thickness_mm - b.thickness_mm);
}
