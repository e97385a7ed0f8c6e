import { checkLog } from "../log/check.js";
import { checkMotorInHand } from "../motor-in-hand/check.js";
import { checkPlan } from "../plan/check.js";
import type { RawView } from "../raw.js";

/** A flight is as right as the documents inside it. */
export function checkFlight(flight: RawView): void {
  if (flight.at("plan").isObject) checkPlan(flight.at("plan"));
  if (flight.at("motorInHand").isObject) checkMotorInHand(flight.at("motorInHand"));
  if (flight.at("log").isObject) checkLog(flight.at("log"));
}
