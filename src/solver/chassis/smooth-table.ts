/**
 * A measured table as a smooth curve with its slope and its integral: the monotone cubic of numeric/pchip.ts, so that a
 * ratio has one slope at each place and a spring one rate.
 *   y = y_i + h t (m_i + t (c2 + t c3)),  t = (x - x_i) / h
 *
 * symbol  unit     meaning
 * x, y    of x, y  the points, x strictly rising
 * h       of x     width of an interval
 * t       -        place in the interval, 0 to 1
 * m       y/x      slope of the curve at a point
 * c2, c3  y/x      coefficients of the cubic
 */
import { pchipSlopes } from '../numeric/pchip.ts';

export interface Spot {
  readonly value: number;
  readonly slope: number;
  /** Area under the curve from the first point to here. */
  readonly integral: number;
}

/** Beyond the table: its end value stays, or its end slope goes on. */
export type Beyond = 'hold' | 'go-on';

/** @param x strictly rising, length n >= 2  @param y length n */
export function smoothTable(x: readonly number[], y: readonly number[], beyond: Beyond): (at: number) => Spot {
  const m = pchipSlopes(x, y);
  const inside = (i: number, at: number): Spot => {
    const h = x[i + 1] - x[i];
    const t = (at - x[i]) / h;
    const s = (y[i + 1] - y[i]) / h;
    const c2 = 3 * s - 2 * m[i] - m[i + 1];
    const c3 = m[i] + m[i + 1] - 2 * s;
    return {
      value: y[i] + h * t * (m[i] + t * (c2 + t * c3)),
      slope: m[i] + t * (2 * c2 + 3 * t * c3),
      integral: h * t * (y[i] + h * t * (m[i] / 2 + t * (c2 / 3 + (t * c3) / 4))),
    };
  };
  const areas = [0];
  for (let i = 0; i < x.length - 1; i++) areas.push(areas[i] + inside(i, x[i + 1]).integral);
  const last = x.length - 1;
  const outside = (i: number, at: number): Spot => {
    const d = at - x[i];
    const slope = beyond === 'hold' ? 0 : m[i];
    return { value: y[i] + slope * d, slope, integral: areas[i] + d * (y[i] + (slope * d) / 2) };
  };
  return (at) => {
    if (at < x[0]) return outside(0, at);
    if (at >= x[last])
      return at === x[last] && last > 0 ? { ...inside(last - 1, at), integral: areas[last] } : outside(last, at);
    const i = x.findIndex((_, k) => at < x[k + 1]);
    const spot = inside(i, at);
    return { ...spot, integral: areas[i] + spot.integral };
  };
}
