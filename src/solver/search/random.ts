/**
 * Seeded chance of one start. Generator: xoroshiro128+ (D. Blackman, S. Vigna, "Scrambled linear pseudorandom number generators",
 * ACM TOMS 47 (2021), from memory), as in the library pure-rand.
 */
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';

export interface Chance {
  /** From 0 to below 1. */
  readonly share: () => number;
  /** A whole number from 0 to below `count`, which is at least 1. */
  readonly below: (count: number) => number;
  readonly pick: <Item>(items: readonly Item[]) => Item;
}

/** Spreads neighbouring starts over the range of seeds: 2^32 over the golden ratio, Knuth's multiplicative hash (from memory). */
const SPREAD = 0x9e3779b1;

export function chanceOf(seed: number, start: number): Chance {
  const generator = xoroshiro128plus((Math.imul(seed, 31) ^ Math.imul(start + 1, SPREAD)) | 0);
  const below = (count: number): number => uniformInt(generator, 0, count - 1);
  return {
    share: () => uniformFloat64(generator),
    below,
    pick: (items) => items[below(items.length)],
  };
}
