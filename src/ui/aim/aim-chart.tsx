/** The force chart of the aim: the builds without gas, the aim, and its points to be dragged. */
import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { Aim, AimPoint } from '../../model/project.ts';
import { editOrTell } from '../app/edit-or-tell.ts';
import { lineOf } from '../app/lines.ts';
import { fromShown, inShown, show, unitOfShown } from '../app/quantities.ts';
import { outcomes } from '../app/solve.ts';
import { topSpeed, visibleBuilds } from '../app/store.ts';
import { useSize } from '../app/use-size.ts';
import { aimLines } from '../charts/aim-line.ts';
import { rangeOf } from '../charts/chart-data.ts';
import type { ShownLine } from '../charts/chart-model.ts';
import { LineNames } from '../charts/name-layer.tsx';
import { Plot } from '../charts/plot.tsx';
import { MARGIN, type PlotView } from '../charts/plot-layout.ts';
import { type Frame, scalesOf } from '../charts/plot-scales.ts';
import { aimWords } from '../text/aim.ts';
import { text } from '../text/en.ts';
import { movedPoint, nearestPlace, type Place, stepOf } from './aim-points.ts';
import { chosenAim, withPoints } from './aim-store.ts';
import { dampingOf } from './chassis-solve.ts';

const words = aimWords.aims;

const buildLines = computed<ShownLine[]>(() =>
  visibleBuilds.value.flatMap((build) => {
    const curve = outcomes.value.get(build.id)?.curve;
    if (!curve) return [];
    const { shaftSpeed_m_s, force_N } = dampingOf(curve);
    return ([1, -1] as const).map((way): ShownLine => {
      const at = [...shaftSpeed_m_s.keys()].filter((i) => shaftSpeed_m_s[i] * way > 0);
      if (way === -1) at.reverse();
      return {
        ...lineOf(build.id),
        buildId: build.id,
        part: way === 1 ? 'compression' : 'rebound',
        label: build.name,
        name: build.name,
        named: way === 1,
        marks: [],
        x: at.map((i) => inShown('speed', Math.abs(shaftSpeed_m_s[i]))),
        y: at.map((i) => {
          const force = force_N[i];
          return force === null ? null : inShown('force', force);
        }),
        width: 1.75,
        faded: false,
      };
    });
  }),
);

const lines = computed<ShownLine[]>(() => [
  ...buildLines.value,
  ...(chosenAim.value ? aimLines(chosenAim.value, 0) : []),
]);

const fastest = computed(() => {
  const speeds = chosenAim.value?.points.map(({ shaftSpeed_m_s }) => Math.abs(shaftSpeed_m_s)) ?? [];
  return Math.max(topSpeed.value, ...speeds);
});

const view = computed<PlotView>(() => ({
  areas: [],
  lines: lines.value,
  xRange: [0, inShown('speed', fastest.value)],
  yRange: rangeOf(lines.value.flatMap(({ y }) => y)),
  xTitle: text.chart.speedAxis(unitOfShown('speed')),
  yTitle: text.chart.forceWithoutGasAxis(unitOfShown('force')),
}));

let gestures = 0;

function put(aim: Aim, at: number, wanted: AimPoint, session: string): void {
  editOrTell(() => withPoints(aim.id, movedPoint(aim.points, at, wanted)), words.move, session);
}

/** Where a point stands on the board [px]. */
function placeOf({ shaftSpeed_m_s, force_N }: AimPoint, frame: Frame): Place {
  const { x, y } = scalesOf(view.value, frame);
  return { x: x(inShown('speed', Math.abs(shaftSpeed_m_s))), y: y(inShown('force', force_N)) };
}

interface HandleProps {
  readonly aim: Aim;
  readonly at: number;
  readonly frame: Frame;
  /** Which point is in hand, of all on the board. */
  readonly held: { current: number | undefined };
}

/** Takes the point nearest to the press, since the reaches of points that lie close overlap. */
function take(event: PointerEvent, aim: Aim, frame: Frame, held: HandleProps['held']): void {
  const board = (event.currentTarget as HTMLElement).parentElement;
  if (!board) return;
  const { left, top } = board.getBoundingClientRect();
  const pressed = { x: event.clientX - left, y: event.clientY - top };
  const nearest = nearestPlace(
    aim.points.map((point) => placeOf(point, frame)),
    pressed,
  );
  const handle = board.querySelectorAll<HTMLElement>('.aim-handle')[nearest];
  held.current = nearest;
  // Away and back: another drag is another step of undo.
  handle.blur();
  handle.focus({ preventScroll: true });
  handle.setPointerCapture(event.pointerId);
}

function Handle({ aim, at, frame, held }: HandleProps): JSX.Element {
  const session = useRef('');
  const { shaftSpeed_m_s, force_N } = aim.points[at];
  const { valueAt } = scalesOf(view.value, frame);
  const [low, high] = view.value.yRange;
  const place = placeOf(aim.points[at], frame);
  const begin = (): void => {
    gestures++;
    session.current = `${aim.id} point ${gestures}`;
  };
  const drag = (event: PointerEvent): void => {
    const board = (event.currentTarget as HTMLElement).parentElement?.getBoundingClientRect();
    if (!board || held.current !== at) return;
    const height = frame.height - MARGIN.t - MARGIN.b;
    const up = high - ((event.clientY - board.top - MARGIN.t) / height) * (high - low);
    const speed = Math.abs(fromShown('speed', valueAt(event.clientX - board.left)));
    const wanted = { shaftSpeed_m_s: Math.sign(shaftSpeed_m_s) * speed, force_N: fromShown('force', up) };
    put(aim, at, wanted, session.current);
  };
  const release = (): void => {
    held.current = undefined;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = stepOf(event.key, event.shiftKey);
    if (!step) return;
    event.preventDefault();
    const speed = shaftSpeed_m_s + Math.sign(shaftSpeed_m_s) * step.speed_m_s;
    put(aim, at, { shaftSpeed_m_s: speed, force_N: force_N + step.force_N }, session.current);
  };
  return (
    <div
      class="aim-handle"
      style={{ left: `${place.x}px`, top: `${place.y}px` }}
      role="slider"
      tabIndex={0}
      aria-label={words.point(at + 1)}
      aria-valuenow={Math.round(force_N)}
      aria-valuetext={words.pointValue(show('speed', shaftSpeed_m_s), show('force', force_N))}
      title={words.pointKeys}
      onFocus={begin}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => take(event, aim, frame, held)}
      // The press has chosen what takes the keyboard; the browser would choose what lies on top.
      onMouseDown={(event) => event.preventDefault()}
      onPointerMove={drag}
      onPointerUp={release}
      onPointerCancel={release}
    >
      <span class="aim-reach" />
    </div>
  );
}

export function AimChart(): JSX.Element {
  const { ref, size } = useSize<HTMLDivElement>();
  const held = useRef<number>(undefined);
  const aim = chosenAim.value;
  return (
    <div class="plot aim-plot" ref={ref} data-chart="aim">
      <Plot view={view.value} width={size.width} height={size.height} />
      {size.width > 0 && (
        <>
          <svg class="sweep-layer" width={size.width} height={size.height} aria-hidden="true">
            <LineNames lines={lines.value} view={view.value} frame={size} />
          </svg>
          {aim?.points.map((_, at) => (
            <Handle key={at} aim={aim} at={at} frame={size} held={held} />
          ))}
        </>
      )}
      <span class="way up">{text.chart.compression}</span>
      <span class="way down">{text.chart.rebound}</span>
    </div>
  );
}
