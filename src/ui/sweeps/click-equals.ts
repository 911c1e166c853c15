/** How many clicks do what something else does: where a sweep of clicks meets a force. */

interface Swept {
  /** Clicks from closed, rising. */
  readonly at: readonly number[];
  readonly force_N: readonly (number | null)[];
}

const MOST_STEPS = 40;

/** From closed to open, each once; of an adjuster with very many clicks every second, third and so on. */
export function sweptClicks(clickCount: number): number[] {
  const step = Math.ceil(clickCount / MOST_STEPS);
  const whole = Array.from({ length: Math.floor(clickCount / Math.max(1, step)) + 1 }, (_, i) => i * step);
  return whole.at(-1) === clickCount ? whole : [...whole, clickCount];
}

/** Straight between two clicks; null beside one that did not solve, or outside. */
export function forceAtClicks({ at, force_N }: Swept, clicks: number): number | null {
  const high = at.findIndex((each) => each >= clicks);
  if (high === -1 || clicks < at[0]) return null;
  if (at[high] === clicks) return force_N[high];
  const [a, b] = [force_N[high - 1], force_N[high]];
  if (a === null || b === null) return null;
  return a + ((b - a) * (clicks - at[high - 1])) / (at[high] - at[high - 1]);
}

/** Clicks from closed at which the force is `target_N`: of several the nearest to `from`; undefined where it never is. */
export function clicksEqualTo({ at, force_N }: Swept, target_N: number, from: number): number | undefined {
  const meets: number[] = [];
  for (let i = 1; i < at.length; i++) {
    const [a, b] = [force_N[i - 1], force_N[i]];
    if (a === null || b === null || (a - target_N) * (b - target_N) > 0) continue;
    meets.push(a === b ? at[i] : at[i - 1] + ((at[i] - at[i - 1]) * (target_N - a)) / (b - a));
  }
  return meets.sort((a, b) => Math.abs(a - from) - Math.abs(b - from)).at(0);
}
