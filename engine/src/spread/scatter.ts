import type { f64 } from "../math/doubles.js";
import type { JudgeWork } from "./judge-work.js";

/** Share of delays that end before a time in standard deviations from their mean. */
export function cdf(j: JudgeWork, z: f64): f64 {
  return j.cdf(z);
}

/** Standard deviations from the mean that a share of delays stays below. */
export function quantile(j: JudgeWork, p: f64): f64 {
  return j.quantile(p);
}
