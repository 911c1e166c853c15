/** What makes a file look as if a unit or a sign were wrong. None of it stops a reading; the person decides. */
import { median } from './outliers.ts';

/**
 * - `drives`: the damper would push the bench along instead of holding it back, as with one sign the wrong way round.
 * - `too-fast`, `too-slow`: peak speeds of no damper on a bench, as with mm/s read as m/s or the other way round.
 * - `too-strong`, `too-weak`: peak forces likewise.
 * - `one-direction`: all points are of one direction.
 */
export type Suspicion = 'drives' | 'too-fast' | 'too-slow' | 'too-strong' | 'too-weak' | 'one-direction';

/** What benches do and dampers bear, wide on purpose (common practice, from memory). */
export const USUAL = { fastest_m_s: 12, slowest_m_s: 0.004, strongest_N: 60_000, weakest_N: 1 } as const;

export function suspicionsOf(speed_m_s: readonly number[], force_N: readonly number[]): Suspicion[] {
  const fastest = Math.max(...speed_m_s.map(Math.abs));
  const strongest = Math.max(...force_N.map(Math.abs));
  // A force of the gas is the same in both directions, so only the fast points of the two are compared.
  const fast = (sign: 1 | -1): number[] => force_N.filter((_, i) => speed_m_s[i] * sign > fastest / 2);
  const [up, down] = [fast(1), fast(-1)];
  const [high, low] = [up.length > 0 ? median(up) : 0, down.length > 0 ? median(down) : 0];
  const found: readonly (readonly [Suspicion, boolean])[] = [
    ['drives', high < low],
    ['too-fast', fastest > USUAL.fastest_m_s],
    ['too-slow', fastest < USUAL.slowest_m_s],
    ['too-strong', strongest > USUAL.strongest_N],
    ['too-weak', strongest < USUAL.weakest_N],
    ['one-direction', !speed_m_s.some((v) => v > 0) || !speed_m_s.some((v) => v < 0)],
  ];
  return found.filter(([, holds]) => holds).map(([suspicion]) => suspicion);
}
