/** Places the section on its sheet: where the axis and the hub plane lie, and paths in pixels. */
import type { Depths, Point } from './geometry.ts';
import { chooseScale, type SectionScale } from './scale.ts';

export type Extent = 'full' | 'half';

/** Narrower sheets have no room for scale and legend side by side [px]. */
export const NARROW_PX = 440;
/** Of the bar of the legend, and how far within the wall it ends [px]. */
const LEGEND_PX = { narrow: 100, wide: 150 } as const;
const LEGEND_INSET = 14;

export interface Sheet extends SectionScale {
  readonly width: number;
  readonly height: number;
  readonly extent: Extent;
  readonly boreRadius_mm: number;
  /** The damper's axis and the hub plane [px]. */
  readonly axisX: number;
  readonly hubY: number;
  readonly x: (r_mm: number) => number;
  readonly y: (z_mm: number) => number;
}

/** Room above the stack for the clamp nut, below the hub plane for the body, beside the bore for the tube [px]. */
const BESIDE = 12;
const above = ({ height, extent, captions }: SheetRequest): number => {
  if (captions) return 90;
  // Scale and legend stand over the one half, and the post and the numbers of the oil below them.
  return extent === 'half' ? 102 : Math.min(84, height * 0.17);
};
const below = (height: number): number => Math.min(150, height * 0.26);
/** In a half section the axis stands this far from the edge, so that the post shows across it [px]. */
const AXIS_INSET = 34;

export interface SheetRequest {
  readonly width: number;
  readonly height: number;
  readonly extent: Extent;
  readonly boreRadius_mm: number;
  /** Highest point of stack, lift and plate. */
  readonly top_mm: number;
  readonly axial?: number;
  /** Whether each half has a name over it, under scale and legend. */
  readonly captions?: boolean;
}

export function laySheet(request: SheetRequest): Sheet {
  const { width, height, extent, boreRadius_mm, top_mm, axial } = request;
  const span_mm = extent === 'full' ? boreRadius_mm * 2 : boreRadius_mm;
  const width_px = extent === 'full' ? width - 2 * BESIDE : width - BESIDE - AXIS_INSET;
  const room = { width_px, height_px: height - above(request) - below(height) };
  const scale = chooseScale(span_mm, top_mm, room, axial);
  const drawn = span_mm * scale.pixelsPerMm;
  const axisX = extent === 'full' ? width / 2 : AXIS_INSET + Math.max(0, (width_px - drawn) / 2);
  const hubY = height - below(height);
  return {
    ...scale,
    width,
    height,
    extent,
    boreRadius_mm,
    axisX,
    hubY,
    x: (r_mm) => r_mm * scale.pixelsPerMm,
    y: (z_mm) => hubY - z_mm * scale.axialPixelsPerMm,
  };
}

/** Where the bar of the legend ends, and how long it is [px]. */
export const legendOf = ({
  axisX,
  width,
  x,
  boreRadius_mm,
}: Sheet): { readonly right: number; readonly width: number } => ({
  right: axisX + x(boreRadius_mm) - LEGEND_INSET,
  width: width < NARROW_PX ? LEGEND_PX.narrow : LEGEND_PX.wide,
});

/** Depths of body and grooves as drawn: fixed on the sheet, whatever the scale [px to mm]. */
export function schematicDepths(sheet: Sheet): Depths {
  const mm = (px: number): number => px / sheet.axialPixelsPerMm;
  const depth = below(sheet.height) - 6;
  return { recess: mm(depth * 0.1), groove: mm(depth * 0.3), shoulder: mm(depth * 0.18), body: mm(depth) };
}

const digits = (value: number): string => value.toFixed(1);

/** A line through points, in pixels right of the axis. */
export const linePath = (sheet: Sheet, points: readonly Point[]): string =>
  points.map(({ r, z }, i) => `${i === 0 ? 'M' : 'L'}${digits(sheet.x(r))} ${digits(sheet.y(z))}`).join('');

export const closedPath = (sheet: Sheet, points: readonly Point[]): string => `${linePath(sheet, points)}Z`;

/** Both surfaces of a shim as one outline. */
export const shimPath = (sheet: Sheet, bottom: readonly Point[], top: readonly Point[]): string =>
  closedPath(sheet, [...bottom, ...[...top].reverse()]);
