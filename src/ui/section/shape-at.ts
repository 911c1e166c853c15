/** Looking up what the solver computed: between two computed points, straight lines. No mechanics here. */
import type { ConvergedLift, FailedForce, ForceCurve, ForcePoint, StackTable } from '../app/solved.ts';
import { pointBetween } from './point-between.ts';
import { shapeBetween, type WaveShape } from './wave-shape.ts';

export const isSolved = (point: ForcePoint | FailedForce): point is ForcePoint => point.status === 'converged';

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

const betweenLists = (a: readonly number[], b: readonly number[], share: number): number[] =>
  a.map((value, i) => between(value, b[i], share));

interface Bracket {
  readonly low: number;
  readonly high: number;
  readonly share: number;
}

/** The two neighbours of `x` in rising `xs` and how far it lies between them; the ends hold outside. */
export function bracket(xs: readonly number[], x: number): Bracket {
  const last = xs.length - 1;
  if (x <= xs[0]) return { low: 0, high: 0, share: 0 };
  if (x >= xs[last]) return { low: last, high: last, share: 0 };
  const high = xs.findIndex((value) => value >= x);
  return { low: high - 1, high, share: (x - xs[high - 1]) / (xs[high] - xs[high - 1]) };
}

/** Within a rounding of its last pressure a table still counts. */
const PLAY = 1e-9;

/** Where a pressure lies in the table of a stack; nothing where the table is empty or the pressure lies beyond its end. */
export function bracketIn({ pressure_Pa }: Pick<StackTable, 'pressure_Pa'>, at_Pa: number): Bracket | undefined {
  const end = pressure_Pa.at(-1);
  return end === undefined || at_Pa > end * (1 + PLAY) ? undefined : bracket(pressure_Pa, at_Pa);
}

/** What a drawing and a table show of one stack at one pressure. */
export interface StackState {
  readonly pressure_Pa: number;
  readonly shape: WaveShape;
  /** Opening and lifts are means round the circle where the stack waves. */
  readonly seatOpening_m: number;
  readonly shimEdgeLift_m: readonly number[];
  readonly shimStress_Pa: readonly number[];
  /** Of seat, backing plate and clamp on the stack [N]. */
  readonly seatForce_N: number;
  readonly plateForce_N: number;
  readonly clampForce_N: number;
  /** Absent where the table has none. */
  readonly stresses?: ShimStresses;
}

/** Along the shims, at the nodes of the shape. */
export interface ShimStresses {
  readonly equivalent_Pa: readonly Float64Array[];
  /** Null where the strength of the metal is not known. */
  readonly yield_Pa: readonly (number | null)[];
}

function stressesBetween(table: StackTable, low: number, high: number, share: number): ShimStresses | undefined {
  if (!table.stresses) return undefined;
  const { equivalent_Pa, yield_Pa } = table.stresses;
  const along = (a: Float64Array, b: Float64Array): Float64Array => a.map((value, i) => between(value, b[i], share));
  return { equivalent_Pa: equivalent_Pa[low].map((a, s) => along(a, equivalent_Pa[high][s])), yield_Pa };
}

function stateBetween(a: ConvergedLift, b: ConvergedLift, share: number): StackState {
  const at = (key: 'seatForce_N' | 'plateForce_N' | 'clampForce_N'): number => between(a[key], b[key], share);
  return {
    pressure_Pa: between(a.pressure_Pa, b.pressure_Pa, share),
    shape: shapeBetween(a, b, share),
    seatOpening_m: between(a.seatOpening_m, b.seatOpening_m, share),
    shimEdgeLift_m: betweenLists(a.shimEdgeLift_m, b.shimEdgeLift_m, share),
    shimStress_Pa: betweenLists(a.shimStress_Pa, b.shimStress_Pa, share),
    seatForce_N: at('seatForce_N'),
    plateForce_N: at('plateForce_N'),
    clampForce_N: at('clampForce_N'),
  };
}

/** The stack at a pressure across its shims; nothing when the table is empty or the pressure lies beyond its end. */
export function stackAt(table: StackTable, pressure_Pa: number): StackState | undefined {
  const found = bracketIn(table, pressure_Pa);
  if (!found) return undefined;
  const { low, high, share } = found;
  const stresses = stressesBetween(table, low, high, share);
  return { ...stateBetween(table.points[low], table.points[high], share), ...(stresses && { stresses }) };
}

/** Points of one direction by rising speed; compression speeds are positive. */
export function pointsOf(curve: ForceCurve, direction: 1 | -1): (ForcePoint | FailedForce)[] {
  return curve.points
    .filter((p) => p.shaftSpeed_m_s * direction > 0)
    .sort((a, b) => Math.abs(a.shaftSpeed_m_s) - Math.abs(b.shaftSpeed_m_s));
}

/** The damper at a speed (>= 0) in one direction; the failed neighbour when one of the two did not solve. */
export function pointAt(curve: ForceCurve, direction: 1 | -1, speed_m_s: number): ForcePoint | FailedForce | undefined {
  const points = pointsOf(curve, direction);
  if (points.length === 0) return undefined;
  const speeds = points.map((p) => Math.abs(p.shaftSpeed_m_s));
  const { low, high, share } = bracket(speeds, speed_m_s);
  const [a, b] = [points[low], points[high]];
  if (!isSolved(a)) return a;
  return isSolved(b) ? pointBetween(a, b, share) : b;
}
