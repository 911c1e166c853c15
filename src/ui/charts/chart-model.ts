/** The chart on show as signals: lines in the person's units, and where the cursor cuts each. */
import { computed, signal } from '@preact/signals';
import { STANDARD_ATMOSPHERE_PA } from '../../units/si.ts';
import { lineOf } from '../app/lines.ts';
import { inShown, type ShownKind, unitOfShown } from '../app/quantities.ts';
import { type Outcome, outcomes } from '../app/solve.ts';
import { cursorSpeed, direction, topSpeed, visibleBuilds } from '../app/store.ts';
import { bracket } from '../section/shape-at.ts';
import { text } from '../text/en.ts';
import { type ChartName, rangeOf, type Series, seriesOf, wavesFrom } from './chart-data.ts';
import type { PlotLine, PlotView } from './plot-layout.ts';

export const CHARTS: readonly ChartName[] = ['force', 'paths', 'pressures', 'opening'];
export const chart = signal<ChartName>('force');

export interface ShownLine extends PlotLine {
  readonly buildId: string;
  readonly label: string;
  readonly part: Series['part'];
  /** Speed from which the rim ruffles: the line goes on, outside the proven range. */
  readonly wavesFrom?: number;
}

interface Scale {
  readonly yTitle: string;
  readonly toShown: (si: number) => number;
}

function scaleOf(name: ChartName): Scale {
  const quantity = (shown: ShownKind, title: (unit: string) => string, from = 0): Scale => ({
    yTitle: title(unitOfShown(shown)),
    toShown: (si) => inShown(shown, si - from),
  });
  switch (name) {
    case 'force':
      return quantity('force', text.chart.forceAxis);
    case 'paths':
      return { yTitle: text.chart.pathsAxis, toShown: (share) => share * 100 };
    case 'pressures':
      return quantity('pressure', text.chart.pressuresAxis, STANDARD_ATMOSPHERE_PA);
    case 'opening':
      return quantity('lift', text.chart.openingAxis);
  }
}

function labelOf(name: string, part: Series['part']): string {
  if (part === 'compressionChamber') return `${name}, ${text.chart.compressionChamber}`;
  return part === 'reboundChamber' ? `${name}, ${text.chart.reboundChamber}` : name;
}

function onsetOf({ part }: Series, { curve }: Outcome): number | undefined {
  const way = part === 'compression' ? 1 : part === 'rebound' ? -1 : direction.value;
  const speed = curve && wavesFrom(curve, way);
  return speed === undefined ? undefined : inShown('speed', speed);
}

function lineFor(series: Series, outcome: Outcome, buildName: string, toShown: Scale['toShown']): ShownLine {
  const { colour, dash } = lineOf(series.buildId);
  const label = labelOf(buildName, series.part);
  return {
    buildId: series.buildId,
    part: series.part,
    label,
    name: label,
    x: series.speeds_m_s.map((speed) => inShown('speed', speed)),
    y: series.values.map((value) => (value === null ? null : toShown(value))),
    colour,
    dash,
    width: series.part === 'reboundChamber' ? 1.25 : 2.25,
    faded: outcome.stale,
    wavesFrom: onsetOf(series, outcome),
  };
}

export const shownLines = computed<ShownLine[]>(() => {
  const { toShown } = scaleOf(chart.value);
  return visibleBuilds.value.flatMap((build) => {
    const outcome = outcomes.value.get(build.id);
    if (!outcome?.curve) return [];
    return seriesOf(chart.value, build.id, outcome.curve, direction.value).map((series) =>
      lineFor(series, outcome, build.name, toShown),
    );
  });
});

export const plotView = computed<PlotView>(() => ({
  lines: shownLines.value,
  xRange: [0, inShown('speed', topSpeed.value)],
  yRange: rangeOf(shownLines.value.flatMap((line) => line.y)),
  xTitle: text.chart.speedAxis(unitOfShown('speed')),
  yTitle: scaleOf(chart.value).yTitle,
}));

/** The line at a speed: between two solved speeds, straight. */
export function cut(line: ShownLine, x: number): number | undefined {
  if (line.x.length === 0) return undefined;
  const { low, high, share } = bracket(line.x, x);
  const [a, b] = [line.y[low], line.y[high]];
  return a === null || b === null ? undefined : a + (b - a) * share;
}

export interface CursorCut {
  readonly line: ShownLine;
  readonly y: number;
}

export const cursorCuts = computed<CursorCut[]>(() => {
  const x = inShown('speed', cursorSpeed.value);
  return shownLines.value.flatMap((line) => {
    const y = cut(line, x);
    return y === undefined ? [] : [{ line, y }];
  });
});
