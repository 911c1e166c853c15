/** How far what a document says of an oil's viscosity reaches: a temperature or an index beyond it is computed, and is worth a word. */
import type { Viscosity } from './project.ts';

export interface Reach {
  readonly from: number;
  readonly upTo: number;
}

/** The viscosity index stands on these two temperatures (ISO 2909) [°C]. */
const OF_INDEX: Reach = { from: 40, upTo: 100 };

/** Temperatures between which the viscosity is known; outside, its law extrapolates [°C]. */
export function knownTemperatures(viscosity: Viscosity): Reach {
  if (viscosity.kind !== 'two-point') return OF_INDEX;
  const temperatures = viscosity.points.map(({ temperature_degC }) => temperature_degC);
  return { from: Math.min(...temperatures), upTo: Math.max(...temperatures) };
}

export const isOutside = (value: number, { from, upTo }: Reach): boolean => value < from || value > upTo;

/** Index of the oils that are sold for dampers, thickened ones included (common practice, from memory, rounded outwards). */
export const USUAL_INDEX: Reach = { from: 0, upTo: 450 };

/** An index that no such oil has; undefined for a usual one, and for an oil without one. */
export function unusualIndex(viscosity: Viscosity): number | undefined {
  if (viscosity.kind === 'two-point') return undefined;
  return isOutside(viscosity.viscosityIndex, USUAL_INDEX) ? viscosity.viscosityIndex : undefined;
}
