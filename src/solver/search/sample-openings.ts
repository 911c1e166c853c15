/** Opening, and what the shims bear, of one stack at the pressures of a search. */
import { stackLife, worstOf } from '../life/stack-life.ts';
import { loadUnderMean } from '../stack/load-under-mean.ts';
import type { ShimStress, StackInput, Theory } from '../types.ts';

export interface OpeningSamples {
  /** At each pressure of the grid [m]. */
  readonly opening_m: readonly number[];
  /** Greatest use of any shim at each pressure; asked for, and where strengths are known [-]. */
  readonly use?: readonly { readonly fatigue: number; readonly yield: number }[];
}

/** @returns undefined where a pressure does not solve */
export function sampleOpenings(
  stack: StackInput,
  pressures_Pa: readonly number[],
  theory: Theory,
  withUse: boolean,
): OpeningSamples | undefined {
  const loaded = loadUnderMean(stack, { theory, landPressure: 'falling', profiles: withUse });
  const opening_m: number[] = [];
  const states: (readonly ShimStress[])[] = [];
  for (const pressure of pressures_Pa) {
    const point = loaded.at(pressure);
    if (point.status !== 'converged') return undefined;
    opening_m.push(Math.max(0, point.seatOpening_m));
    if (point.stress) states.push(point.stress);
  }
  const use = withUse ? usesOf(stack, states) : undefined;
  return { opening_m, ...(use && { use }) };
}

function usesOf({ shims }: StackInput, states: readonly (readonly ShimStress[])[]): OpeningSamples['use'] {
  const life = stackLife(shims, states);
  if (!life) return undefined;
  return states.map((_, i) => {
    const worst = worstOf(life.shims.map((uses) => uses?.[i] ?? null));
    return { fatigue: worst?.fatigue.use ?? 0, yield: worst?.yield.use ?? 0 };
  });
}
