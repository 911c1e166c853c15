/**
 * Points of Sobol's sequence, shifted digit by digit with a seeded chance, so that none lies on an edge and different seeds give
 * independent estimates.
 *   x_n = V_1 g_1 xor V_2 g_2 xor ..., g the Gray code of n;  the digital shift is one more number under the xor
 * Source: I. M. Sobol, USSR Comput. Math. Math. Phys. 7 (1967) 86-112; Gray code order: I. A. Antonov & V. M. Saleev, ibid. 19 (1979)
 * 252-256; direction numbers: Joe & Kuo (sobol-directions.ts); digital shift: A. B. Owen, in Monte Carlo and Quasi-Monte Carlo Methods
 * (1995) (all but the numbers from memory). No library for it is as well kept as the table is old.
 * Beyond the dimensions of the table values come from the seeded chance alone.
 *
 * symbol  unit  meaning
 * n       -     number of the point, from 0
 * V_k     -     direction numbers of one dimension, as 32 binary digits behind the point
 */
import { chanceOf } from '../search/random.ts';
import { DIRECTIONS } from './sobol-directions.ts';

const BITS = 32;
const SCALE = 2 ** -BITS;

/** Values of point n, one a dimension, each over 0 and below 1. */
export type Sequence = (n: number) => number[];

/** Unshifted values as whole numbers of 32 binary digits, one a dimension. */
export function sobolDigits(n: number, dimensions: number): number[] {
  const gray = (n ^ (n >>> 1)) >>> 0;
  return Array.from({ length: dimensions }, (_, d) => xorOf(directionNumbers(d), gray));
}

/** @param seed  whole number; the same seed gives the same points */
export function shiftedSobol(seed: number, dimensions: number): Sequence {
  const known = Math.min(dimensions, DIRECTIONS.length + 1);
  const chance = chanceOf(seed, 0);
  const shifts = Array.from({ length: known }, () => Math.floor(chance.share() * 2 ** BITS));
  return (n) => {
    const digits = sobolDigits(n, known);
    const inTable = digits.map((digit, d) => (((digit ^ shifts[d]) >>> 0) + 0.5) * SCALE);
    if (dimensions === known) return inTable;
    const rest = chanceOf(seed, n + 1);
    return [...inTable, ...Array.from({ length: dimensions - known }, () => Math.max(SCALE, rest.share()))];
  };
}

function xorOf(V: readonly number[], gray: number): number {
  let x = 0;
  for (let k = 0, left = gray; left !== 0; k++, left >>>= 1) if (left & 1) x ^= V[k];
  return x >>> 0;
}

const kept = new Map<number, readonly number[]>();

/** V_1 to V_32 of a dimension, the first of which is that of van der Corput. */
function directionNumbers(dimension: number): readonly number[] {
  const known = kept.get(dimension);
  if (known) return known;
  const V = dimension === 0 ? vanDerCorput() : fromPolynomial(DIRECTIONS[dimension - 1]);
  kept.set(dimension, V);
  return V;
}

const vanDerCorput = (): number[] => Array.from({ length: BITS }, (_, k) => 2 ** (BITS - 1 - k));

function fromPolynomial({ P, m }: (typeof DIRECTIONS)[number]): number[] {
  const s = m.length;
  const V = m.map((m_k, k) => (m_k << (BITS - 1 - k)) >>> 0);
  for (let k = s; k < BITS; k++) {
    let next = V[k - s] ^ (V[k - s] >>> s);
    for (let i = 1; i < s; i++) if ((P >>> (s - i)) & 1) next ^= V[k - i];
    V.push(next >>> 0);
  }
  return V;
}
