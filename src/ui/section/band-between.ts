/** The band of a force between two solved speeds: straight, as the force itself. */
import type { ForceBand } from '../app/solved.ts';

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

/** The coefficient that makes most of it is that of the nearer end; none where one of the two ends has no band. */
export function bandBetween(a: ForceBand | undefined, b: ForceBand | undefined, share: number): ForceBand | undefined {
  if (!a || !b) return undefined;
  if (a.status !== 'converged') return a;
  if (b.status !== 'converged') return b;
  const { mostFrom } = share < 0.5 ? a : b;
  return {
    status: 'converged',
    low_N: between(a.low_N, b.low_N, share),
    high_N: between(a.high_N, b.high_N, share),
    ...(mostFrom && { mostFrom }),
  };
}
