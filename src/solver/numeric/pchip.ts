/**
 * Monotone piecewise cubic through given points: where the data rise, the curve rises, without overshoot.
 * Slopes: weighted harmonic mean of the neighbouring secants, 0 where they change sign; one-sided at the ends.
 * Source: F. N. Fritsch & J. Butland, SIAM J. Sci. Stat. Comput. 5 (1984) 300-304, as in Moler, Numerical Computing
 * with MATLAB (2004) section 3.4 (from memory).
 *
 * symbol  unit     meaning
 * x, y    of x, y  the points, x strictly rising
 * h       of x     width of an interval
 * s       y/x      secant of an interval
 * m       y/x      slope of the curve at a point
 */

/** A curve through points; outside them it stays at the end values. */
export type Interpolant = (x: number) => number;

/**
 * @param x  strictly rising, length n >= 1
 * @param y  length n
 */
export function pchip(x: readonly number[], y: readonly number[]): Interpolant {
  const n = x.length;
  if (n === 1) return () => y[0];
  const { h, s } = secants(x, y);
  const m = slopes(h, s);
  return (at) => {
    if (at <= x[0]) return y[0];
    if (at >= x[n - 1]) return y[n - 1];
    const i = intervalOf(x, at);
    const t = (at - x[i]) / h[i];
    const c2 = 3 * s[i] - 2 * m[i] - m[i + 1];
    const c3 = m[i] + m[i + 1] - 2 * s[i];
    return y[i] + h[i] * t * (m[i] + t * (c2 + t * c3));
  };
}

/** Slopes of that curve at its points; at least two. */
export function pchipSlopes(x: readonly number[], y: readonly number[]): number[] {
  const { h, s } = secants(x, y);
  return slopes(h, s);
}

function secants(x: readonly number[], y: readonly number[]) {
  const h = Array.from({ length: x.length - 1 }, (_, i) => x[i + 1] - x[i]);
  return { h, s: h.map((width, i) => (y[i + 1] - y[i]) / width) };
}

function slopes(h: readonly number[], s: readonly number[]): number[] {
  const n = h.length + 1;
  if (n === 2) return [s[0], s[0]];
  const inner = Array.from({ length: n - 2 }, (_, k) => innerSlope(h[k], h[k + 1], s[k], s[k + 1]));
  const first = endSlope(h[0], h[1], s[0], s[1]);
  const last = endSlope(h[n - 2], h[n - 3], s[n - 2], s[n - 3]);
  return [first, ...inner, last];
}

function innerSlope(hLeft: number, hRight: number, sLeft: number, sRight: number): number {
  if (!(sLeft * sRight > 0)) return 0;
  const wLeft = 2 * hRight + hLeft;
  const wRight = hRight + 2 * hLeft;
  return (wLeft + wRight) / (wLeft / sLeft + wRight / sRight);
}

/** Three-point slope at an end, held to the sign of the end secant and to three times its size. */
function endSlope(hEnd: number, hNext: number, sEnd: number, sNext: number): number {
  const m = ((2 * hEnd + hNext) * sEnd - hEnd * sNext) / (hEnd + hNext);
  if (!(m * sEnd > 0)) return 0;
  const turns = sEnd * sNext < 0;
  return turns && Math.abs(m) > 3 * Math.abs(sEnd) ? 3 * sEnd : m;
}

function intervalOf(x: readonly number[], at: number): number {
  let [low, high] = [0, x.length - 1];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (x[middle] <= at) low = middle;
    else high = middle;
  }
  return low;
}
