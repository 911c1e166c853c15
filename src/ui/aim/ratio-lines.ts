/** The damping ratios of the builds on show as lines, and what they are at the speed cursor. */
import { computed, signal } from '@preact/signals';
import type { BuildDamping } from '../../../workers/protocol.ts';
import type { Build } from '../../model/project.ts';
import { lineOf } from '../app/lines.ts';
import { inShown, unitOfShown } from '../app/quantities.ts';
import { cursorSpeed, topSpeed, visibleBuilds } from '../app/store.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { ShownLine } from '../charts/chart-model.ts';
import type { PlotView } from '../charts/plot-layout.ts';
import { aimWords } from '../text/aim.ts';
import { text } from '../text/en.ts';
import { reading } from './chassis-solve.ts';
import { valueAt } from './value-at.ts';

export type RatioMeasure = 'secant' | 'tangent';
export const ratioMeasure = signal<RatioMeasure>('secant');

export type Way = 1 | -1;

interface BuildRatios {
  readonly build: Build;
  readonly damping: BuildDamping;
}

export const ratios = computed<BuildRatios[]>(() => {
  const now = reading.value;
  const swing = now?.status === 'read' && 'builds' in now.swing ? now.swing : undefined;
  return visibleBuilds.value.flatMap((build) => {
    const damping = swing?.builds[build.id];
    return damping ? [{ build, damping }] : [];
  });
});

const REBOUND_WIDTH = 1.25;

/** Of one direction, by the size of the speed, rising. */
function inWay(damping: BuildDamping, values: readonly (number | null)[], way: Way): [number, number | null][] {
  const points = damping.shaftSpeed_m_s.flatMap((speed, i): [number, number | null][] =>
    speed * way > 0 ? [[Math.abs(speed), values[i]]] : [],
  );
  return points.sort(([a], [b]) => a - b);
}

export const ratioLines = computed<ShownLine[]>(() =>
  ratios.value.flatMap(({ build, damping }) =>
    ([1, -1] as const).map((way) => {
      const points = inWay(damping, damping[ratioMeasure.value], way);
      const label = text.chart.ofWay(build.name, way === 1 ? text.chart.compression : text.chart.rebound);
      return {
        ...lineOf(build.id),
        buildId: build.id,
        part: way === 1 ? 'compression' : 'rebound',
        label,
        name: label,
        named: true,
        marks: [],
        x: points.map(([speed]) => inShown('speed', speed)),
        y: points.map(([, ratio]) => ratio),
        width: way === 1 ? 2.25 : REBOUND_WIDTH,
        faded: false,
      };
    }),
  ),
);

/** Near rest friction alone makes the secant as large as one likes: the axis leaves that to run out of the chart. */
const SETTLED_SHARE = 0.08;

export const ratioView = computed<PlotView>(() => {
  const top = inShown('speed', topSpeed.value);
  const settled = ratioLines.value.flatMap(({ x, y }) => y.filter((_, i) => x[i] >= top * SETTLED_SHARE));
  return {
    areas: [],
    lines: ratioLines.value,
    xRange: [0, top],
    yRange: rangeOf(settled),
    xTitle: text.chart.speedAxis(unitOfShown('speed')),
    yTitle: aimWords.ratio.axis,
  };
});

export interface RatioAtCursor {
  readonly build: Build;
  readonly way: Way;
  readonly secant?: number;
  readonly tangent?: number;
  /** At the wheel, all dampers of this end [N]. */
  readonly wheelForce_N?: number;
}

export const atCursor = computed<RatioAtCursor[]>(() =>
  ratios.value.flatMap(({ build, damping }) =>
    ([1, -1] as const).map((way) => {
      const at = (values: readonly (number | null)[]): number | undefined =>
        valueAt(inWay(damping, values, way), cursorSpeed.value);
      return {
        build,
        way,
        secant: at(damping.secant),
        tangent: at(damping.tangent),
        wheelForce_N: at(damping.wheelForce_N),
      };
    }),
  ),
);
