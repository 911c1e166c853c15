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

/** @param fA, fB, fAB  one number a sample; @returns both 0 where nothing varies */
export function varianceShare(fA: readonly number[], fB: readonly number[], fAB: readonly number[]): VarianceShare {
  const N = fA.length;
  const mean = (sum(fA) + sum(fB)) / (2 * N);
  const squares = (f: readonly number[]) => f.reduce((total, each) => total + (each - mean) ** 2, 0);
  const V = (squares(fA) + squares(fB)) / (2 * N);
  if (!(V > 0)) return { first: 0, total: 0 };
  let first = 0;
  let total = 0;
  for (let n = 0; n < N; n++) {
    first += (fB[n] - mean) * (fAB[n] - fA[n]);
    total += (fA[n] - fAB[n]) ** 2;
  }
  return { first: first / N / V, total: total / (2 * N * V) };
}

const sum = (f: readonly number[]): number => f.reduce((total, each) => total + each, 0);
