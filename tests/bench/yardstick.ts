/** A fixed scalar loop, timed in the same run: what this machine is worth today, so that figures can be compared. */
import type { BenchCase } from './bench-case.ts';

const TERMS = 1_000_000;

/** Σ 1/k², k to a million, misses π²/6 by a millionth (Euler; the rest of the sum is about 1/n). */
export const YARDSTICK: BenchCase = {
  name: 'yardstick',
  items: 1,
  prepare: () => () => {
    let sum = 0;
    for (let k = 1; k <= TERMS; k++) sum += 1 / (k * k);
    return sum;
  },
  check(result) {
    const missing = Math.PI ** 2 / 6 - (result as number);
    if (!(Math.abs(missing * TERMS - 1) < 1e-3))
      throw new Error(`yardstick: ${missing} is missing, wanted ${1 / TERMS}`);
  },
};
