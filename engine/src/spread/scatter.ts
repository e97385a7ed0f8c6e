import type { f64 } from "../math/doubles.js";
import type { JudgeWork } from "./judge-work.js";

const asked = new Float64Array(1);

/** Share of delays that end before a time in standard deviations from their mean. */
export function cdf(j: JudgeWork, z: f64): f64 {
  asked[0] = z;
  j.cdfIn(asked, 0);
  return asked[0]!;
}

/** Standard deviations from the mean that a share of delays stays below. */
export function quantile(j: JudgeWork, p: f64): f64 {
  asked[0] = p;
  j.quantileIn(asked, 0);
  return asked[0]!;
}
