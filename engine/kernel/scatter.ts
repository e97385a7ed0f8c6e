import { row } from "../flight/fast/work.js";
import { Doubles } from "../math/doubles.js";
import { JudgeWork } from "./judge-work.js";

/** Where a question to the engine stands, and then its answer: a number that is handed over would be an object there. */
export const asked = row(1);

@external("scatter", "cdf")
declare function answerCdf(): void;

@external("scatter", "quantile")
declare function answerQuantile(): void;

@inline
export function cdf(_: JudgeWork, z: f64): f64 {
  asked[0] = z;
  answerCdf();
  return asked[0];
}

@inline
export function quantile(_: JudgeWork, p: f64): f64 {
  asked[0] = p;
  answerQuantile();
  return asked[0];
}
