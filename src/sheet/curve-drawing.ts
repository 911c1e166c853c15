/** Force against shaft speed of a build and of the baseline, compression upwards and rebound downwards, for paper. */
import type { Family } from '../units/format.ts';
import type { SheetCurve } from './input.ts';
import { el, type SheetNode } from './node.ts';
import { inUnit, unitName } from './quantities.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.curve;

/** Of the drawing, in units of its own [about mm on paper]. */
const SIZE = { width: 92, height: 65 };
const PLOT = { left: 13, top: 3, right: 90, bottom: 53 };
const LETTER = 2.7;
const INK = '#14242c';
const SOFT = '#45565f';
const RULE = '#c3cdc9';
const BUILD = { stroke: '#0a63a8', 'stroke-width': 0.6 };
/** The chain line that drawings use for what was there before. */
const BASELINE = { stroke: SOFT, 'stroke-width': 0.4, 'stroke-dasharray': '4 1 0.8 1' };

/** A step of 1, 2 or 5 times a power of ten, that gives about `wanted` of them. */
export function niceStep(span: number, wanted: number): number {
  const rough = span / wanted;
  const power = 10 ** Math.floor(Math.log10(rough));
  return ([1, 2, 5].find((step) => step * power >= rough) ?? 10) * power;
}

/** Rounded multiples of a step, from the first that is not below `from`. */
function ticks(from: number, to: number, step: number): number[] {
  const first = Math.ceil(from / step - 1e-9);
  const count = Math.floor(to / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

interface Point {
  readonly speed: number;
  readonly force: number;
}

/** The two lines of a curve in the units of a family, broken where a speed did not solve. */
function linesOf(curve: SheetCurve, family: Family): Point[][] {
  if (curve.status !== 'solved') return [];
  const lines: Point[][] = [[]];
  let way = 0;
  for (const [i, v] of curve.shaftSpeed_m_s.entries()) {
    const force_N = curve.force_N[i];
    if (Math.sign(v) !== way || force_N === null) lines.push([]);
    way = Math.sign(v);
    if (force_N === null) continue;
    lines[lines.length - 1].push({
      speed: inUnit('speed', Math.abs(v), family),
      force: inUnit('force', force_N, family),
    });
  }
  return lines.filter((line) => line.length > 1);
}

interface Scale {
  readonly x: (speed: number) => number;
  readonly y: (force: number) => number;
  readonly speeds: readonly number[];
  readonly forces: readonly number[];
}

function scaleOf(points: readonly Point[]): Scale {
  const top = Math.max(...points.map(({ speed }) => speed));
  const forces = points.map(({ force }) => force);
  const [low, high] = [Math.min(0, ...forces), Math.max(0, ...forces)];
  const step = niceStep(high - low || 1, 6);
  const [bottom, ceiling] = [Math.floor(low / step) * step, Math.ceil(high / step) * step];
  const span = ceiling - bottom || 1;
  return {
    x: (speed) => PLOT.left + (speed / top) * (PLOT.right - PLOT.left),
    y: (force) => PLOT.bottom - ((force - bottom) / span) * (PLOT.bottom - PLOT.top),
    speeds: ticks(0, top, niceStep(top, 5)),
    forces: ticks(bottom, ceiling, step),
  };
}

const fixed = (value: number): string => String(Number(value.toFixed(2)));

const line = (x1: number, y1: number, x2: number, y2: number, stroke: string): SheetNode =>
  el('line', { x1: fixed(x1), y1: fixed(y1), x2: fixed(x2), y2: fixed(y2), stroke, 'stroke-width': 0.15 });

const said = (x: number, y: number, anchor: 'start' | 'middle' | 'end', text: string, more = {}): SheetNode =>
  el('text', { x: fixed(x), y: fixed(y), 'font-size': LETTER, 'text-anchor': anchor, ...more }, text);

function gridParts({ x, y, speeds, forces }: Scale, family: Family): SheetNode[] {
  const middle = (PLOT.top + PLOT.bottom) / 2;
  return [
    ...speeds.flatMap((speed) => [
      line(x(speed), PLOT.top, x(speed), PLOT.bottom, RULE),
      said(x(speed), PLOT.bottom + 3.4, 'middle', String(speed)),
    ]),
    ...forces.flatMap((force) => [
      line(PLOT.left, y(force), PLOT.right, y(force), force === 0 ? INK : RULE),
      said(PLOT.left - 1, y(force) + 1, 'end', String(force).replace('-', '−')),
    ]),
    said((PLOT.left + PLOT.right) / 2, PLOT.bottom + 7.4, 'middle', words.speed(unitName('speed', family))),
    said(2.6, middle, 'middle', words.force(unitName('force', family)), { transform: `rotate(-90 2.6 ${middle})` }),
    said(PLOT.left + 1.2, PLOT.top + 3.2, 'start', words.compression),
    said(PLOT.left + 1.2, PLOT.bottom - 1.4, 'start', words.rebound),
  ];
}

const drawn = (lines: readonly Point[][], { x, y }: Scale, pen: Readonly<Record<string, string | number>>) =>
  lines.map((points) =>
    el('polyline', {
      points: points.map(({ speed, force }) => `${fixed(x(speed))},${fixed(y(force))}`).join(' '),
      ...{ fill: 'none', ...pen },
    }),
  );

function legend(hasBaseline: boolean): SheetNode[] {
  const entry = (at: number, pen: Readonly<Record<string, string | number>>, name: string): SheetNode[] => [
    el('line', { x1: at, x2: at + 9, y1: SIZE.height - 1.2, y2: SIZE.height - 1.2, ...pen }),
    said(at + 10, SIZE.height - 0.3, 'start', name),
  ];
  return [
    ...entry(PLOT.left, BUILD, words.build),
    ...(hasBaseline ? entry(PLOT.left + 26, BASELINE, words.baseline) : []),
  ];
}

/** @param baseline when absent the build is the baseline. @returns undefined where there is no line to draw */
export function curveDrawing(
  build: SheetCurve,
  baseline: SheetCurve | undefined,
  label: string,
  family: Family,
): SheetNode | undefined {
  const [own, before] = [linesOf(build, family), baseline ? linesOf(baseline, family) : []];
  const points = [...own, ...before].flat();
  if (points.length === 0) return undefined;
  const scale = scaleOf(points);
  const parts = [...gridParts(scale, family), ...drawn(before, scale, BASELINE), ...drawn(own, scale, BUILD)];
  return el(
    'figure',
    {},
    el(
      'svg',
      { viewBox: `0 0 ${SIZE.width} ${SIZE.height}`, role: 'img', 'aria-label': label },
      ...parts,
      ...legend(before.length > 0),
    ),
  );
}
