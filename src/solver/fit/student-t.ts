/**
 * Quantile of Student's t distribution, from its distribution function by the incomplete beta function:
 *   P(|T| > t) = I_x(nu/2, 1/2),   x = nu / (nu + t^2)
 * I_x by its continued fraction (Lentz's way), ln Gamma by Lanczos' sum.
 * Source: Abramowitz & Stegun 26.5.8, 26.7.1; Press et al., Numerical Recipes (2007) 6.1, 6.4 (all from memory).
 *
 * symbol  unit  meaning
 * nu      -     degrees of freedom, any number > 0
 * t       -     quantile
 * a, b    -     parameters of the beta function
 * x       -     its argument
 */
import { bracketedRoot } from '../numeric/bracketed-root.ts';

/** Lanczos' coefficients for g = 7, n = 9 (Godfrey), good to 1e-15. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
];
const LANCZOS_G = 7;

/** ln Gamma(x), x > 0.5. */
function logGamma(x: number): number {
  const y = x - 1;
  const sum = LANCZOS.reduce((total, coefficient, i) => total + (i === 0 ? coefficient : coefficient / (y + i)), 0);
  const t = y + LANCZOS_G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (y + 0.5) * Math.log(t) - t + Math.log(sum);
}

const logGammaOf = (x: number): number => (x > 0.5 ? logGamma(x) : logGamma(x + 1) - Math.log(x));

const MOST_TERMS = 500;
const TINY = 1e-300;

/** The continued fraction of I_x(a, b), which converges quickly for x < (a + 1)/(a + b + 2). */
function betaFraction(a: number, b: number, x: number): number {
  const kept = (value: number): number => (Math.abs(value) < TINY ? TINY : value);
  let c = 1;
  let d = 1 / kept(1 - ((a + b) * x) / (a + 1));
  let fraction = d;
  for (let m = 1; m <= MOST_TERMS; m++) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / kept(1 + even * d);
    c = kept(1 + even / c);
    fraction *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / kept(1 + odd * d);
    c = kept(1 + odd / c);
    const change = d * c;
    fraction *= change;
    if (Math.abs(change - 1) < 1e-15) break;
  }
  return fraction;
}

/** I_x(a, b), the regularised incomplete beta function, 0 <= x <= 1. */
export function incompleteBeta(a: number, b: number, x: number): number {
  if (x <= 0 || x >= 1) return x <= 0 ? 0 : 1;
  const front = Math.exp(logGammaOf(a + b) - logGammaOf(a) - logGammaOf(b) + a * Math.log(x) + b * Math.log1p(-x));
  return x < (a + 1) / (a + b + 2) ? (front * betaFraction(a, b, x)) / a : 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

const LARGEST = 1e6;

/** t such that |T| <= t with the given probability. @param probability  in (0, 1) @param nu  degrees of freedom > 0 */
export function studentT(probability: number, nu: number): number {
  const beyond = (t: number): number => incompleteBeta(nu / 2, 0.5, nu / (nu + t ** 2));
  const root = bracketedRoot((t) => beyond(t) - (1 - probability), 0, LARGEST);
  return root.status === 'converged' ? root.value : Number.POSITIVE_INFINITY;
}
