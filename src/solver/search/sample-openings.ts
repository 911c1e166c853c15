/**
 * Opening, and what the shims bear, of one stack at the pressures of a search.
 *
 * symbol  unit  meaning
 * p       Pa    mean pressure on the pressure zone
 * phi     -     share of the circumference that the ports open; they bear p/phi
 */
import { stackLife, worstOf } from '../life/stack-life.ts';
import { loadUnderMean } from '../stack/load-under-mean.ts';
import { solveAuto } from '../stack/solve-auto.ts';
import type { LiftPoint, ShimStress, StackInput, TheoryChoice } from '../types.ts';

export interface OpeningSamples {
  /** At each pressure of the grid [m]. */
  readonly opening_m: readonly number[];
  /** Greatest use of any shim at each pressure; asked for, and where strengths are known [-]. */
  readonly use?: readonly { readonly fatigue: number; readonly yield: number }[];
}

/**
 * @param pressures_Pa rising means on the zone
 * @returns undefined where a pressure does not solve
 */
export function sampleOpenings(
  stack: StackInput,
  pressures_Pa: readonly number[],
  theory: TheoryChoice,
  withUse: boolean,
): OpeningSamples | undefined {
  const opening_m: number[] = [];
  const states: (readonly ShimStress[])[] = [];
  for (const point of pointsOf(stack, pressures_Pa, theory, withUse)) {
    if (point.status !== 'converged') return undefined;
    opening_m.push(Math.max(0, point.seatOpening_m));
    if (point.stress) states.push(point.stress);
  }
  const use = withUse ? usesOf(stack, states) : undefined;
  return { opening_m, ...(use && { use }) };
}

/** One after the other, so that none is solved beyond one that fails, but for `auto`, which chooses by all of them. */
function* pointsOf(
  stack: StackInput,
  pressures_Pa: readonly number[],
  theory: TheoryChoice,
  profiles: boolean,
): Iterable<LiftPoint> {
  const options = { landPressure: 'falling', profiles } as const;
  if (theory === 'auto') {
    const phi = stack.ports?.coveredFraction ?? 1;
    const inPorts_Pa = pressures_Pa.map((p) => p / phi);
    yield* solveAuto(stack, inPorts_Pa, options).points;
    return;
  }
  const { at } = loadUnderMean(stack, { ...options, theory });
  for (const p of pressures_Pa) yield at(p);
}

function usesOf({ shims }: StackInput, states: readonly (readonly ShimStress[])[]): OpeningSamples['use'] {
  const life = stackLife(shims, states);
  if (!life) return undefined;
  return states.map((_, i) => {
    const worst = worstOf(life.shims.map((uses) => uses?.[i] ?? null));
    return { fatigue: worst?.fatigue.use ?? 0, yield: worst?.yield.use ?? 0 };
  });
}
