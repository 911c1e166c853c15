/** The band of a force between two solved speeds: straight, as the force itself. */
import type { ForceBand } from '../app/solved.ts';

type Converged = Extract<ForceBand, { status: 'converged' }>;
type Part = Converged['parts'][number];

const between = (a: number, b: number, share: number): number => a + (b - a) * share;

/** The ranges of the solver, by coefficient; both ends list the same ones. */
function partsBetween(a: readonly Part[], b: readonly Part[], share: number): Part[] {
  return a.map((part) => {
    const other = b.find(({ coefficient }) => coefficient === part.coefficient) ?? part;
    return {
      coefficient: part.coefficient,
      down_N: between(part.down_N, other.down_N, share),
      up_N: between(part.up_N, other.up_N, share),
    };
  });
}

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
    parts: partsBetween(a.parts, b.parts, share),
  };
}
