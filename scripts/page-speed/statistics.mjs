/**
 * The value that a share of all values do not exceed (nearest rank).
 * @param {readonly number[]} values
 * @param {number} share
 */
export function quantile(values, share) {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.max(0, Math.ceil(share * sorted.length) - 1)];
}

/** @param {readonly number[]} values */
export const spreadOf = (values) => ({
  median_ms: quantile(values, 0.5),
  p95_ms: quantile(values, 0.95),
  most_ms: quantile(values, 1),
  runs: values.length,
});
