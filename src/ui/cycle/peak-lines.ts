/** Force at the peak speed of each stroke, over the force curve that knows no lag, in the person's units. */
import { computed } from '@preact/signals';
import type { Build } from '../../model/project.ts';
import { lineOf, marksOf } from '../app/lines.ts';
import { peaksOf } from '../app/peak-solve.ts';
import type { Direction } from '../app/places.ts';
import { inShown, unitOfShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { visibleBuilds } from '../app/store.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { PlotDots, PlotLine, PlotView } from '../charts/plot-layout.ts';
import { isSolved, pointsOf } from '../section/shape-at.ts';
import { text } from '../text/en.ts';

/** The peaks of one build in one direction. */
export interface PeakCurve {
  readonly build: Build;
  readonly way: Direction;
  /** Peak speeds in compression, rising: one a stroke [m/s]. */
  readonly at: readonly number[];
  readonly frequencies_Hz: readonly number[];
  readonly force_N: readonly number[];
  readonly stale: boolean;
}

export const WAYS: readonly Direction[] = [1, -1];

function curveOf(build: Build, way: Direction): PeakCurve {
  const driven = peaksOf(build).flatMap(({ peaks, frequency_Hz, stale }) =>
    peaks ? [{ peaks, frequency_Hz, stale }] : [],
  );
  return {
    build,
    way,
    at: driven.map(({ peaks }) => peaks.compression.speed_m_s),
    frequencies_Hz: driven.map(({ frequency_Hz }) => frequency_Hz),
    force_N: driven.map(({ peaks }) => (way === 1 ? peaks.compression : peaks.rebound).force_N),
    stale: driven.some(({ stale }) => stale),
  };
}

export const peakCurves = computed<readonly PeakCurve[]>(() =>
  visibleBuilds.value.flatMap((build) => WAYS.map((way) => curveOf(build, way))),
);

const dotsOf = ({ build, at, force_N }: PeakCurve): PlotDots => ({
  kind: 'point',
  x: at.map((speed) => inShown('speed', speed)),
  y: force_N.map((force) => inShown('force', force)),
  name: build.name,
  ...marksOf(build.id),
});

/** The curve without lag, as far as the peaks go. */
function steadyLine(build: Build, way: Direction, upTo_m_s: number): PlotLine[] {
  const outcome = outcomes.value.get(build.id);
  if (!outcome?.curve) return [];
  const points = pointsOf(outcome.curve, way).filter(({ shaftSpeed_m_s }) => Math.abs(shaftSpeed_m_s) <= upTo_m_s);
  return [
    {
      x: points.map(({ shaftSpeed_m_s }) => inShown('speed', Math.abs(shaftSpeed_m_s))),
      y: points.map((point) => (isSolved(point) ? inShown('force', point.force_N) : null)),
      name: build.name,
      ...lineOf(build.id),
      width: 1.5,
      faded: outcome.stale,
    },
  ];
}

/** Room beyond the fastest stroke. */
const ROOM = 1.04;

export const peakView = computed<PlotView>(() => {
  const curves = peakCurves.value;
  const fastest = curves.flatMap(({ at }) => at).reduce((a, b) => Math.max(a, b), 0);
  const upTo_m_s = fastest * ROOM;
  const lines = curves.flatMap(({ build, way }) => steadyLine(build, way, upTo_m_s));
  const dots = curves.map(dotsOf);
  return {
    areas: [],
    lines,
    dots,
    xRange: [0, fastest > 0 ? inShown('speed', upTo_m_s) : 1],
    yRange: rangeOf([...lines.flatMap(({ y }) => y), ...dots.flatMap(({ y }) => y)]),
    xTitle: text.cycle.peaks.axis(unitOfShown('speed')),
    yTitle: text.chart.forceAxis(unitOfShown('force')),
  };
});
