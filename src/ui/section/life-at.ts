/** Reserves between two solved speeds: straight, as every other number there; the shim named is that of the worse end. */
import type { ForcePoint } from '../app/solved.ts';

type Life = NonNullable<ForcePoint['life']>;
type Worst = Life['fatigue'];

function worstBetween(a: Worst, b: Worst, share: number): Worst {
  return { use: a.use + (b.use - a.use) * share, shim: a.use > b.use ? a.shim : b.shim };
}

/** None where one of the two ends has none. */
export function lifeBetween(a: Life | undefined, b: Life | undefined, share: number): Life | undefined {
  if (!a || !b) return undefined;
  const yields = worstBetween(a.yield, b.yield, share);
  return {
    fatigue: worstBetween(a.fatigue, b.fatigue, share),
    yield: yields,
    takesSet: yields.use > 1,
    unknownShims: a.unknownShims,
  };
}
