/** Lifts that wave round the circle as areas from trough to crest, one for each unbroken run of solved speeds. */
import type { Series } from './chart-data.ts';
import type { LiftRange } from './shim-series.ts';

export interface WaveArea {
  readonly speeds_m_s: readonly number[];
  readonly low_m: readonly number[];
  readonly high_m: readonly number[];
}

/** None of a line without a range. */
export function waveAreas({ speeds_m_s, range = [] }: Pick<Series, 'speeds_m_s' | 'range'>): WaveArea[] {
  const runs: (LiftRange & { speed_m_s: number })[][] = [[]];
  for (const [i, each] of range.entries()) {
    if (each) runs[runs.length - 1].push({ ...each, speed_m_s: speeds_m_s[i] });
    else runs.push([]);
  }
  return runs
    .filter((run) => run.length > 1)
    .map((run) => ({
      speeds_m_s: run.map(({ speed_m_s }) => speed_m_s),
      low_m: run.map(({ low_m }) => low_m),
      high_m: run.map(({ high_m }) => high_m),
    }));
}
