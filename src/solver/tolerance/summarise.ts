/**
 * What samples say at each place: the band that holds 90 of 100, the standard deviation, and which group it comes from.
 * Quantiles: linear between the order statistics (type 7 of R. J. Hyndman & Y. Fan, Am. Statistician 50 (1996) 361-365; from memory).
 *
 * symbol  unit  meaning
 * f       of f  the quantity at the samples of A and B
 */
import type { Samples, Values } from './sample-study.ts';
import { type VarianceShare, varianceShare } from './sobol-indices.ts';

export interface Spread {
  /** Below it lie 5, 50 and 95 of 100. */
  readonly p5: number;
  readonly p50: number;
  readonly p95: number;
  readonly deviation: number;
  /** By group. */
  readonly shares: readonly VarianceShare[];
  /** Samples of A and B without a value, left out of the above. */
  readonly without: number;
}

/** Fewer samples are no band. */
const LEAST = 4;

/** One a place; null where too few samples have a value. */
export function summarise({ a, b, ab }: Samples): readonly (Spread | null)[] {
  const places = a[0]?.length ?? 0;
  return Array.from({ length: places }, (_, i) =>
    spreadAt(
      column(a, i),
      column(b, i),
      ab.map((of) => column(of, i)),
    ),
  );
}

const column = (samples: readonly Values[], i: number): Values => samples.map((values) => values[i]);

function spreadAt(a: Values, b: Values, ab: readonly Values[]): Spread | null {
  const f = [...a, ...b].filter(isNumber).sort((p, q) => p - q);
  if (f.length < LEAST) return null;
  const mean = f.reduce((total, each) => total + each, 0) / f.length;
  const variance = f.reduce((total, each) => total + (each - mean) ** 2, 0) / (f.length - 1);
  return {
    p5: quantile(f, 0.05),
    p50: quantile(f, 0.5),
    p95: quantile(f, 0.95),
    deviation: Math.sqrt(variance),
    shares: ab.map((of) => shareOf(a, b, of)),
    without: a.length + b.length - f.length,
  };
}

/** Over the samples that have all three. */
function shareOf(a: Values, b: Values, ab: Values): VarianceShare {
  const whole = a.flatMap((fA, n) => {
    const [fB, fAB] = [b[n], ab[n]];
    return isNumber(fA) && isNumber(fB) && isNumber(fAB) ? [[fA, fB, fAB] as const] : [];
  });
  return varianceShare(
    whole.map(([fA]) => fA),
    whole.map(([, fB]) => fB),
    whole.map(([, , fAB]) => fAB),
  );
}

const isNumber = (value: number | null): value is number => value !== null;

/** @param sorted  rising, at least one */
function quantile(sorted: readonly number[], share: number): number {
  const at = share * (sorted.length - 1);
  const low = Math.floor(at);
  const high = Math.min(low + 1, sorted.length - 1);
  return sorted[low] + (at - low) * (sorted[high] - sorted[low]);
}
