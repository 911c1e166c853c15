/**
 * Samples of a quantity whose inputs scatter, for bands and for shares of the variance by groups of inputs: A, B, and for each
 * group A with that group taken from B. An input has neighbouring dimensions of Sobol's sequence in A and B, since those fill their
 * square best, and the first inputs have the first of them: what matters most should stand first. Any run of sample numbers gives the same samples, so a study may grow or be split.
 *
 * symbol  unit  meaning
 * z       -     inputs, each standard normal
 */
import { stopIfAsked } from '../stopped.ts';
import type { SolveHooks } from '../types.ts';
import { normalQuantile } from './normal-quantile.ts';
import { shiftedSobol } from './sobol-sequence.ts';

/** One number a place where the quantity is asked for; null where it has none. */
export type Values = readonly (number | null)[];

export interface Study {
  /** Of each input, the number of its group. */
  readonly groupOf: readonly number[];
  readonly groups: number;
  /** The quantity with every input so many standard deviations off. */
  readonly at: (z: readonly number[]) => Values;
}

export interface Samples {
  readonly a: readonly Values[];
  readonly b: readonly Values[];
  /** By group, then sample. */
  readonly ab: readonly (readonly Values[])[];
}

export interface SampleRange {
  readonly seed: number;
  readonly from: number;
  /** One past the last. */
  readonly to: number;
}

/** @throws SolveStopped when the caller stops the run */
export function sampleStudy(study: Study, { seed, from, to }: SampleRange, hooks: SolveHooks = {}): Samples {
  const { groupOf, groups, at } = study;
  const inputs = groupOf.length;
  const points = shiftedSobol(seed, 2 * inputs);
  const a: Values[] = [];
  const b: Values[] = [];
  const ab: Values[][] = Array.from({ length: groups }, () => []);
  for (let n = from; n < to; n++) {
    stopIfAsked(hooks);
    const z = points(n).map(normalQuantile);
    const [A, B] = [z.filter((_, d) => d % 2 === 0), z.filter((_, d) => d % 2 === 1)];
    a.push(at(A));
    b.push(at(B));
    for (let group = 0; group < groups; group++) {
      const scatters = groupOf.includes(group);
      ab[group].push(!scatters ? a[a.length - 1] : at(A.map((z_i, i) => (groupOf[i] === group ? B[i] : z_i))));
    }
    hooks.onProgress?.(n + 1 - from, to - from);
  }
  return { a, b, ab };
}

export const joinSamples = (p: Samples, q: Samples): Samples => ({
  a: [...p.a, ...q.a],
  b: [...p.b, ...q.b],
  ab: p.ab.map((samples, group) => [...samples, ...q.ab[group]]),
});
