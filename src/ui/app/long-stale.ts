/** Whether curves are old for long enough to be seen: most are solved anew before a line could be drawn faded. */
import { effect, signal } from '@preact/signals';
import { anyStale } from './solve.ts';

/** Longer than the curves of a usual project take, short enough to tell that it is waited for [ms]. */
const PATIENCE_MS = 150;

export const longStale = signal(false);

/** Starts following the curves. */
export function watchStale(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  return effect(() => {
    clearTimeout(timer);
    if (!anyStale.value) longStale.value = false;
    else
      timer = setTimeout(() => {
        longStale.value = true;
      }, PATIENCE_MS);
  });
}
