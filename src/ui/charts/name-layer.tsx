/** The names of the lines, beside them. */
import type { JSX } from 'preact';
import type { ShownLine } from './chart-model.ts';
import { namedBriefly, placeNames } from './line-names.ts';
import { MARGIN, type PlotView } from './plot-layout.ts';
import { type Frame, scalesOf } from './plot-scales.ts';

interface NamesProps {
  readonly lines: readonly ShownLine[];
  readonly view: PlotView;
  readonly frame: Frame;
}

export function LineNames({ lines, view, frame }: NamesProps): JSX.Element {
  const room = { top: MARGIN.t + 9, bottom: frame.height - MARGIN.b - 4 };
  const named = namedBriefly(lines, frame.width - MARGIN.l - MARGIN.r);
  return (
    <g class="names">
      {placeNames(named, scalesOf(view, frame), room).map(({ line, y }) => (
        <text key={`${line.buildId}-${line.part}`} x={frame.width - MARGIN.r - 4} y={y} fill={line.colour}>
          {line.label}
        </text>
      ))}
    </g>
  );
}
