/**
 * A curve by its points and slopes, made for many quick readings: cubic between the points, no number outside them.
 *   y(t) = y_i + h t [m_i + t (c2 + t c3)],   c2 = 3 s - 2 m_i - m_(i+1),   c3 = m_i + m_(i+1) - 2 s
 * Source: cubic Hermite interpolation, any text on numerical analysis.
 *
 * symbol  unit     meaning
 * x, y    of x, y  the points, x strictly rising
 * m       y/x      slope at a point
 * h, s    of x     width of an interval, its secant [y/x]
 * t       -        place in the interval, 0 to 1
 */
import { pchipSlopes } from './pchip.ts';

export class HermiteTable {
  readonly #x: Float64Array;
  /** Four numbers an interval: value, then the factors of t, t^2, t^3. */
  readonly #cubics: Float64Array;

  /** @param x strictly rising, length n >= 2 @param y length n @param m length n */
  constructor(x: readonly number[], y: readonly number[], m: readonly number[]) {
    this.#x = Float64Array.from(x);
    this.#cubics = new Float64Array(4 * (x.length - 1));
    for (let i = 0; i < x.length - 1; i++) {
      const h = x[i + 1] - x[i];
      const s = (y[i + 1] - y[i]) / h;
      const [c2, c3] = [3 * s - 2 * m[i] - m[i + 1], m[i] + m[i + 1] - 2 * s];
      this.#cubics.set([y[i], h * m[i], h * c2, h * c3], 4 * i);
    }
  }

  get first(): number {
    return this.#x[0];
  }

  get last(): number {
    return this.#x[this.#x.length - 1];
  }

  /** y(x), NaN outside the points. */
  at(x: number): number {
    const low = this.#interval(x);
    if (low < 0) return Number.NaN;
    const [points, c] = [this.#x, this.#cubics];
    const t = (x - points[low]) / (points[low + 1] - points[low]);
    const i = 4 * low;
    return c[i] + t * (c[i + 1] + t * (c[i + 2] + t * c[i + 3]));
  }

  /** dy/dx, NaN outside the points. */
  slope(x: number): number {
    const low = this.#interval(x);
    if (low < 0) return Number.NaN;
    const [points, c] = [this.#x, this.#cubics];
    const h = points[low + 1] - points[low];
    const t = (x - points[low]) / h;
    const i = 4 * low;
    return (c[i + 1] + t * (2 * c[i + 2] + 3 * t * c[i + 3])) / h;
  }

  /** Index of the point at or before x, the last but one for the last; -1 outside. */
  #interval(x: number): number {
    const points = this.#x;
    let low = 0;
    let high = points.length - 1;
    if (!(x >= points[low] && x <= points[high])) return -1;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (points[middle] <= x) low = middle;
      else high = middle;
    }
    return low;
  }
}

/** The monotone curve of `pchip` through the points. */
export const pchipTable = (x: readonly number[], y: readonly number[]): HermiteTable =>
  new HermiteTable(x, y, pchipSlopes(x, y));
