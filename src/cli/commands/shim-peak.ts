/** Peak stress and reserve of every shim: what `--stress` adds to `shimwright lift`. */
import {
  type ConvergedLift,
  type LiftPoint,
  type ShimStress,
  type ShimUse,
  type StackInput,
  shimUses,
  strengthOf,
} from '../../solver/index.ts';
import { fromSI } from '../../units/convert.ts';
import { type Cell, type Heading, textTable } from '../render/text-table.ts';

/** Reserves are null at rest without preload, and with `takesSet` where the strength of the metal is not known. */
export interface ShimPeak {
  /** Tension is positive. */
  readonly stress_MPa: number;
  readonly radius_mm: number;
  readonly face: 'piston' | 'far';
  readonly direction: 'radial' | 'hoop';
  readonly lifeReserve: number | null;
  readonly yieldReserve: number | null;
  readonly takesSet: boolean | null;
}

/** @param closed the stack without pressure; when it did not solve there is no swing, and no reserve, to tell */
export function shimPeaks(stack: StackInput, closed: LiftPoint, open: ConvergedLift): ShimPeak[] {
  const { stress = [] } = open;
  const rest = closed.status === 'converged' ? closed.stress : undefined;
  const uses = rest ? shimUses(stack.shims, rest, stress) : [];
  return stress.map((shim, s) => peakOf(shim, uses[s] ?? null));
}

function peakOf({ peak }: ShimStress, use: ShimUse | null): ShimPeak {
  return {
    stress_MPa: fromSI(peak.stress_Pa, 'stress', 'MPa'),
    radius_mm: fromSI(peak.radius_m, 'length', 'mm'),
    face: peak.face,
    direction: peak.direction,
    lifeReserve: reserveOf(use?.fatigue),
    yieldReserve: reserveOf(use?.yield),
    takesSet: use && use.yield > 1,
  };
}

const reserveOf = (use: number | undefined): number | null => (use === undefined || use === 0 ? null : 1 / use);

export const PEAK_KEYS = [
  'stress_MPa',
  'radius_mm',
  'face',
  'direction',
  'lifeReserve',
  'yieldReserve',
  'takesSet',
] as const satisfies readonly (keyof ShimPeak)[];

/** One line a pressure: the greatest stress and where it is, and the least reserve of each kind with its shim. */
export function peakTable(
  rows: readonly { pressure_MPa: number; shimPeak?: readonly ShimPeak[] | null }[],
  width: number,
): string {
  const header: Heading[] = [['pressure', 'MPa'], ['peak', 'MPa'], 'in shim', 'face', 'direction', ['radius', 'mm']];
  const reserves = ['life reserve', 'in shim', 'yield reserve', 'in shim'];
  const cells = rows.map(({ pressure_MPa, shimPeak }) => [pressure_MPa, ...worstCells(shimPeak ?? [])]);
  return textTable([...header, ...reserves], cells, { width });
}

function worstCells(peaks: readonly ShimPeak[]): Cell[] {
  const greatest = leastBy(peaks, ({ stress_MPa }) => -Math.abs(stress_MPa));
  const peak = greatest === null ? undefined : peaks[greatest];
  const where = [
    peak?.stress_MPa,
    greatest === null ? null : greatest + 1,
    peak?.face,
    peak?.direction,
    peak?.radius_mm,
  ];
  const least = (['lifeReserve', 'yieldReserve'] as const).flatMap((key): Cell[] => {
    const s = leastBy(peaks, (shim) => shim[key]);
    return s === null ? [null, null] : [peaks[s][key], s + 1];
  });
  return [...where.map((cell) => cell ?? null), ...least];
}

function leastBy(peaks: readonly ShimPeak[], read: (peak: ShimPeak) => number | null): number | null {
  let least: number | null = null;
  let value = Number.POSITIVE_INFINITY;
  peaks.forEach((peak, s) => {
    const now = read(peak);
    if (now !== null && now < value) [least, value] = [s, now];
  });
  return least;
}

/** Warnings of one pressure. */
export function setWarnings(peaks: readonly ShimPeak[], pressure_MPa: number): string[] {
  const yielding = peaks.flatMap(({ takesSet }, s) => (takesSet ? [s + 1] : []));
  if (yielding.length === 0) return [];
  return [`at ${pressure_MPa} MPa: shim ${yielding.join(', ')} will take a set: stressed beyond yield`];
}

/** What the reserves rest on: the limits that are assumed, and the shims that have none. */
export function strengthRemarks({ shims }: StackInput): string[] {
  const unknown = shims.flatMap((shim, s) => (strengthOf(shim) ? [] : [s + 1]));
  const isAssumed = ({ strength = {} }: StackInput['shims'][number]) => Object.keys(strength).length < 3;
  const assumed = shims.find((shim) => isAssumed(shim) && strengthOf(shim));
  const limits = assumed && strengthOf(assumed);
  const MPa = (stress_Pa: number): number => Math.round(fromSI(stress_Pa, 'stress', 'MPa'));
  return [
    ...(limits
      ? [
          `limits that the file leaves open are assumed (common practice): yield ${MPa(limits.yield_Pa)}, tensile ${MPa(limits.tensile_Pa)}, endurance ${MPa(limits.endurance_Pa)} MPa`,
        ]
      : []),
    ...(unknown.length > 0
      ? [`no reserve for shim ${unknown.join(', ')}: the strength of its metal is not given`]
      : []),
  ];
}
