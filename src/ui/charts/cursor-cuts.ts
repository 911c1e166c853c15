/** Where the speed cursor cuts the lines on show. */
import { computed } from '@preact/signals';
import { inShown } from '../app/quantities.ts';
import { cursorSpeed } from '../app/store.ts';
import { bracket } from '../section/shape-at.ts';
import { type ShownLine, shownLines } from './chart-model.ts';

/** The line at a speed: between two solved speeds, straight. */
export function cut(line: ShownLine, x: number): number | undefined {
  if (line.x.length === 0) return undefined;
  const { low, high, share } = bracket(line.x, x);
  const [a, b] = [line.y[low], line.y[high]];
  return a === null || b === null ? undefined : a + (b - a) * share;
}

export interface CursorCut {
  readonly line: ShownLine;
  readonly y: number;
}

export const cursorCuts = computed<CursorCut[]>(() => {
  const x = inShown('speed', cursorSpeed.value);
  return shownLines.value.flatMap((line) => {
    const y = cut(line, x);
    return y === undefined ? [] : [{ line, y }];
  });
});
