/** What every layer of the drawing is drawn from. */
import type { DrawnSection } from './drawn-section.ts';
import { type PistonOutline, pistonOutline } from './geometry.ts';
import { type Sheet, schematicDepths } from './sheet.ts';

export interface Plan {
  readonly sheet: Sheet;
  readonly section: DrawnSection;
  readonly piston: PistonOutline;
}

export function planOf(sheet: Sheet, section: DrawnSection): Plan {
  const { stack, body, damper } = section;
  return {
    sheet,
    section,
    piston: pistonOutline(stack.valving, body, damper.boreDiameter_mm / 2, schematicDepths(sheet)),
  };
}

/** Which side of the axis a layer is written on: -1 left, 1 right. */
export type Side = 1 | -1;
