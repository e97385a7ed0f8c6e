import { JudgeWork } from "./judge-work.js";

@external("scatter", "cdf")
declare function cdfOf(z: f64): f64;

@external("scatter", "quantile")
declare function quantileOf(p: f64): f64;

@inline
export function cdf(_: JudgeWork, z: f64): f64 {
  return cdfOf(z);
}

@inline
export function quantile(_: JudgeWork, p: f64): f64 {
  return quantileOf(p);
}
