/** Which temperatures of the oil a sweep goes through, and between which of them the document knows its viscosity. */
import type { Fluid } from '../../model/project.ts';

/** From a cold morning to the end of a long descent (common practice) [°C]. */
export const COLDEST = -10;
export const HOTTEST = 120;
/** Cold oil changes faster: there the steps are half as wide [°C]. */
const STEP = 10;
const FINE_STEP = 5;
const FINE_BELOW = 40;

const span = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

/** Rising; reaches to the temperature set where that lies outside the usual ones [°C]. */
export function sweptTemperatures(set_degC: number): number[] {
  const colder = set_degC < COLDEST ? [...span(COLDEST, set_degC, -STEP).slice(1).reverse()] : [];
  const warmer = set_degC > HOTTEST ? span(HOTTEST, set_degC, STEP).slice(1) : [];
  const usual = [...span(COLDEST, FINE_BELOW - FINE_STEP, FINE_STEP), ...span(FINE_BELOW, HOTTEST, STEP)];
  return [...colder, ...usual, ...warmer];
}

/** Where the document tells the viscosity; a viscosity index joins 40 to 100 °C (ASTM D2270). */
export function viscosityKnown({ viscosity }: Fluid): readonly [number, number] {
  if (viscosity.kind !== 'two-point') return [40, 100];
  const [a, b] = viscosity.points.map(({ temperature_degC }) => temperature_degC);
  return [Math.min(a, b), Math.max(a, b)];
}
