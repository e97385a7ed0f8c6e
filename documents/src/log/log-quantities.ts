import type { LogQuantity } from "./log-types.js";

/** Everything that a column may hold, in the order in which it is told. */
export const logQuantities: readonly LogQuantity[] = Object.freeze([
  "time",
  "height",
  "altitude",
  "pressure",
  "speed",
  "acceleration",
  "temperature",
  "battery",
  "marks",
]);

/** What moves as a rocket flies: a log without any of it tells of no flight. */
export const movingQuantities = Object.freeze(["height", "altitude", "pressure", "acceleration"] as const);
