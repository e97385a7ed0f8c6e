import type { Motor } from "../motor/motor.js";
import type { Rocket } from "../rocket/rocket.js";
import type { Spread } from "../spread/spread.js";
import type { Learned } from "./learned.js";

/** What was learned, as a plan reckons with it: beside it what stood there before. */
export interface AppliedLearning extends Learned {
  readonly before: { readonly rocket: Rocket; readonly motor: Motor; readonly spread: Spread };
}

/** The parts of a plan that flights teach. */
export interface TaughtPlan {
  readonly rocket: Rocket;
  readonly motor: Motor;
  readonly spread: Spread;
  readonly learned?: AppliedLearning;
}
