/**
 * Monotone cubics end to end, with a kink where they meet; one cubic across a kink would round it off over the whole of the intervals
 * beside it.
 *
 * symbol  unit     meaning
 * x, y    of x, y  the points, x strictly rising
 */
import { type Interpolant, pchip } from './pchip.ts';

/**
 * @param x  strictly rising, length n >= 1
 * @param y  length n
 * @param kinks  rising; those that are no inner point of x do not count
 */
export function kinkedCurve(x: readonly number[], y: readonly number[], kinks: readonly number[]): Interpolant {
  const last = x.length - 1;
  const inner = kinks.map((kink) => x.indexOf(kink)).filter((i) => i > 0 && i < last);
  const starts = [0, ...inner];
  const pieces = starts.map((from, k) => {
    const to = (starts[k + 1] ?? last) + 1;
    return pchip(x.slice(from, to), y.slice(from, to));
  });
  return (at) => {
    const before = inner.findIndex((i) => at < x[i]);
    return pieces[before < 0 ? inner.length : before](at);
  };
}
