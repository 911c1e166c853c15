/** The loops of the builds on show, force over position and over speed, and over time along a trace, in the person's units. */
import { computed, type ReadonlySignal } from '@preact/signals';
import { motion, stroke_mm } from '../app/cycle-motion.ts';
import { type CycleReading, cycleOf } from '../app/cycle-solve.ts';
import { hysteresisOf } from '../app/hysteresis-solve.ts';
import { lineOf, marksOf } from '../app/lines.ts';
import { inShown, type ShownKind, unitOfShown } from '../app/quantities.ts';
import { visibleBuilds } from '../app/store.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { PlotDots, PlotLine, PlotView } from '../charts/plot-layout.ts';
import { thinned } from '../charts/thin.ts';
import { text } from '../text/en.ts';

export type LoopAxis = 'time' | 'position' | 'speed';

interface Across {
  readonly of: (loop: CycleReading['loop']) => ArrayLike<number>;
  readonly shown: (si: number) => number;
  readonly title: () => string;
  /** With nothing driven yet. */
  readonly empty: () => [number, number];
}

/** Of a line; a chart has fewer pixels across. */
const MOST_POINTS = 3000;

const inUnit = (kind: ShownKind) => (si: number) => inShown(kind, si);

const ACROSS: Readonly<Record<LoopAxis, Across>> = {
  time: { of: (loop) => loop.time_s, shown: (time) => time, title: () => text.cycle.timeAxis, empty: () => [0, 1] },
  position: {
    of: (loop) => loop.position_m,
    shown: inUnit('position'),
    title: () => text.cycle.positionAxis(unitOfShown('position')),
    empty: () => [0, stroke_mm.value],
  },
  speed: {
    of: (loop) => loop.speed_m_s,
    shown: inUnit('speed'),
    title: () => text.chart.speedAxis(unitOfShown('speed')),
    empty: () => [-1, 1],
  },
};

function linesOver({ of, shown }: Across): PlotLine[] {
  return visibleBuilds.value.flatMap((build) => {
    const { reading, stale } = cycleOf(build);
    if (!reading) return [];
    const { loop } = reading;
    const along = of(loop);
    const kept = thinned(along, loop.force_N, MOST_POINTS);
    return [
      {
        x: kept.map((k) => shown(along[k])),
        y: kept.map((k) => inShown('force', loop.force_N[k])),
        name: build.name,
        ...lineOf(build.id),
        width: 2,
        faded: stale,
      },
    ];
  });
}

/** On the loops over speed: where the hysteresis is read, on the way up and on the way down. */
const hysteresisDots = (): PlotDots[] =>
  visibleBuilds.value.flatMap((build) => {
    const { reading } = cycleOf(build);
    const read = reading && hysteresisOf(reading);
    if (!read) return [];
    const points = [read.compression, read.rebound].flatMap((each) =>
      each ? [each.accelerating_N, each.decelerating_N].map((force_N) => ({ at: each.speed_m_s, force_N })) : [],
    );
    if (points.length === 0) return [];
    return [
      {
        kind: 'point',
        x: points.map(({ at }) => inShown('speed', at)),
        y: points.map(({ force_N }) => inShown('force', force_N)),
        name: build.name,
        ...marksOf(build.id),
      },
    ];
  });

/** A little room at both ends. */
function rangeAcross(lines: readonly PlotLine[]): [number, number] | undefined {
  const xs = lines.flatMap(({ x }) => x);
  if (xs.length === 0) return undefined;
  const [low, high] = xs.reduce(([a, b], x) => [Math.min(a, x), Math.max(b, x)], [xs[0], xs[0]]);
  const room = (high - low) * 0.04;
  return [low - room, high + room];
}

function viewOver(axis: LoopAxis): ReadonlySignal<PlotView> {
  const across = ACROSS[axis];
  // Apart from the marks, which come and go while a speed is typed.
  const drawn = computed(() => linesOver(across));
  return computed<PlotView>(() => {
    const lines = drawn.value;
    return {
      areas: [],
      lines,
      ...(axis === 'speed' && { dots: hysteresisDots() }),
      xRange: rangeAcross(lines) ?? across.empty(),
      yRange: rangeOf(lines.flatMap(({ y }) => y)),
      xTitle: across.title(),
      yTitle: text.chart.forceAxis(unitOfShown('force')),
    };
  });
}

export const loopViews: Readonly<Record<LoopAxis, ReadonlySignal<PlotView>>> = {
  time: viewOver('time'),
  position: viewOver('position'),
  speed: viewOver('speed'),
};

/** A cycle closes, and over time would be one stroke like the next; a trace is a story in time. */
export const loopAxes = computed<readonly LoopAxis[]>(() =>
  motion.value === 'trace' ? ['time', 'position', 'speed'] : ['position', 'speed'],
);
