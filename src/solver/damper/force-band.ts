/**
 * Band of a force curve: what the ranges of the coefficients leave open.
 *   down_i = F - least of F with coefficient i at either end of its range,   up_i likewise,
 *   low = F - sqrt(sum down_i^2),   high = F + sqrt(sum up_i^2)
 * One coefficient at a time, the others at their values, since nothing ties them together; the root of the sum of the squares,
 * since it would be a rare chance that all of them lie at the worst end at once. F itself is always inside. The ranges
 * are ranges and no standard deviations, so the band carries no probability.
 *
 * The stacks know no coefficient: one table of each, long enough for all ends, serves every one of them.
 *
 * symbol  unit  meaning
 * F       N     force at the shaft
 */
import { COEFFICIENT_TABLE, type CoefficientName, type Coefficients } from '../restriction/coefficients.ts';
import type { BandPart, FailedBand, FailedForce, ForceBand, ForcePoint } from './types.ts';

export interface CoefficientRange {
  readonly low: number;
  readonly high: number;
}

/** Ranges that replace those of the coefficient table. */
export type CoefficientRanges = Readonly<Partial<Record<CoefficientName, CoefficientRange>>>;

export interface CoefficientEnd {
  readonly coefficient: CoefficientName;
  readonly coefficients: Coefficients;
}

const NAMES = Object.keys(COEFFICIENT_TABLE) as CoefficientName[];

/** Every coefficient at the two ends of its range, where they differ from its value. */
export function rangeEnds(coefficients: Coefficients, replaced: CoefficientRanges): CoefficientEnd[] {
  return NAMES.flatMap((coefficient) => {
    const { low, high } = replaced[coefficient] ?? COEFFICIENT_TABLE[coefficient];
    const ends = [low, high].filter((end) => end !== coefficients[coefficient]);
    return ends.map((end) => ({ coefficient, coefficients: { ...coefficients, [coefficient]: end } }));
  });
}

type Point = ForcePoint | FailedForce;

/**
 * What each coefficient does at each speed, or why there is no telling.
 * @param pointsWith  the points of the curve with one set of coefficients, on tables that reach its speeds with every end
 */
export function bandParts(
  pointsWith: (coefficients: Coefficients) => readonly Point[],
  coefficients: Coefficients,
  ends: readonly CoefficientEnd[],
): (readonly BandPart[] | FailedBand)[] {
  const middle = pointsWith(coefficients);
  const atEnds = ends.map((end) => pointsWith(end.coefficients));
  return middle.map((point, i) =>
    partsOf(
      point,
      ends.map(({ coefficient }, e) => ({ coefficient, point: atEnds[e][i] })),
    ),
  );
}

function partsOf(
  middle: Point,
  ends: readonly { coefficient: CoefficientName; point: Point }[],
): readonly BandPart[] | FailedBand {
  if (middle.status !== 'converged') return { status: middle.status, reason: middle.reason };
  const changes = new Map<CoefficientName, number[]>(NAMES.map((name) => [name, [0]]));
  for (const { coefficient, point } of ends) {
    if (point.status !== 'converged') return { status: point.status, reason: `${coefficient}: ${point.reason}` };
    changes.get(coefficient)?.push(point.force_N - middle.force_N);
  }
  return [...changes].map(([coefficient, change_N]) => ({
    coefficient,
    down_N: Math.max(...change_N.map((change) => 0 - change)),
    up_N: Math.max(...change_N),
  }));
}

/** The point with the band round its own force. */
export function withBand(point: Point, parts: readonly BandPart[] | FailedBand): Point {
  if (point.status !== 'converged') return point;
  return { ...point, band: 'status' in parts ? parts : bandRound(point.force_N, parts) };
}

function bandRound(force_N: number, parts: readonly BandPart[]): ForceBand {
  const widest = parts.reduce((a, b) => (width(b) > width(a) ? b : a));
  return {
    status: 'converged',
    low_N: force_N - Math.hypot(...parts.map(({ down_N }) => down_N)),
    high_N: force_N + Math.hypot(...parts.map(({ up_N }) => up_N)),
    ...(width(widest) > 0 && { mostFrom: widest.coefficient }),
    parts,
  };
}

const width = ({ down_N, up_N }: BandPart): number => down_N + up_N;
