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
  /** The bores of those, smallest first, where any is written down; without a bore those of which it is not. */
  readonly bores: readonly { readonly innerDiameter_mm?: number; readonly count: number }[];
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
function fromDrawer({ row, clampDiameter_mm }: Needed, drawer: readonly DrawerShim[]): DrawerShim[] {
  if (isSpecial(row)) return [];
  const hasBore = ({ innerDiameter_mm = 0 }: DrawerShim): boolean =>
    row.innerDiameter_mm === undefined
      ? innerDiameter_mm <= clampDiameter_mm
      : innerDiameter_mm === row.innerDiameter_mm;
  const fits = (shim: DrawerShim): boolean =>
    shim.outerDiameter_mm === row.outerDiameter_mm && shim.thickness_mm === row.thickness_mm && hasBore(shim);
  return drawer.filter(fits);
}

/** Which of several bores the shaft has is for the person to see. */
function boresOf(shims: readonly DrawerShim[]): PickedShim['bores'] {
  if (shims.every(({ innerDiameter_mm }) => innerDiameter_mm === undefined)) return [];
  const bores = shims.map(({ innerDiameter_mm, count }) => ({
    ...(innerDiameter_mm !== undefined && { innerDiameter_mm }),
    count,
  }));
  return bores.sort((a, b) => (a.innerDiameter_mm ?? Number.MAX_VALUE) - (b.innerDiameter_mm ?? Number.MAX_VALUE));
}

/** Every different shim of a build once, largest first, then thickest. */
export function pickingList(build: Build, baseline: Build, drawer: readonly DrawerShim[]): PickedShim[] {
  const reusable = neededFor(baseline);
  const picks = [...neededFor(build)].map(([part, found]) => {
    const { row, count: needed } = found;
    const { outerDiameter_mm, thickness_mm, innerDiameter_mm } = row;
    const owned = fromDrawer(found, drawer);
    const inDrawer = owned.reduce((sum, { count }) => sum + count, 0);
    return {
      ...{ outerDiameter_mm, thickness_mm, ...(innerDiameter_mm !== undefined && { innerDiameter_mm }) },
      bores: innerDiameter_mm === undefined ? boresOf(owned) : [],
      ...{ isSpecial: isSpecial(row), needed, inDrawer, missing: Math.max(0, needed - inDrawer) },
      inBaseline: reusable.get(part)?.count ?? 0,
    };
  });
  return picks.sort((a, b) => b.outerDiameter_mm - a.outerDiameter_mm || b.thickness_mm - a.thickness_mm);
}
