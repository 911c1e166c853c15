/** One quantity of every shim of a stack over speed; neighbours that do the same share a line. */
import type { Direction } from '../app/places.ts';
import type { ForceCurve, StackPlace } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { type ShimValues, shimValuesAt } from '../section/shim-values.ts';
import { stackAtWork } from '../section/stack-at-work.ts';

export type ShimQuantity = 'lift' | 'stress' | 'life' | 'yield';
export const SHIM_QUANTITIES: readonly ShimQuantity[] = ['lift', 'stress', 'life', 'yield'];

/** Which shims, counted from the piston: `shims 1` or `shims 1–3`. */
export type ShimPart = `shims ${string}`;
export const isShimPart = (part: string): part is ShimPart => part.startsWith('shims ');

function readerOf(quantity: ShimQuantity): (values: ShimValues) => number | null {
  switch (quantity) {
    case 'lift':
      return ({ lift_m }) => lift_m;
    case 'stress':
      return ({ stress_Pa }) => stress_Pa;
    default:
      return ({ use }) => use?.[quantity] ?? null;
  }
}

/** Which stack, and what of it. */
interface Asked {
  readonly direction: Direction;
  readonly stack: StackPlace;
  readonly shimQuantity: ShimQuantity;
}

export interface ShimSeries {
  readonly buildId: string;
  readonly part: ShimPart;
  /** All >= 0 [m/s]. */
  readonly speeds_m_s: readonly number[];
  /** null where a speed did not solve. */
  readonly values: readonly (number | null)[];
  /** Of a lift that waves somewhere: least and greatest round the circle, by speed; null where a speed did not solve. */
  readonly range?: readonly (LiftRange | null)[];
}

export interface LiftRange {
  readonly low_m: number;
  readonly high_m: number;
}

interface Run {
  readonly first: number;
  readonly last: number;
  readonly values: readonly (number | null)[];
}

/** A round state has its mean at both ends. */
function rangeOf(states: readonly (ShimValues[] | undefined)[], shim: number): (LiftRange | null)[] | undefined {
  if (!states.some((state) => state?.[shim].wave)) return undefined;
  return states.map((state) => {
    if (!state) return null;
    const { lift_m, wave } = state[shim];
    return { low_m: wave?.trough_m ?? lift_m, high_m: wave?.crest_m ?? lift_m };
  });
}

const sameValues = (a: Run['values'], b: Run['values']): boolean => a.every((value, i) => value === b[i]);

/** Shims of equal size move and bear alike: their lines would lie on one another. */
function runsOf(shims: readonly Run['values'][]): Run[] {
  const runs: Run[] = [];
  for (const [s, values] of shims.entries()) {
    const before = runs.at(-1);
    if (before && sameValues(before.values, values)) runs[runs.length - 1] = { ...before, last: s };
    else runs.push({ first: s, last: s, values });
  }
  return runs;
}

/** None for a stack that the curve does not have, nor for shims without a known strength where a reserve is asked for. */
export function shimSeries(buildId: string, curve: ForceCurve, asked: Asked): ShimSeries[] {
  const { direction, stack, shimQuantity } = asked;
  const table = curve.stacks[stack];
  const points = pointsOf(curve, direction);
  const read = readerOf(shimQuantity);
  const states = points.map((point) => {
    const at_Pa = isSolved(point) ? stackAtWork(point, stack)?.shimPressure_Pa : undefined;
    return table && at_Pa !== undefined ? shimValuesAt(table, at_Pa) : undefined;
  });
  const count = Math.max(0, ...states.map((state) => state?.length ?? 0));
  const shims = Array.from({ length: count }, (_, s) => states.map((state) => (state ? read(state[s]) : null)));
  const told = runsOf(shims).filter(({ values }) => values.some((value) => value !== null));
  return told.map(({ first, last, values }) => {
    const range = shimQuantity === 'lift' ? rangeOf(states, first) : undefined;
    return {
      buildId,
      part: `shims ${first === last ? first + 1 : `${first + 1}–${last + 1}`}` as const,
      speeds_m_s: points.map((point) => Math.abs(point.shaftSpeed_m_s)),
      values,
      ...(range && { range }),
    };
  });
}
