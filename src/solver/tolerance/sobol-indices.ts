/**
 * How much of the variance of a quantity comes from each group of inputs, by pick and freeze: A and B are independent samples, AB is
 * A with the group taken from B.
 *   first order  S = mean of f_B (f_AB - f_A) / V        share that is lost when the group is known
 *   total        T = mean of (f_A - f_AB)^2 / 2 V        share that is left when all but the group is known
 * S and T of a quantity that is a sum of terms with one group each are equal; T - S is what the group does together with others.
 * Source: A. Saltelli et al., Comput. Phys. Commun. 181 (2010) 259-270, Table 2 (b) and (f), the latter by M. J. W. Jansen (1999)
 * (from memory). f is measured from its mean, which leaves both what they are and lowers the error of the first.
 *
 * symbol  unit     meaning
 * f       of f     the quantity at the samples
 * V       of f^2   its variance, over A and B
 */

export interface VarianceShare {
  /** S [-], within its sampling error not below 0. */
  readonly first: number;
  /** T [-], >= 0. */
  readonly total: number;
}

/** In the square of the unit of f, so that places can be put together. */
export interface SharesOfVariance {
  /** V. */
  readonly variance: number;
  /** S V. */
  readonly first: number;
  /** T V. */
  readonly total: number;
}

type Column = readonly number[] | Float64Array;

/** @param fA, fB, fAB  one number a sample; @returns both 0 where nothing varies */
export function varianceShare(fA: Column, fB: Column, fAB: Column): VarianceShare {
  const { variance, first, total } = sharesOfVariance(
    fA,
    fB,
    fAB,
    Int32Array.from(fA, (_, n) => n),
  );
  if (!(variance > 0)) return { first: 0, total: 0 };
  return { first: first / variance, total: total / variance };
}

/**
 * Over some samples, any of them more than once.
 * @param fA, fB, fAB  one number a sample; a sample without one of the three, NaN, is left out
 * @param picks        numbers of samples
 */
export function sharesOfVariance(fA: Column, fB: Column, fAB: Column, picks: Int32Array): SharesOfVariance {
  let N = 0;
  let sum = 0;
  for (const n of picks) {
    if (isLacking(fA, fB, fAB, n)) continue;
    N += 1;
    sum += fA[n] + fB[n];
  }
  if (N === 0) return { variance: 0, first: 0, total: 0 };
  const mean = sum / (2 * N);
  let V = 0;
  let first = 0;
  let total = 0;
  for (const n of picks) {
    if (isLacking(fA, fB, fAB, n)) continue;
    V += (fA[n] - mean) ** 2 + (fB[n] - mean) ** 2;
    first += (fB[n] - mean) * (fAB[n] - fA[n]);
    total += (fA[n] - fAB[n]) ** 2;
  }
  return { variance: V / (2 * N), first: first / N, total: total / (2 * N) };
}

const isLacking = (fA: Column, fB: Column, fAB: Column, n: number): boolean => Number.isNaN(fA[n] + fB[n] + fAB[n]);
