/**
 * Viscosity grades of ISO 3448: the midpoint at 40 °C, and every oil of the grade within 10 % of it.
 * Source: ISO 3448 (limits of the grades 10 to 100 seen in print; grade 7 from memory). Most midpoints are the name of the grade;
 * that of 7 is 6.8.
 *
 * "Weight" numbers on bottles of fork and damper oil are no viscosity: no standard of viscosity stands behind them, and
 * nothing here turns one into the other.
 */
import { InputError } from '../../units/fault.ts';

export interface IsoGradeEntry {
  readonly midpoint_mm2_s: number;
  readonly low_mm2_s: number;
  readonly high_mm2_s: number;
}

const SPREAD = 0.1;

/** Midpoints at 40 °C [mm2/s] by grade. */
const MIDPOINTS: ReadonlyMap<number, number> = new Map([
  [7, 6.8],
  [10, 10],
  [15, 15],
  [22, 22],
  [32, 32],
  [46, 46],
  [68, 68],
  [100, 100],
]);

/** @throws InputError `fluid.iso-grade.unknown` */
export function isoGradeMidpoint(isoGrade: number): number {
  const midpoint = MIDPOINTS.get(isoGrade);
  if (midpoint !== undefined) return midpoint;
  throw new InputError({
    code: 'fluid.iso-grade.unknown',
    path: 'fluid.viscosity.isoGrade',
    got: String(isoGrade),
    wanted: `one of ${[...MIDPOINTS.keys()].join(', ')}`,
  });
}

/** Midpoint and limits of a grade at 40 °C. @throws InputError `fluid.iso-grade.unknown` */
export function isoGradeEntry(isoGrade: number): IsoGradeEntry {
  const midpoint_mm2_s = isoGradeMidpoint(isoGrade);
  return { midpoint_mm2_s, low_mm2_s: midpoint_mm2_s * (1 - SPREAD), high_mm2_s: midpoint_mm2_s * (1 + SPREAD) };
}
