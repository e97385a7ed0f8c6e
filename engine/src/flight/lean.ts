import type { f64 } from "../math/doubles.js";

/**
 * Lean at the end of a short swing from rest, per unit of its first angular acceleration [s²].
 *
 * For θ'' + c θ' − k θ = 1: a series in time, good to a thousandth where c t and √k t stay below 0.5.
 */
export function leanAfter(time: f64, damping: f64, growth: f64): f64 {
  const t = time;
  return 0.5 * t * t * (1 - (damping * t) / 3 + ((damping * damping + growth) * t * t) / 12);
}

/** Its rate then [s]. */
export function leanRateAfter(time: f64, damping: f64, growth: f64): f64 {
  const t = time;
  return t * (1 - (damping * t) / 2 + ((damping * damping + growth) * t * t) / 6);
}
