import type { FlightResult } from "../flight/result.js";
import { bodyFineness } from "../rocket/outline.js";
import { type ValidityWarning, validityWarnings } from "../rocket/validity.js";
import type { Stability, Warning } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";

/** Where the models were used outside what they were held against. */
export function validityOf(inputs: DecisionInputs, flight: FlightResult, stability: Stability): ValidityWarning[] {
  return validityWarnings({
    mach: flight.peaks().highestMach,
    fineness: bodyFineness(inputs.rocket),
    ...(flight.events.guideExit === null ? {} : { angleOfAttack: stability.guideExitAtAngle.angle }),
  });
}

/** Where the models were not held against measurements, and guesses that rule the answer. */
export function warningsOf(inputs: DecisionInputs, flight: FlightResult, stability: Stability): Warning[] {
  const warnings: Warning[] = validityOf(inputs, flight, stability);
  const note = (code: Warning["code"], value: number | null = null, limit: number | null = null) =>
    warnings.push({ code, value, limit });
  const top = flight.events.apogee?.position[2] ?? 0;
  if (
    inputs.wind.kind === "power" &&
    top > inputs.wind.gradientHeight &&
    Math.hypot(inputs.wind.east, inputs.wind.north) > 0
  )
    note("surface-wind-carried-up", top, inputs.wind.gradientHeight);
  if (inputs.rocket.inertiaSource === "estimated") note("inertia-estimated");
  if (inputs.spread.dragScale >= 0.15) note("drag-not-learned", inputs.spread.dragScale);
  if (flight.options.model === "pitching" && (flight.events.handOver?.time ?? 0) >= (flight.events.apogee?.time ?? 0))
    note("never-handed-over");
  if (inputs.tool === undefined && inputs.motor.delay.kind === "adjustable") note("no-tool");
  return warnings;
}
