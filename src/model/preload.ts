/** Force of a spring at rest as its adjuster stands: clicks let it out, down to no force. */
import type { CoilSpring } from './project.ts';

type AdjustableSpring = Pick<CoilSpring, 'rate_N_mm' | 'preload_N' | 'adjuster'>;

/** max(0, preload - clicks x travel per click x rate) [N], clicks from closed; the whole preload without an adjuster. */
export function preloadAt({ preload_N, rate_N_mm, adjuster }: AdjustableSpring): number {
  if (!adjuster) return preload_N;
  return Math.max(0, preload_N - adjuster.clicks * adjuster.travelPerClick_mm * rate_N_mm);
}
