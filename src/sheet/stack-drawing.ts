/** A stack in section, to scale, as it is laid on: diameters and heights in two standard scales, because shims are thin. */
import { layShims, stackHeight } from '../model/lay-shims.ts';
import type { ValveBody } from '../model/project.ts';
import type { Family } from '../units/format.ts';
import type { NumberedRow, OrderedStack } from './assembly-order.ts';
import { el, type SheetNode } from './node.ts';
import { one } from './quantities.ts';
import { shimSize } from './shim-words.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.drawing;

const INK = '#14242c';
const SOFT = '#45565f';
const BODY = '#eef2ef';
const SHIM = '#dfe5e5';

/** Of ISO 5455, reduction to enlargement; heights go beyond it by tens. */
const DIAMETER_SCALES = [5, 2, 1, 0.5, 0.2];
const HEIGHT_SCALES = [50, 20, 10, 5, 2, 1];

/** Room on the paper [mm]. */
const SECTION = { width: 54, height: 26 };
const LABELS = 30;
const EDGE = 1;
const BODY_HEIGHT = 8;
const CLAMP_HEIGHT = 3.2;
const LETTER = 2.7;
const LABEL_STEP = 3.5;
/** More would make the drawing higher than a page: then rows are labelled evenly, first and last among them. */
const MOST_LABELS = 50;
/** Half a page of A4 between its margins has room for it at its true size [mm]. */
const WIDTH = SECTION.width + LABELS + 2 * EDGE + 3;

const largestThatFits = (scales: readonly number[], size: number, room: number): number =>
  scales.find((scale) => size * scale <= room) ?? scales[scales.length - 1];

const ratio = (scale: number): string => (scale >= 1 ? `${scale} : 1` : `1 : ${1 / scale}`);

interface Frame {
  readonly x: (radius_mm: number) => number;
  readonly y: (height_mm: number) => number;
  readonly diameters: number;
  readonly heights: number;
  readonly height: number;
}

const fixed = (value: number): string => String(Number(value.toFixed(3)));

/** A ring about the axis: both of its cuts. */
function cuts(
  frame: Frame,
  [inner, outer]: readonly [number, number],
  [low, high]: readonly [number, number],
  fill: string,
) {
  const [y, height] = [frame.y(high), frame.y(low) - frame.y(high)];
  const width = (outer - inner) * frame.diameters;
  return [-outer, inner].map((r) =>
    el('rect', {
      ...{ x: fixed(frame.x(r)), y: fixed(y), width: fixed(width), height: fixed(height) },
      ...{ fill, stroke: INK, 'stroke-width': 0.18 },
    }),
  );
}

/** Where the first shim lies before anything is clamped: on its seat, or on the hub where that is higher. */
const laidOn = ({ valving }: OrderedStack): number => Math.max(0, valving.seatHeight_mm);

function frameOf(stack: OrderedStack, body: ValveBody): Frame {
  const { shims, backingPlate } = stack.valving;
  const widest = Math.max(...shims.map((row) => row.outerDiameter_mm), body.seat.outerDiameter_mm) + 4;
  const tops = layShims(stack.valving).map(({ base_mm, shim }) => base_mm + shim.thickness_mm);
  const tall = laidOn(stack) + Math.max(...tops, 0.1) + (backingPlate?.gap_mm ?? 0);
  const diameters = largestThatFits(DIAMETER_SCALES, widest, SECTION.width);
  const heights = largestThatFits(HEIGHT_SCALES, tall, SECTION.height);
  const labels = (Math.min(stack.rows.length, MOST_LABELS) + 2) * LABEL_STEP;
  const above = Math.max(tall * heights + CLAMP_HEIGHT + 2, labels - BODY_HEIGHT);
  return {
    ...{ diameters, heights, height: above + BODY_HEIGHT + 2 * EDGE },
    x: (r) => EDGE + SECTION.width / 2 + r * diameters,
    y: (z) => EDGE + above - z * heights,
  };
}

function bodyParts(frame: Frame, stack: OrderedStack, { pressureZone, seat }: ValveBody): SheetNode[] {
  const depth = BODY_HEIGHT / frame.heights;
  const [z, rim] = [stack.valving.seatHeight_mm, seat.outerDiameter_mm / 2 + 2];
  const ring = (from: number, to: number, top: number): SheetNode[] =>
    to > from ? cuts(frame, [from, to], [-depth, top], BODY) : [];
  const groove = Math.min(0, z) - depth * 0.4;
  return [
    ...ring(0, pressureZone.innerDiameter_mm / 2, 0),
    ...cuts(frame, [pressureZone.innerDiameter_mm / 2, pressureZone.outerDiameter_mm / 2], [-depth, groove], '#fff'),
    ...ring(seat.innerDiameter_mm / 2, seat.outerDiameter_mm / 2, z),
    ...ring(seat.outerDiameter_mm / 2, rim, groove),
  ];
}

/** Heights of the labels, each beside its shims but none on another; told from the top down. */
function spread(wanted: readonly number[], lowest: number): number[] {
  const out: number[] = [];
  for (const [i, y] of wanted.entries()) out.push(i === 0 ? y : Math.max(y, out[i - 1] + LABEL_STEP));
  const over = Math.max(0, (out.at(-1) ?? 0) - lowest);
  let limit = (out.at(-1) ?? 0) - over;
  for (let i = out.length - 1; i >= 0; i--) {
    out[i] = Math.min(out[i], limit);
    limit = out[i] - LABEL_STEP;
  }
  return out;
}

