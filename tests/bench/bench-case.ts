/** A named thing to time. Its result is checked every time, so that a fast wrong answer is a failure. */
export interface BenchCase {
  readonly name: string;
  /** Items that one run works through; a count over 1 makes the result a rate. */
  readonly items: number;
  /** Takes long, or differs from run to run: how often it runs, without warming up, and only where it is named. */
  readonly longRuns?: number;
  /** What all runs together say, beside the time. */
  readonly verdict?: () => string;
  /** Builds the input, outside the timed part, and returns what is timed. */
  prepare(): () => unknown;
  /** @throws Error when the result is wrong */
  check(result: unknown): void;
}

export interface BenchResult {
  readonly runs: number;
  readonly median_ms: number;
  readonly p95_ms: number;
  /** Items a second at the median, where a run works through several. */
  readonly perSecond?: number;
  readonly items?: number;
  readonly verdict?: string;
}

export interface BenchOptions {
  /** Reads a clock [ms]. */
  readonly now: () => number;
  readonly warmUps: number;
  readonly runs: number;
}

export function runBench({ items, longRuns, verdict, prepare, check }: BenchCase, options: BenchOptions): BenchResult {
  const { now } = options;
  const [warmUps, runs] = longRuns === undefined ? [options.warmUps, options.runs] : [0, longRuns];
  const act = prepare();
  for (let run = 0; run < warmUps; run++) check(act());
  const times = Array.from({ length: runs }, () => {
    const start = now();
    const result = act();
    const time = now() - start;
    check(result);
    return time;
  }).sort((a, b) => a - b);
  const median_ms = quantile(times, 0.5);
  const rate = items > 1 ? { items, perSecond: (1000 * items) / median_ms } : {};
  const judged = verdict && { verdict: verdict() };
  return { runs, median_ms, p95_ms: quantile(times, 0.95), ...rate, ...judged };
}

/** The smallest value that at least this share of the sorted values does not exceed. */
const quantile = (sorted: readonly number[], share: number): number =>
  sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
