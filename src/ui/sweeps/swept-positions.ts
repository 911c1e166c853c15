/** Which places of the stroke a sweep goes through. */
import type { Damper } from '../../model/project.ts';

/** Steps over the whole stroke; over the length of a hydraulic stop as many again as it has in a wide chart. */
const STEPS = 16;
const STOP_STEPS = 10;

const span = (from: number, to: number, steps: number): number[] =>
  Array.from({ length: steps + 1 }, (_, i) => (i === steps ? to : from + ((to - from) * i) / steps));

/** Rising, from full extension to full compression [mm]. */
export function sweptPositions({ travel_mm, hydraulicStop }: Pick<Damper, 'travel_mm' | 'hydraulicStop'>): number[] {
  const whole = span(0, travel_mm, STEPS);
  if (!hydraulicStop) return whole;
  const length = Math.min(hydraulicStop.length_mm, travel_mm);
  const from = hydraulicStop.end === 'compression' ? travel_mm - length : 0;
  return [...new Set([...whole, ...span(from, from + length, STOP_STEPS)])].sort((a, b) => a - b);
}
