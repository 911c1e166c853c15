/** The loops of the builds on show, force over position and over speed, in the person's units. */
import { computed } from '@preact/signals';
import { cycleOf, stroke_mm } from '../app/cycle-solve.ts';
import { lineOf } from '../app/lines.ts';
import { inShown, type ShownKind, unitOfShown } from '../app/quantities.ts';
import { visibleBuilds } from '../app/store.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { PlotLine, PlotView } from '../charts/plot-layout.ts';
import { text } from '../text/en.ts';

export type LoopAxis = 'position' | 'speed';

function loopsOver(axis: LoopAxis): PlotLine[] {
  const kind: ShownKind = axis === 'position' ? 'position' : 'speed';
  return visibleBuilds.value.flatMap((build) => {
    const answer = cycleOf(build);
    if (answer.status !== 'finished') return [];
    const { position_m, speed_m_s, force_N } = answer.reading.loop;
    const across = axis === 'position' ? position_m : speed_m_s;
    return [
      {
        x: Array.from(across, (value) => inShown(kind, value)),
        y: Array.from(force_N, (value) => inShown('force', value)),
        name: build.name,
        ...lineOf(build.id),
        width: 2,
        faded: answer.stale,
      },
    ];
  });
}

/** A little room at both ends; with no loop yet, the stroke alone. */
function acrossRange(axis: LoopAxis, lines: readonly PlotLine[]): [number, number] {
  const xs = lines.flatMap(({ x }) => x);
  if (xs.length === 0) return axis === 'position' ? [0, stroke_mm.value] : [-1, 1];
  const [low, high] = [Math.min(...xs), Math.max(...xs)];
  const room = (high - low) * 0.04;
  return [low - room, high + room];
}

const viewOver = (axis: LoopAxis) =>
  computed<PlotView>(() => {
    const lines = loopsOver(axis);
    const title = axis === 'position' ? text.cycle.positionAxis : text.chart.speedAxis;
    return {
      areas: [],
      lines,
      xRange: acrossRange(axis, lines),
      yRange: rangeOf(lines.flatMap(({ y }) => y)),
      xTitle: title(unitOfShown(axis === 'position' ? 'position' : 'speed')),
      yTitle: text.chart.forceAxis(unitOfShown('force')),
    };
  });

export const overPosition = viewOver('position');
export const overSpeed = viewOver('speed');
