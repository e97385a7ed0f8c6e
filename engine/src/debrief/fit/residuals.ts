/** One sigma from the median of what is left, apart from the few that stick out. */
export function robustScale(r: Float64Array): number {
  const sorted = Float64Array.from(r, Math.abs).sort();
  return sorted.length === 0 ? 0 : 1.4826 * sorted[sorted.length >> 1]!;
}

/** By how much variances grow because neighbours err together, ≥ 1. */
export function togetherness(r: Float64Array): number {
  const n = r.length;
  const most = Math.min(40, Math.floor(n / 4));
  let zero = 0;
  for (const x of r) zero += x * x;
  if (!(zero > 0)) return 1;
  let sum = 1;
  for (let k = 1; k <= most; k++) {
    let c = 0;
    for (let i = k; i < n; i++) c += r[i]! * r[i - k]!;
    sum += (2 * (1 - k / (most + 1)) * c) / zero;
  }
  return Math.min(25, Math.max(1, sum));
}