interface Label {
  readonly words: string;
  /** What it points at, on the paper. */
  readonly x: number;
  readonly y: number;
}

function labelParts(labels: readonly Label[], lowest: number): SheetNode[] {
  const sorted = [...labels].sort((a, b) => a.y - b.y);
  const at = spread(
    sorted.map(({ y }) => y),
    lowest,
  );
  const left = EDGE + SECTION.width + 3;
  return sorted.flatMap(({ words: said, x, y }, i) => [
    el('polyline', {
      points: `${fixed(x)},${fixed(y)} ${fixed(left - 2)},${fixed(at[i])} ${fixed(left - 0.5)},${fixed(at[i])}`,
      ...{ fill: 'none', stroke: SOFT, 'stroke-width': 0.12 },
    }),
    el('text', { x: left, y: fixed(at[i] + LETTER * 0.35), 'font-size': LETTER }, said),
  ]);
}

/** One label a row, at its middle shim. */
function rowLabels(frame: Frame, stack: OrderedStack, family: Family): Label[] {
  const laid = layShims(stack.valving);
  const fromFace: readonly NumberedRow[] = stack.order === 'before-piston' ? [...stack.rows].reverse() : stack.rows;
  let next = 0;
  const labels = fromFace.map(({ row, from, to }) => {
    const own = laid.slice(next, next + to - from + 1);
    next += own.length;
    const [first, last] = [own[0], own[own.length - 1]];
    const middle = laidOn(stack) + (first.base_mm + last.base_mm + last.shim.thickness_mm) / 2;
    const said = words.row(sheetWords.shims.numbers(from, to), shimSize(row, family));
    return { words: said, x: frame.x(row.outerDiameter_mm / 2), y: frame.y(middle) };
  });
  if (labels.length <= MOST_LABELS) return labels;
  const step = (labels.length - 1) / (MOST_LABELS - 1);
  return Array.from({ length: MOST_LABELS }, (_, i) => labels[Math.round(i * step)]);
}

function shimParts(frame: Frame, stack: OrderedStack): SheetNode[] {
  const shaft = stack.valving.clampDiameter_mm * 0.3;
  return layShims(stack.valving).flatMap(({ shim, base_mm }) => {
    const inner =
      (shim.innerDiameter_mm ?? 0) > stack.valving.clampDiameter_mm ? (shim.innerDiameter_mm ?? 0) / 2 : shaft;
    const low = laidOn(stack) + base_mm;
    return cuts(frame, [inner, shim.outerDiameter_mm / 2], [low, low + shim.thickness_mm], SHIM);
  });
}

function clampParts(frame: Frame, { valving, ...stack }: OrderedStack, family: Family) {
  const top = laidOn({ valving, ...stack }) + stackHeight(valving);
  const thick = CLAMP_HEIGHT / frame.heights;
  const clamp = valving.clampDiameter_mm / 2;
  const plate = valving.backingPlate;
  const plateRadius = (plate?.outerDiameter_mm ?? Math.max(...valving.shims.map((row) => row.outerDiameter_mm))) / 2;
  const under = top + (plate?.gap_mm ?? 0);
  const labels: Label[] = [
    {
      words: words.clamp(one('length', valving.clampDiameter_mm, family)),
      x: frame.x(clamp),
      y: frame.y(top + thick / 2),
    },
    ...(plate ? [{ words: words.plate, x: frame.x(plateRadius), y: frame.y(under + thick / 2) }] : []),
  ];
  const parts = [
    ...cuts(frame, [0, clamp], [top, top + thick], BODY),
    ...(plate ? cuts(frame, [clamp, Math.max(plateRadius, clamp)], [under, under + thick], '#fff') : []),
  ];
  return { parts, labels };
}

/** @param place its name, for who cannot see the drawing */
export function stackDrawing(stack: OrderedStack, body: ValveBody, place: string, family: Family): SheetNode {
  const frame = frameOf(stack, body);
  const clamp = clampParts(frame, stack, family);
  const bottom = frame.y(0) + BODY_HEIGHT;
  const isBase = stack.place === 'baseCompression';
  const bodyLabel: Label = {
    words: isBase ? words.body.base : words.body.piston,
    x: frame.x(body.seat.outerDiameter_mm / 2 + 2),
    y: bottom - 3,
  };
  const axis = fixed(frame.x(0));
  const svg = el(
    'svg',
    {
      ...{ class: 'true-size', viewBox: `0 0 ${WIDTH} ${fixed(frame.height)}`, width: `${WIDTH}mm` },
      ...{ role: 'img', 'aria-label': words.label(place, stack.count) },
    },
    ...bodyParts(frame, stack, body),
    ...shimParts(frame, stack),
    ...clamp.parts,
    el('line', {
      ...{ x1: axis, x2: axis, y1: 0, y2: fixed(frame.height), stroke: SOFT },
      ...{ 'stroke-width': 0.15, 'stroke-dasharray': '4 0.8 0.8 0.8' },
    }),
    ...labelParts([...rowLabels(frame, stack, family), ...clamp.labels, bodyLabel], bottom),
  );
  const scales = words.scale(ratio(frame.diameters), ratio(frame.heights));
  return el('figure', {}, svg, el('figcaption', { class: 'hint' }, scales));
}
