/** The speed cursor over a chart: drag anywhere, or use the keys on its handle. */
import type { JSX } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import { fromShown, inShown, show } from '../app/quantities.ts';
import { cursorSpeed, setCursor, topSpeed } from '../app/store.ts';
import { text } from '../text/en.ts';
import { plotView, shownAim, shownLevels, shownLines } from './chart-model.ts';
import { cursorCuts, cut } from './cursor-cuts.ts';
import { cursorDrag } from './cursor-drag.ts';
import { levelWords } from './level-words.ts';
import { LineNames } from './name-layer.tsx';
import { MARGIN } from './plot-layout.ts';
import { type Frame, scalesOf } from './plot-scales.ts';

/** Steps by key, as a part of the whole axis. */
const STEP = 1 / 100;
const LONG_STEP = 1 / 10;

const scales = (frame: Frame) => scalesOf(plotView.value, frame);

function stepFor(event: KeyboardEvent): number | undefined {
  const step = topSpeed.value * (event.shiftKey ? LONG_STEP : STEP);
  const now = cursorSpeed.value;
  const moves: Record<string, number> = {
    ArrowRight: now + step,
    ArrowUp: now + step,
    ArrowLeft: now - step,
    ArrowDown: now - step,
    PageUp: now + topSpeed.value * LONG_STEP,
    PageDown: now - topSpeed.value * LONG_STEP,
    Home: 0,
    End: topSpeed.value,
  };
  return moves[event.key];
}

function onKeyDown(event: KeyboardEvent): void {
  const speed = stepFor(event);
  if (speed === undefined) return;
  event.preventDefault();
  setCursor(speed);
}

/** Where each line leaves the proven range, or is held. */
function Marks({ frame }: { frame: Frame }): JSX.Element {
  const { x, y } = scales(frame);
  return (
    <g class="onsets">
      {shownLines.value.flatMap((line) =>
        line.marks.map((mark) => {
          const value = cut(line, mark.x);
          if (value === undefined) return null;
          return (
            <text
              key={`${line.buildId}-${line.part}-${mark.sign}`}
              data-mark={`${line.part} ${mark.sign}`}
              x={x(mark.x)}
              y={y(value) + 5}
              fill={line.colour}
            >
              {mark.sign}
            </text>
          );
        }),
      )}
    </g>
  );
}

const wordsOfLevels = (frame: Frame) => levelWords(shownLevels.value, scales(frame), frame);

/** Pressures that the lines are measured against. */
function Levels({ frame }: { frame: Frame }): JSX.Element {
  return (
    <g class="levels">
      {wordsOfLevels(frame).map(({ level: { id, label }, lineY, x, y }) => (
        <g key={id} class={id} data-level={id}>
          <path d={`M${MARGIN.l} ${lineY}H${frame.width - MARGIN.r}`} />
          <text x={x} y={y}>
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}

function Cuts({ frame }: { frame: Frame }): JSX.Element {
  const { x, y } = scales(frame);
  const at = x(inShown('speed', cursorSpeed.value));
  return (
    <g>
      <path class="cursor-line" d={`M${at} ${MARGIN.t}V${frame.height - MARGIN.b}`} />
      {cursorCuts.value.map(({ line, y: value }) => (
        <circle key={`${line.buildId}-${line.part}`} class="cut" cx={at} cy={y(value)} r={4} stroke={line.colour} />
      ))}
    </g>
  );
}

function Handle({ frame }: { frame: Frame }): JSX.Element {
  const left = scales(frame).x(inShown('speed', cursorSpeed.value));
  return (
    <div
      class="cursor-handle"
      style={{ left: `${left}px`, top: `${frame.height - MARGIN.b}px` }}
      role="slider"
      tabIndex={0}
      aria-label={text.chart.cursor}
      aria-valuemin={0}
      aria-valuemax={topSpeed.value}
      aria-valuenow={Number(cursorSpeed.value.toFixed(3))}
      aria-valuetext={show('speed', cursorSpeed.value)}
      title={text.chart.cursorKeys}
      onKeyDown={onKeyDown}
    >
      <span>{show('speed', cursorSpeed.value)}</span>
    </div>
  );
}

export function CursorLayer(frame: Frame): JSX.Element {
  const shown = useRef(frame);
  shown.current = frame;
  const drag = useMemo(() => cursorDrag((x) => setCursor(fromShown('speed', scales(shown.current).valueAt(x)))), []);
  return (
    <div class="cursor-layer" {...drag}>
      <svg width={frame.width} height={frame.height} aria-hidden="true">
        <Levels frame={frame} />
        <Marks frame={frame} />
        <LineNames
          lines={[...shownLines.value, ...shownAim.value]}
          view={plotView.value}
          frame={frame}
          taken={wordsOfLevels(frame).map(({ box }) => box)}
        />
        <Cuts frame={frame} />
      </svg>
      <Handle frame={frame} />
    </div>
  );
}
