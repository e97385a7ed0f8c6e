import { padTemperature } from "../air/at-field.js";
import type { FlightResult } from "../flight/result.js";
import { varies } from "../spread/drawn-values.js";
import type { CutPlan } from "./cut-plan.js";
import { type DelayScatter, delayScatter } from "./delay-scatter.js";
import type { DecisionInputs } from "./inputs.js";
import { depthPerSecondOf } from "./removals.js";

type PlannedDelay = Pick<CutPlan, "delay" | "removed" | "depth">;

/**
 * Scatter of the delay at one setting of a plan: its cut or its reading, its motor's temperature, the air half-way up.
 *
 * @param flight the nominal flight, near enough
 */
export function settingScatter(inputs: DecisionInputs, flight: FlightResult, plan: PlannedDelay): DelayScatter {
  const { motor, tool, cutSoFar, spread } = inputs;
  const { model, events } = flight;
  const asItIs = cutSoFar !== undefined && plan.depth !== null && Math.abs(plan.depth - cutSoFar.removedDepth) < 1e-9;
  const cutError = plan.removed > 0 ? (spread.cutDepth ?? tool?.depthError ?? 0) : 0;
  const depthPerSecond = motor.delay.kind === "adjustable" ? depthPerSecondOf(motor.delay, tool) : undefined;
  return delayScatter(plan.delay, spread.delay, {
    depthError: asItIs && varies(spread) ? cutSoFar.depthError : cutError,
    ...(depthPerSecond === undefined ? {} : { depthPerSecond }),
    motorTemperature: inputs.motorTemperature ?? padTemperature(inputs.air),
    pressure: model.airAt(0.5 * (events.apogee?.position[2] ?? 0)).pressure,
    ...(inputs.learned?.delay === undefined ? {} : { learned: inputs.learned.delay }),
  });
}

/**
 * One sigma of a delay as it was set that is not the motor's own: of its cut's depth, or of the reading of it, and of the day's
 * burning rate [s]. What flights teach of a motor type must not hold it against the motor.
 *
 * @param flight the plan's nominal flight
 * @param set delay as set [s], ≥ 0
 * @example
 * setDelayError(inputs, fly(inputs), 9); // 0.26
 */
export function setDelayError(inputs: DecisionInputs, flight: FlightResult, set: number): number {
  const { delay } = inputs.motor;
  const removed = delay.kind === "adjustable" ? Math.max(0, delay.longest - set) : 0;
  const { cut, burningRate } = settingScatter(inputs, flight, {
    delay: set,
    removed,
    depth: inputs.cutSoFar?.removedDepth ?? null,
  });
  return Math.hypot(cut, burningRate);
}
