/** Observed order of convergence: the slope of log error against log element size. */

/** Least-squares slope of ln(error) on -ln(elements). @param errors one per mesh, none of them 0 */
export function observedOrder(elements: readonly number[], errors: readonly number[]): number {
  const x = elements.map((n) => -Math.log(n));
  const y = errors.map((e) => Math.log(Math.abs(e)));
  const mean = (values: readonly number[]) => values.reduce((sum, v) => sum + v, 0) / values.length;
  const [mx, my] = [mean(x), mean(y)];
  const covariance = x.reduce((sum, xi, i) => sum + (xi - mx) * (y[i] - my), 0);
  return covariance / x.reduce((sum, xi) => sum + (xi - mx) ** 2, 0);
}
