/** A shim in words of the sheet. */
import type { ShimRow, Valving } from '../model/project.ts';
import type { Family } from '../units/format.ts';
import { bare, both } from './quantities.ts';
import { sheetWords } from './text/en.ts';

const words = sheetWords.shims;

type Size = Pick<ShimRow, 'outerDiameter_mm' | 'thickness_mm'>;

/** `30 × 0.15` in the unit of a family. */
export const shimSize = ({ outerDiameter_mm, thickness_mm }: Size, family: Family): string =>
  `${bare('length', outerDiameter_mm, family)} × ${bare('length', thickness_mm, family)}`;

/** How a shim that is no plain one lies, and what it has. */
export function shimNotes(
  { innerDiameter_mm, dish_mm = 0, notches, material }: ShimRow,
  valving: Valving,
  family: Family,
): string[] {
  const length = (value: number): string => both('length', value, family);
  const isRing = innerDiameter_mm !== undefined && innerDiameter_mm > valving.clampDiameter_mm;
  return [
    ...(isRing ? [words.ring(length(innerDiameter_mm))] : []),
    ...(dish_mm > 0 ? [words.dish(length(dish_mm))] : []),
    ...(dish_mm < 0 ? [words.dishTowards(length(-dish_mm))] : []),
    ...(notches ? [words.notches(notches.count, length(notches.width_mm))] : []),
    ...(material ? [words.material] : []),
  ];
}

/** What stands about a stack beside its shims. */
export function stackNotes({ seatHeight_mm, backingPlate, coilSpring, float }: Valving, family: Family): string[] {
  const length = (value: number): string => both('length', value, family);
  return [
    ...(seatHeight_mm > 0 ? [words.preload(length(seatHeight_mm))] : []),
    ...(seatHeight_mm < 0 ? [words.sunk(length(-seatHeight_mm))] : []),
    ...(backingPlate ? [words.plate(length(backingPlate.gap_mm))] : []),
    ...(coilSpring
      ? [words.spring(both('springRate', coilSpring.rate_N_mm, family), length(coilSpring.diameter_mm))]
      : []),
    ...(float ? [words.float(length(float.travel_mm))] : []),
  ];
}
