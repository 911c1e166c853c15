/** What stands over the lines of a sweep: names, where the builds are set, and where the document has no data. */
import type { JSX } from 'preact';
import type { ShownLine } from '../charts/chart-model.ts';
import { LineNames } from '../charts/name-layer.tsx';
import { MARGIN, type PlotView } from '../charts/plot-layout.ts';
import { type Frame, scalesOf } from '../charts/plot-scales.ts';
import { text } from '../text/en.ts';
import type { Sweep } from './sweep.ts';
import { setMarks } from './sweep-lines.ts';

interface LayerProps {
  readonly sweep: Sweep;
  readonly view: PlotView;
  readonly frame: Frame;
}

/** The parts of the axis that lie outside the data. */
function Unknown({ sweep, view, frame }: LayerProps): JSX.Element | null {
  if (!sweep.known) return null;
  const { x } = scalesOf(view, frame);
  const [low, high] = sweep.known.value.map(sweep.toShown);
  const clipped = (value: number): number => Math.min(Math.max(value, view.xRange[0]), view.xRange[1]);
  const sides = [
    [view.xRange[0], clipped(low)],
    [clipped(high), view.xRange[1]],
  ].filter(([from, to]) => to > from);
  return (
    <g class="unknown">
      {sides.map(([from, to]) => (
        <rect key={from} x={x(from)} y={MARGIN.t} width={x(to) - x(from)} height={frame.height - MARGIN.t - MARGIN.b} />
      ))}
    </g>
  );
}

function SetLine({ sweep, view, frame }: LayerProps): JSX.Element | null {
  if (!sweep.set) return null;
  const at = scalesOf(view, frame).x(sweep.toShown(sweep.set.value));
  const isRight = at > frame.width * 0.7;
  return (
    <g class="set-line">
      <path d={`M${at} ${MARGIN.t}V${frame.height - MARGIN.b}`} />
      <text x={at + (isRight ? -5 : 5)} y={frame.height - MARGIN.b - 6} text-anchor={isRight ? 'end' : 'start'}>
        {text.sweep.set(sweep.inWords(sweep.set.value))}
      </text>
    </g>
  );
}

export function SweepLayer(props: LayerProps & { readonly lines: readonly ShownLine[] }): JSX.Element {
  const { sweep, view, frame, lines } = props;
  const { x, y } = scalesOf(view, frame);
  return (
    <svg class="sweep-layer" width={frame.width} height={frame.height} aria-hidden="true">
      <Unknown {...props} />
      <SetLine {...props} />
      <LineNames lines={lines} view={view} frame={frame} />
      {setMarks(sweep).map((mark) => (
        <circle
          key={mark.id}
          class="cut"
          data-set={mark.id}
          cx={x(mark.x)}
          cy={y(mark.y)}
          r={4.5}
          stroke={mark.colour}
        />
      ))}
    </svg>
  );
}
