/** Which shims to take out of the drawer for a build, and which it lacks. */
import { countOf } from '../model/expand-shims.ts';
import type { Build, DrawerShim, ShimRow } from '../model/project.ts';

export interface PickedShim {
  readonly outerDiameter_mm: number;
  readonly thickness_mm: number;
  /** Where the shim has a bore of its own. */
  readonly innerDiameter_mm?: number;
  /** Bent, notched or of another material: no size in a drawer says that it is one. */
  readonly isSpecial: boolean;
  readonly needed: number;
  readonly inDrawer: number;
  /** What the drawer lacks. */
  readonly missing: number;
  /** Of this shim in the stacks of the baseline. */
  readonly inBaseline: number;
}

const isSpecial = ({ dish_mm = 0, notches, material }: ShimRow): boolean =>
  dish_mm !== 0 || notches !== undefined || material !== undefined;

/** All that makes two shims the same part. */
const partOf = ({ count: _, ...shim }: ShimRow): string =>
  JSON.stringify(Object.entries(shim).sort(([a], [b]) => (a < b ? -1 : 1)));

interface Needed {
  readonly row: ShimRow;
  readonly count: number;
  /** The largest on which it lies. */
  readonly clampDiameter_mm: number;
}

function neededFor({ valves }: Build): Map<string, Needed> {
  const needed = new Map<string, Needed>();
  for (const valving of Object.values(valves))
    for (const row of valving?.shims ?? []) {
      const { count = 0, clampDiameter_mm = 0 } = needed.get(partOf(row)) ?? {};
      const clamp = Math.max(clampDiameter_mm, valving?.clampDiameter_mm ?? 0);
      needed.set(partOf(row), { row, count: count + countOf(row), clampDiameter_mm: clamp });
    }
  return needed;
}

/** A shim without a bore of its own has that of the shaft, below the clamp; one in the drawer without a bore is taken to fit. */
function drawerCount({ row, clampDiameter_mm }: Needed, drawer: readonly DrawerShim[]): number {
  if (isSpecial(row)) return 0;
  const hasBore = ({ innerDiameter_mm = 0 }: DrawerShim): boolean =>
    row.innerDiameter_mm === undefined
      ? innerDiameter_mm <= clampDiameter_mm
      : innerDiameter_mm === row.innerDiameter_mm;
  const fits = (shim: DrawerShim): boolean =>
    shim.outerDiameter_mm === row.outerDiameter_mm && shim.thickness_mm === row.thickness_mm && hasBore(shim);
  return drawer.filter(fits).reduce((sum, { count }) => sum + count, 0);
}

/** Every different shim of a build once, largest first, then thickest. */
export function pickingList(build: Build, baseline: Build, drawer: readonly DrawerShim[]): PickedShim[] {
  const reusable = neededFor(baseline);
  const picks = [...neededFor(build)].map(([part, found]) => {
    const { row, count: needed } = found;
    const { outerDiameter_mm, thickness_mm, innerDiameter_mm } = row;
    const inDrawer = drawerCount(found, drawer);
    return {
      ...{ outerDiameter_mm, thickness_mm, ...(innerDiameter_mm !== undefined && { innerDiameter_mm }) },
      ...{ isSpecial: isSpecial(row), needed, inDrawer, missing: Math.max(0, needed - inDrawer) },
      inBaseline: reusable.get(part)?.count ?? 0,
    };
  });
  return picks.sort((a, b) => b.outerDiameter_mm - a.outerDiameter_mm || b.thickness_mm - a.thickness_mm);
}
