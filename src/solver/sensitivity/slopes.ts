/**
 * Slope of one or several quantities by differences with two steps, and what the two say of its error.
 * Central where both sides exist:    D(h) = [f(h) - f(-h)] / 2h,   slope = [4 D(h) - D(2h)] / 3,   error = |D(h) - D(2h)| / 3
 * one-sided where one is refused:    D(h) = [f(h) - f(0)] / h,     slope = 2 D(h) - D(2h),         error = |D(h) - D(2h)|
 * Source: Richardson's extrapolation (L. F. Richardson, Phil. Trans. R. Soc. A 226 (1927) 299-349; from memory). The error is that of
 * the unextrapolated D(h), so on a smooth curve it is on the safe side; where a curve has a kink it tells how far the steps disagree.
 *
 * symbol  unit      meaning
 * f       of f      the quantities
 * h       of x      step
 * D       of f/x    difference quotient
 */

export interface Slope {
  readonly value: number;
  /** Estimated, >= 0, in the unit of the value. */
  readonly error: number;
}

type Values = readonly (number | null)[];

/** @param at  the quantities a step away from where they are; undefined where that cannot be, null where one has no value */
export function slopesOf(at: (step: number) => Values | undefined, h: number): readonly (Slope | null)[] {
  const middle = at(0) ?? [];
  const sides = [at(h), at(2 * h), at(-h), at(-2 * h)] as const;
  const [up, farUp, down, farDown] = sides;
  return middle.map((value, i) => {
    const upper = pairAt(up, farUp, i);
    const lower = pairAt(down, farDown, i);
    if (upper && lower) return centralSlope(upper, lower, h);
    if (value === null) return null;
    if (upper) return oneSidedSlope(value, upper, h);
    return lower ? oneSidedSlope(value, lower, -h) : null;
  });
}

interface Pair {
  readonly near: number;
  readonly far: number;
}

function pairAt(nearValues: Values | undefined, farValues: Values | undefined, i: number): Pair | undefined {
  const near = nearValues?.[i] ?? null;
  const far = farValues?.[i] ?? null;
  return near === null || far === null ? undefined : { near, far };
}

function centralSlope(upper: Pair, lower: Pair, h: number): Slope {
  const D1 = (upper.near - lower.near) / (2 * h);
  const D2 = (upper.far - lower.far) / (4 * h);
  return { value: (4 * D1 - D2) / 3, error: Math.abs(D1 - D2) / 3 };
}

function oneSidedSlope(value: number, side: Pair, h: number): Slope {
  const D1 = (side.near - value) / h;
  const D2 = (side.far - value) / (2 * h);
  return { value: 2 * D1 - D2, error: Math.abs(D1 - D2) };
}
