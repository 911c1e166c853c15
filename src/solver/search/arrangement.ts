/**
 * What makes a list of shims a stack that may be laid: enough of every size, a face that covers its seat, few steps
 * outwards, and the limits that a person set.
 *
 * A stack tapers: along it diameters fall or stay. Every step outwards begins a stage of its own, as behind a crossover shim.
 */
import { valveAt } from '../damper/damper-valves.ts';
import type { StackPlace } from '../damper/types.ts';
import type { Arrangement, SearchLimits, SearchPlace, SearchProblem, SupplyItem } from './types.ts';

/** Steps outwards that a stack may have, unless the present one has more. */
const STEPS_OUTWARDS = 1;

export const sizesAt = (arrangement: Arrangement, place: StackPlace): readonly number[] => arrangement[place] ?? [];

export const presentArrangement = (places: readonly SearchPlace[]): Arrangement =>
  Object.fromEntries(places.map(({ place, present }) => [place, present]));

/** The same for the same stacks, whatever way led there. */
export const keyOf = (arrangement: Arrangement): string =>
  (['compression', 'rebound', 'base'] as const).map((place) => sizesAt(arrangement, place).join(',')).join('|');

export function heightOf(sizes: readonly number[], supply: readonly SupplyItem[]): number {
  return sizes.reduce((sum, size) => sum + supply[size].shim.thickness_m, 0);
}

export function stepsOutwards(sizes: readonly number[], supply: readonly SupplyItem[]): number {
  const radius = (size: number) => supply[size].shim.outerRadius_m;
  return sizes.filter((size, i) => i > 0 && radius(size) > radius(sizes[i - 1]) * (1 + 1e-9)).length;
}

export function countsOf(sizes: Iterable<number>): Map<number, number> {
  const counts = new Map<number, number>();
  for (const size of sizes) counts.set(size, (counts.get(size) ?? 0) + 1);
  return counts;
}

/** The greater of shims added and shims taken out, all places together; a shim that only moves within its stack is none. */
export function changesOf(arrangement: Arrangement, places: readonly SearchPlace[]): number {
  let added = 0;
  let taken = 0;
  for (const { place, present } of places) {
    const now = countsOf(sizesAt(arrangement, place));
    const before = countsOf(present);
    for (const size of new Set([...now.keys(), ...before.keys()])) {
      const change = (now.get(size) ?? 0) - (before.get(size) ?? 0);
      if (change > 0) added += change;
      else taken -= change;
    }
  }
  return Math.max(added, taken);
}

export interface Rules {
  /** Whether the stack of one place may be laid; the supply is not looked at. */
  readonly mayBeLaid: (at: SearchPlace, sizes: readonly number[]) => boolean;
  /** Whether all places together keep to the supply and to the number of changes. */
  readonly mayBeTogether: (arrangement: Arrangement) => boolean;
}

export function rulesOf(problem: SearchProblem): Rules {
  const { places, supply, limits } = problem;
  const bounds = new Map(places.map((at) => [at.place, placeBounds(problem, at)]));
  return {
    mayBeLaid: (at, sizes) => {
      const bound = bounds.get(at.place);
      return bound !== undefined && fits(sizes, at, supply, limits, bound);
    },
    mayBeTogether: (arrangement) => {
      const used = countsOf(places.flatMap(({ place }) => sizesAt(arrangement, place)));
      for (const [size, count] of used) if (count > supply[size].count) return false;
      return limits.maxChanges === undefined || changesOf(arrangement, places) <= limits.maxChanges;
    },
  };
}

/** No shim is larger than the largest of the present stack, within a rounding [m]. */
export const largestRadius = (present: readonly number[], supply: readonly SupplyItem[]): number =>
  Math.max(...present.map((size) => supply[size].shim.outerRadius_m)) * (1 + 1e-9);

interface PlaceBounds {
  /** The face shim covers its seat and its pressure zone ... */
  readonly leastFace_m: number;
  /** ... and no shim is larger than the present face, which is known to fit its piston. */
  readonly largest_m: number;
  readonly steps: number;
  /** A coil spring stands on the last shim. */
  readonly leastLast_m: number;
}

function placeBounds({ damper, supply }: SearchProblem, { place, present }: SearchPlace): PlaceBounds {
  const { seat, pressureZone, coilSpring } = valveAt(damper, place).stack;
  return {
    leastFace_m: Math.max(seat.outerRadius_m, pressureZone.outerRadius_m) * (1 - 1e-9),
    largest_m: largestRadius(present, supply),
    steps: Math.max(STEPS_OUTWARDS, stepsOutwards(present, supply)),
    leastLast_m: coilSpring?.radius_m ?? 0,
  };
}

function fits(
  sizes: readonly number[],
  { present, kept, keepsFace }: SearchPlace,
  supply: readonly SupplyItem[],
  { maxShims, height_m }: SearchLimits,
  { leastFace_m, largest_m, steps, leastLast_m }: PlaceBounds,
): boolean {
  if (sizes.length === 0 || sizes.length > maxShims) return false;
  const radius = (size: number) => supply[size].shim.outerRadius_m;
  if (keepsFace ? sizes[0] !== present[0] : radius(sizes[0]) < leastFace_m) return false;
  if (radius(sizes[sizes.length - 1]) < leastLast_m) return false;
  if (sizes.some((size) => radius(size) > largest_m) || stepsOutwards(sizes, supply) > steps) return false;
  if (height_m) {
    const height = heightOf(sizes, supply);
    if (height < height_m.from - 1e-9 || height > height_m.upTo + 1e-9) return false;
  }
  const counts = countsOf(sizes);
  for (const [size, count] of kept) if ((counts.get(size) ?? 0) < count) return false;
  return true;
}
