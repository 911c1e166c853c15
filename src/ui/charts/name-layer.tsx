/** The names of the lines, beside them. */
import type { JSX } from 'preact';
import type { ShownLine } from './chart-model.ts';
import { namedBriefly, placeNames } from './line-names.ts';
import { MARGIN, type PlotView } from './plot-layout.ts';
import { type Frame, scalesOf } from './plot-scales.ts';
import type { Box } from './strokes.ts';

interface NamesProps {
  readonly lines: readonly ShownLine[];
  readonly view: PlotView;
  readonly frame: Frame;
  /** Other words in the chart, which the names leave free. */
  readonly taken?: readonly Box[];
}

export function LineNames({ lines, view, frame, taken }: NamesProps): JSX.Element {
  const room = {
    left: MARGIN.l + 4,
    right: frame.width - MARGIN.r - 4,
    top: MARGIN.t + 9,
    bottom: frame.height - MARGIN.b - 4,
  };
  const named = namedBriefly(lines, frame.width - MARGIN.l - MARGIN.r);
  return (
    <g class="names">
      {placeNames(named, scalesOf(view, frame), room, taken).map(({ line, x, y }) => (
        <text key={`${line.buildId}-${line.part}`} x={x} y={y} fill={line.colour}>
          {line.label}
        </text>
      ))}
    </g>
  );
}
