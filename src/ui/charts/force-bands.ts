/** The band of a force curve as areas: one for each unbroken run of speeds that have one. */
import type { Direction } from '../app/places.ts';
import type { ForceCurve } from '../app/solved.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';

export interface BandArea {
  readonly speeds_m_s: readonly number[];
  readonly low_N: readonly number[];
  readonly high_N: readonly number[];
}

/** A speed, and its band where it has one. */
export interface Slice {
  readonly speed_m_s: number;
  readonly low_N?: number;
  readonly high_N?: number;
}

type Banded = Required<Slice>;

const isBanded = (slice: Slice): slice is Banded => slice.low_N !== undefined && slice.high_N !== undefined;

/** Runs of neighbouring speeds that all have a band; one speed alone has no area. */
export function unbroken(slices: readonly Slice[]): BandArea[] {
  const runs: Banded[][] = [[]];
  for (const slice of slices) {
    if (isBanded(slice)) runs[runs.length - 1].push(slice);
    else runs.push([]);
  }
  return runs
    .filter((run) => run.length > 1)
    .map((run) => ({
      speeds_m_s: run.map(({ speed_m_s }) => speed_m_s),
      low_N: run.map(({ low_N }) => low_N),
      high_N: run.map(({ high_N }) => high_N),
    }));
}

/** Empty while the bands of the curve are not solved. */
export function bandAreas(curve: ForceCurve, direction: Direction, withoutGas: boolean): BandArea[] {
  const slices = pointsOf(curve, direction).map((point): Slice => {
    const speed_m_s = Math.abs(point.shaftSpeed_m_s);
    if (!isSolved(point) || point.band?.status !== 'converged') return { speed_m_s };
    const taken_N = withoutGas ? point.gasForce_N : 0;
    const { low_N, high_N } = point.band;
    return { speed_m_s, low_N: low_N - taken_N, high_N: high_N - taken_N };
  });
  return unbroken(slices);
}
