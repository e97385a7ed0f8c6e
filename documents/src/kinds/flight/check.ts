import { checkLog } from "../log/check.js";
import { checkMotorInHand } from "../motor-in-hand/check.js";
import { checkPlan } from "../plan/check.js";
import type { RawView } from "../raw.js";

/** A flight is as right as the documents inside it. */
export function checkFlight(flight: RawView): void {
  if (flight.at("plan").isObject) checkPlan(flight.at("plan"));
  if (flight.at("motorInHand").isObject) checkMotorInHand(flight.at("motorInHand"));
  if (flight.at("log").isObject) checkLog(flight.at("log"));
  for (const each of flight.at("signOffs").list) checkSignOff(each);
}

/** A signature belongs to a step; a scrub or a misfire belongs to none. */
function checkSignOff(signOff: RawView): void {
  const what = signOff.at("what").text ?? "sign";
  const ofStep = what === "sign" || what === "unsign";
  if (ofStep && !signOff.has("step")) signOff.at("step").report("missing", "the step that was signed", '"igniter"');
  if (!ofStep && signOff.has("step"))
    signOff.at("step").report("not-together", `no step, since a ${what} belongs to all of them`);
}
