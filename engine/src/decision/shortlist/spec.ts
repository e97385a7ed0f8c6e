import type { QuickModel } from "../../flight/options.js";
import type { OpenPlan } from "./candidate.js";

/** All that motors are judged by: plain data, so that it can be sent to a worker. */
export interface ShortlistSpec {
  readonly plan: OpenPlan;
  /** Flights drawn for each motor, ≥ 1. */
  readonly draws: number;
  readonly seed: number;
  readonly model: QuickModel;
}
