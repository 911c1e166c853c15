/**
 * Shares of the variance with how far their samples leave them open: at one place, or over several, where a share is that of the
 * variances put together.
 *   share over places = sum of V_i S_i / sum of V_i
 * Source: M. Lamboni, H. Monod & D. Makowski, Reliab. Eng. Syst. Saf. 96 (2011) 450-459 (generalised index of several outputs; from memory).
 * The interval holds 95 of 100 of the shares that samples drawn anew from the samples have (the bootstrap by percentiles of B. Efron &
 * R. Tibshirani, An Introduction to the Bootstrap (1993); for these shares G. E. B. Archer, A. Saltelli & I. M. Sobol, J. Stat. Comput.
 * Simul. 58 (1997) 99-120; both from memory). It takes the samples as drawn by chance, although Sobol's lie more evenly: it is on the wide side.
 *
 * symbol  unit     meaning
 * f       of f     the quantity at the samples
 * S, T    -        first-order and total share (sobol-indices.ts)
 */
import { chanceOf } from '../search/random.ts';
import type { Samples, Values } from './sample-study.ts';
import { type SharesOfVariance, sharesOfVariance } from './sobol-indices.ts';

export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface ShareEstimate {
  readonly first: Estimate;
  readonly total: Estimate;
}

/** Sets of samples drawn anew. */
const DRAWS = 200;
const EDGES = [0.025, 0.975] as const;

/** f at one place; NaN where a sample has none. */
interface Columns {
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly ab: readonly Float64Array[];
}

export interface Estimator {
  /** By group. @param places  whose variances are put together, each the number of a place */
  readonly at: (places: readonly number[]) => readonly ShareEstimate[];
}

/** @param seed  of the draws; the same seed gives the same intervals */
export function shareEstimator({ a, b, ab }: Samples, seed: number): Estimator {
  const N = a.length;
  const draws = drawsOf(N, seed);
  const all = Int32Array.from({ length: N }, (_, n) => n);
  const kept = new Map<number, Columns>();
  const columnsAt = (i: number): Columns => {
    const columns = kept.get(i) ?? {
      a: columnOf(a, i),
      b: columnOf(b, i),
      ab: ab.map((samples) => columnOf(samples, i)),
    };
    kept.set(i, columns);
    return columns;
  };
  const at = (places: readonly number[]): ShareEstimate[] => {
    const columns = places.map(columnsAt);
    return ab.map((_, group) => {
      const over = (picks: Int32Array) => together(columns, group, picks);
      return estimateOf(over(all), draws.map(over));
    });
  };
  return { at };
}

const columnOf = (samples: readonly Values[], i: number): Float64Array =>
  Float64Array.from(samples, (values) => values[i] ?? Number.NaN);

/** The sampled numbers are known, so that every place and group is drawn alike. */
function drawsOf(N: number, seed: number): Int32Array[] {
  return Array.from({ length: DRAWS }, (_, draw) => {
    const chance = chanceOf(seed, draw);
    return Int32Array.from({ length: N }, () => chance.below(N));
  });
}

function together(columns: readonly Columns[], group: number, picks: Int32Array): SharesOfVariance {
  const sum = { variance: 0, first: 0, total: 0 };
  for (const { a, b, ab } of columns) {
    const { variance, first, total } = sharesOfVariance(a, b, ab[group], picks);
    sum.variance += variance;
    sum.first += first;
    sum.total += total;
  }
  return sum;
}

function estimateOf(whole: SharesOfVariance, drawn: readonly SharesOfVariance[]): ShareEstimate {
  return { first: estimate(whole, drawn, 'first'), total: estimate(whole, drawn, 'total') };
}

const ratio = (of: SharesOfVariance, which: 'first' | 'total'): number =>
  of.variance > 0 ? of[which] / of.variance : 0;

function estimate(whole: SharesOfVariance, drawn: readonly SharesOfVariance[], which: 'first' | 'total'): Estimate {
  const sorted = drawn.map((of) => ratio(of, which)).sort((p, q) => p - q);
  const [low, high] = EDGES.map((share) => sorted[Math.round(share * (sorted.length - 1))]);
  return { value: ratio(whole, which), low, high };
}
