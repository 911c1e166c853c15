/** Scales of the section drawing: preferred ratios, so that the sheet can state one. */
import { millimetresFromInches } from '../../units/si.ts';

/** One millimetre on a nominal screen of 96 pixels an inch. */
export const PIXELS_PER_MM = 96 / millimetresFromInches(1);

/** Preferred enlargements of a workshop drawing. */
export const RADIAL_SCALES = [0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10] as const;
export const AXIAL_FACTORS = [1, 2, 3, 4, 5, 8, 10, 15, 20] as const;

export interface SectionScale {
  /** Drawing : part, along the radius. */
  readonly radial: number;
  /** How many times more the heights are enlarged than the radii. */
  readonly axial: number;
  readonly pixelsPerMm: number;
  readonly axialPixelsPerMm: number;
}

const largestThatFits = (options: readonly number[], fits: (option: number) => boolean): number =>
  options.filter(fits).at(-1) ?? options[0];

/** The largest preferred scale at which the width fits, then the largest axial factor at which the height fits. */
export function chooseScale(
  width_mm: number,
  height_mm: number,
  room: { readonly width_px: number; readonly height_px: number },
  axial?: number,
): SectionScale {
  const radial = largestThatFits(RADIAL_SCALES, (s) => width_mm * s * PIXELS_PER_MM <= room.width_px);
  const pixelsPerMm = radial * PIXELS_PER_MM;
  const factor = axial ?? largestThatFits(AXIAL_FACTORS, (f) => height_mm * f * pixelsPerMm <= room.height_px);
  return { radial, axial: factor, pixelsPerMm, axialPixelsPerMm: pixelsPerMm * factor };
}
