/** A sweep in the person's units, as the chart and its exports draw it. */

import { lineOf } from '../app/lines.ts';
import { gasForce } from '../app/preferences.ts';
import { inShown, unitOfShown } from '../app/quantities.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { ShownLine } from '../charts/chart-model.ts';
import type { PlotView } from '../charts/plot-layout.ts';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import type { SweepCurve } from './sweep-curves.ts';

const WIDTH = 2.25;
const LEVEL_WIDTH = 1.25;
/** Up to so many clicks each has its number [clicks]. */
const NUMBERED = 12;

function lineFor({ build, way, at, force_N, isLevel, stale }: SweepCurve, sweep: Sweep): ShownLine {
  return {
    buildId: build.id,
    part: way === 1 ? 'compression' : 'rebound',
    label: isLevel ? text.sweep.level(build.name) : build.name,
    named: way === 1,
    name: isLevel ? text.sweep.level(build.name) : build.name,
    x: at.map(sweep.toShown),
    y: force_N.map((force) => (force === null ? null : inShown('force', force))),
    ...lineOf(build.id),
    width: isLevel ? LEVEL_WIDTH : WIDTH,
    faded: stale,
    marks: [],
  };
}

export const sweepLines = (sweep: Sweep): ShownLine[] =>
  sweep.curves.value.filter(({ at }) => at.length > 0).map((curve) => lineFor(curve, sweep));

/** Where a build stands along the sweep, in both directions. */
export interface SetMark {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly colour: string;
}

export const setMarks = (sweep: Sweep): SetMark[] =>
  sweep.curves.value.flatMap(({ build, way, set }) =>
    set
      ? [
          {
            id: `${build.id} ${way === 1 ? 'compression' : 'rebound'}`,
            x: sweep.toShown(set.at),
            y: inShown('force', set.force_N),
            colour: lineOf(build.id).colour,
          },
        ]
      : [],
  );

export function sweepView(sweep: Sweep, lines: readonly ShownLine[]): PlotView {
  const [from, to] = sweep.range.value.map(sweep.toShown);
  const title = gasForce.value === 'subtracted' ? text.chart.forceWithoutGasAxis : text.chart.forceAxis;
  return {
    areas: [],
    lines,
    plainZero: true,
    ...(sweep.name === 'clicks' && to <= NUMBERED && { xStep: 1 }),
    xRange: [from, to],
    yRange: rangeOf(lines.flatMap(({ y }) => y)),
    xTitle: sweep.axis(),
    yTitle: title(unitOfShown('force')),
  };
}
