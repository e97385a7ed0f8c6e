import { type Descent, descend } from "../flight/descent.js";
import type { FlightResult } from "../flight/result.js";
import type { Setting } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";

/** The nominal flight opened at a setting, down to the ground; null where it never opens. */
export function openedAt(inputs: DecisionInputs, flight: FlightResult, setting: Setting | null): Descent | null {
  const { events, model } = flight;
  if (setting === null || events.burnout === null || events.landing === null) return null;
  const { delay } = inputs.motor;
  const burnout = delay.kind !== "none" && delay.clock === "ignition" ? model.burn.end : events.burnout.time;
  const time = burnout + (setting.delayMean ?? setting.delay) + inputs.recovery.lineStretch;
  if (time >= events.landing.time) return null;
  return descend(model, flight.at(time), 1e-6);
}
