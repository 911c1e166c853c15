/** Round numbers for the lines of a plan, in the unit of the reader. */

const STEPS = [1, 2, 5, 10] as const;

/** A step of 1, 2 or 5 times a power of ten that parts a span into at most so many. @param span above 0 */
export function roundStep(span: number, most: number): number {
  const power = 10 ** Math.floor(Math.log10(span / most));
  return power * (STEPS.find((step) => step * power * most >= span * (1 - 1e-9)) ?? 10);
}

/** Lines over a span; a flat one has none. */
const MOST_LINES = 10;
/** Spans below this are flat: no gauge tells them [mm; the same number in inches is coarser and serves too]. */
const FLAT = 1e-4;

/** Multiples of one round step, all between least and most, rising. */
export function levelsBetween(least: number, most: number): { step: number; levels: number[] } {
  if (!(most - least > FLAT)) return { step: 0, levels: [] };
  const step = roundStep(most - least, MOST_LINES);
  const first = Math.floor(least / step + 1e-9) + 1;
  const last = Math.ceil(most / step - 1e-9) - 1;
  return { step, levels: Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step) };
}
