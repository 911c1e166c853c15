/**
 * Slope of a signal by a least-squares parabola through the samples within half a window on either side. On evenly spaced samples this
 * is the filter of Savitzky & Golay, Analytical Chemistry 36 (1964) 1627 (tables from memory); it needs no even spacing.
 *
 * What it takes off a sine of angular frequency w: the slope of the best line through sin(w t) over |t| <= T, whose quadratic term
 * vanishes by symmetry, is 3 (sin x - x cos x)/x^3 of the true one, x = w T (derived; 1 - x^2/10 for small x).
 *
 * symbol  unit   meaning
 * t, y    s, *   time from the middle sample, signal
 * S_n, B_n       sums of t^n and of t^n y over the window
 * x       -      angular frequency times half the window
 */

/** Fewest samples that a parabola is drawn through. */
const FEWEST = 3;

interface Sums {
  readonly S: Float64Array;
  readonly B: Float64Array;
}

/** Over the samples from one place to another, both included. */
function sumsOf(time: readonly number[], signal: readonly number[], origin: number, from: number, to: number): Sums {
  const [S, B] = [new Float64Array(5), new Float64Array(3)];
  for (let i = from; i <= to; i++) {
    const t = time[i] - origin;
    let power = 1;
    for (let n = 0; n < 5; n++) {
      S[n] += power;
      if (n < 3) B[n] += power * signal[i];
      power *= t;
    }
  }
  return { S, B };
}

/** Value and slope at t = 0 of the parabola with these sums; Cramer's rule on the three normal equations. */
function parabolaAt({ S, B }: Sums): { value: number; slope: number } {
  const det3 = (m: readonly number[]): number =>
    m[0] * (m[4] * m[8] - m[5] * m[7]) - m[1] * (m[3] * m[8] - m[5] * m[6]) + m[2] * (m[3] * m[7] - m[4] * m[6]);
  const whole = det3([S[0], S[1], S[2], S[1], S[2], S[3], S[2], S[3], S[4]]);
  return {
    value: det3([B[0], S[1], S[2], B[1], S[2], S[3], B[2], S[3], S[4]]) / whole,
    slope: det3([S[0], B[0], S[2], S[1], B[1], S[3], S[2], B[2], S[4]]) / whole,
  };
}

/** Value at `origin` of the least-squares parabola through all of these; NaN where they lie at fewer than three places. */
export const parabolaValue = (x: readonly number[], y: readonly number[], origin: number): number =>
  new Set(x).size < FEWEST ? Number.NaN : parabolaAt(sumsOf(x, y, origin, 0, x.length - 1)).value;

/**
 * Value and slope of the local parabola at every sample.
 * @param time  rising [s], n >= 3     @param window_s  whole width; widened where fewer than 3 samples would be in it
 */
export function localParabolas(
  time: readonly number[],
  signal: readonly number[],
  window_s: number,
): { value: number[]; slope: number[] } {
  const [value, slope] = [[] as number[], [] as number[]];
  // A sample at the very edge counts, however its time was rounded.
  const half = (window_s / 2) * (1 + 1e-9);
  let [from, to] = [0, 0];
  for (let at = 0; at < time.length; at++) {
    while (time[at] - time[from] > half) from++;
    while (to + 1 < time.length && time[to + 1] - time[at] <= half) to++;
    let [low, high] = [from, to];
    while (high - low + 1 < FEWEST && (low > 0 || high < time.length - 1)) {
      low = Math.max(0, low - 1);
      high = Math.min(time.length - 1, high + 1);
    }
    const found = parabolaAt(sumsOf(time, signal, time[at], low, high));
    value.push(found.value);
    slope.push(found.slope);
  }
  return { value, slope };
}

/** Below this the closed form loses its digits to cancellation, and the series is exact to all that are left. */
const SERIES_BELOW = 0.05;

/** Share of the peak slope of a sine that the window leaves, 1 for none taken. @param x  w T */
export const slopeKept = (x: number): number =>
  x < SERIES_BELOW ? 1 - x ** 2 / 10 + x ** 4 / 280 : (3 * (Math.sin(x) - x * Math.cos(x))) / x ** 3;
