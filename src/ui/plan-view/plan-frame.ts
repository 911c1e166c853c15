/** Places the plan on its sheet: the centre, the scale, and which way a crest points. */
import { PIXELS_PER_MM } from '../section/scale.ts';
import type { Extremes } from '../section/wave-shape.ts';
import type { LevelLine, RingPoint } from './level-lines.ts';

export interface PlanFrame {
  readonly width: number;
  readonly height: number;
  readonly cx: number;
  readonly cy: number;
  /** Drawing : part. */
  readonly scale: number;
  readonly pixelsPerMm: number;
  /** Angle on the sheet of θ = 0, anticlockwise from the right [rad]. */
  readonly turn: number;
}

/** Beside the circle for the legend, and round it for the letters of the cut [px]. */
export const LEGEND_PX = 128;
const ROUND_PX = 22;
/** Scales are stated in quarters: a plan has one scale, and fills its sheet. */
const SCALE_STEP = 0.25;

/** @param boreRadius_mm the outermost circle @param crestAngle round the circle from a port; it points left [rad] */
export function layPlan(
  { width, height }: { readonly width: number; readonly height: number },
  boreRadius_mm: number,
  crestAngle: number,
): PlanFrame {
  const room = Math.min(width - LEGEND_PX, height) - 2 * ROUND_PX;
  const fits = room / (2 * boreRadius_mm * PIXELS_PER_MM);
  const scale = Math.max(1, Math.floor(fits / SCALE_STEP)) * SCALE_STEP;
  return {
    ...{ width, height, scale },
    cx: (width - LEGEND_PX) / 2,
    cy: height / 2,
    pixelsPerMm: scale * PIXELS_PER_MM,
    turn: Math.PI - crestAngle,
  };
}

/** On the sheet, y downwards [px]. */
export function placeOn({ cx, cy, pixelsPerMm, turn }: PlanFrame, { r, theta }: RingPoint): [number, number] {
  const reach = r * pixelsPerMm;
  return [cx + reach * Math.cos(theta + turn), cy - reach * Math.sin(theta + turn)];
}

/** And back. */
export function ringPointAt({ cx, cy, pixelsPerMm, turn }: PlanFrame, x: number, y: number): RingPoint {
  const theta = Math.atan2(cy - y, x - cx) - turn;
  return { r: Math.hypot(x - cx, y - cy) / pixelsPerMm, theta };
}

export function pathOn(frame: PlanFrame, lines: readonly LevelLine[]): string {
  return lines
    .map(({ points, closed }) => {
      const written = points.map((point) => placeOn(frame, point).map((px) => px.toFixed(1)));
      return `${written.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('')}${closed ? 'Z' : ''}`;
    })
    .join('');
}

/** Angles round the circle at which a phase stands: its mirror images too, each once, rising [rad]. */
export function anglesOf(phi: number, waves: number): number[] {
  const period = (2 * Math.PI) / waves;
  const own = phi / waves;
  const both = own > 1e-9 && Math.abs(own - period / 2) > 1e-9 ? [own, period - own] : [own];
  return Array.from({ length: waves }, (_, k) => both.map((angle) => angle + k * period)).flat();
}

/** The trough that stands most nearly across from the crest: the cut then runs as straight as it can. */
export function troughAcross({ crest, trough }: Extremes, waves: number): number {
  const across = crest / waves + Math.PI;
  const off = (angle: number): number => Math.abs(Math.atan2(Math.sin(angle - across), Math.cos(angle - across)));
  return anglesOf(trough, waves).reduce((best, angle) => (off(angle) < off(best) - 1e-9 ? angle : best));
}
