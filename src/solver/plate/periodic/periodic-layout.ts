/**
 * Where the unknowns of a node sit: every field has a value and a slope, and the lifts stand at equal distances so that
 * contact finds them.
 *
 * | symbol | unit | meaning |
 * |---|---|---|
 * | d | - | unknowns from one lift to the next: 7 with one harmonic, 8 with two |
 * | M | - | harmonics of the lift |
 *
 * Fields are numbered lifts first (j = 0…M), then u (m = 0…2M), then v (m = 1…2M).
 */
import type { CircleBasis } from './circle-basis.ts';

export interface PeriodicLayout {
  readonly fields: number;
  readonly perNode: number;
  /** Distance of two lifts. */
  readonly d: number;
  /** Half bandwidth of two neighbouring nodes. */
  readonly b: number;
  /** Where value and slope of each field sit in a node, two numbers a field. */
  readonly slots: Int32Array;
  /** Where the four shapes of each field sit in an element, four numbers a field. */
  readonly at: Int32Array;
}

export function periodicLayout({ lifts, outs, turns, M }: CircleBasis): PeriodicLayout {
  const fields = lifts + outs + turns;
  const perNode = 2 * fields;
  const d = perNode / (M + 1);
  const slots = new Int32Array(perNode);
  const taken = new Set<number>();
  for (let j = 0; j < lifts; j++) {
    slots[2 * j] = j * d;
    slots[2 * j + 1] = j * d + 1;
    taken.add(j * d).add(j * d + 1);
  }
  const rest = Array.from({ length: perNode }, (_, i) => i).filter((i) => !taken.has(i));
  for (let i = 0; i < rest.length; i++) slots[2 * lifts + i] = rest[i];
  const at = Int32Array.from(
    { length: 4 * fields },
    (_, i) => slots[2 * (i >> 2) + (i & 1)] + ((i & 2) === 0 ? 0 : perNode),
  );
  return { fields, perNode, d, b: 2 * perNode - 1, slots, at };
}
