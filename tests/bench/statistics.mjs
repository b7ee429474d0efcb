/** The value under which a share of the samples lies. */
export function quantile(samples, share) {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? Number.NaN;
}
export const median = (samples) => quantile(samples, 0.5);
export const summary = (samples) => ({
  count: samples.length,
  p50: median(samples),
  p99: quantile(samples, 0.99),
  max: Math.max(...samples),
});
