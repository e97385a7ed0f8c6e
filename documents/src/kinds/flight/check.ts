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
  checkFindings(flight.at("findings"));
  checkForecast(flight.at("forecast").at("apogee"));
}

/** An event stands there once, and a correlation belongs to two factors. */
function checkFindings(findings: RawView): void {
  const named = new Set<string>();
  for (const event of findings.at("events").list) {
    const name = event.at("name").text ?? "";
    if (named.has(name)) event.at("name").report("event-twice", "each event once");
    named.add(name);
  }
  if (findings.has("scalesCorrelation") && !(findings.has("drag") && findings.has("impulse")))
    findings.at("scalesCorrelation").report("not-together", "a correlation with both drag and impulse beside it");
  for (const [key, of] of [
    ["delayError", "delay"],
    ["delayIs", "delay"],
  ] as const)
    if (findings.has(key) && !findings.has(of)) findings.at(of).report("missing", "the delay as flown", '"10.4 s"');
}

/** A band has its lower end below. */
function checkForecast(band: RawView): void {
  const [from, to] = [band.at("from").si("length"), band.at("to").si("length")];
  if (from !== undefined && to !== undefined && from > to)
    band.at("to").report("out-of-range", "a height above `from`");
}

/** A signature belongs to a step; a scrub or a misfire belongs to none. */
function checkSignOff(signOff: RawView): void {
  const what = signOff.at("what").text ?? "sign";
  const ofStep = what === "sign" || what === "unsign";
  if (ofStep && !signOff.has("step")) signOff.at("step").report("missing", "the step that was signed", '"igniter"');
  if (!ofStep && signOff.has("step"))
    signOff.at("step").report("not-together", `no step, since a ${what} belongs to all of them`);
}
