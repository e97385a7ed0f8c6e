import type { FlightResult } from "../flight/result.js";
import { bodyFineness } from "../rocket/outline.js";
import { type ValidityWarning, validityWarnings } from "../rocket/validity.js";
import type { Stability, Warning } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { stabilityOf } from "./stability.js";

type Flown = Pick<DecisionInputs, "rocket" | "wind">;

/** Where the models were used outside what they were held against. */
export function validityOf(inputs: Flown, flight: FlightResult, stability: Stability): ValidityWarning[] {
  return validityWarnings({
    mach: flight.peaks().highestMach,
    fineness: bodyFineness(inputs.rocket),
    ...(flight.events.guideExit === null ? {} : { angleOfAttack: stability.guideExitAtAngle.angle }),
  });
}

/**
 * Where one flight was reckoned beyond what the models were held against, and the guesses that it rests on.
 *
 * @param inputs of the flight
 * @example
 * flightWarnings(inputs, fly(inputs)).map(({ code }) => code); // ["mach-through-bridge", "surface-wind-carried-up"]
 */
export function flightWarnings(
  inputs: Flown,
  flight: FlightResult,
  stability: Stability = stabilityOf(flight),
): Warning[] {
  const warnings: Warning[] = validityOf(inputs, flight, stability);
  const note = (code: Warning["code"], value: number | null = null, limit: number | null = null) =>
    warnings.push({ code, value, limit });
  const { apogee, handOver } = flight.events;
  const top = apogee?.position[2] ?? 0;
  const { wind, rocket } = inputs;
  if (wind.kind === "power" && top > wind.gradientHeight && Math.hypot(wind.east, wind.north) > 0)
    note("surface-wind-carried-up", top, wind.gradientHeight);
  if (rocket.inertiaSource === "estimated") note("inertia-estimated");
  if (flight.options.model === "pitching" && (handOver?.time ?? 0) >= (apogee?.time ?? 0)) note("never-handed-over");
  return warnings;
}

/**
 * Where the models were not held against measurements, and guesses that rule the answer.
 *
 * @param notFollowed opened draws that could not be followed to the ground
 */
export function warningsOf(
  inputs: DecisionInputs,
  flight: FlightResult,
  stability: Stability,
  notFollowed: number,
): Warning[] {
  const { spread, tool, motor } = inputs;
  return [
    ...flightWarnings(inputs, flight, stability),
    ...(notFollowed > 0 ? [{ code: "descents-not-followed" as const, value: notFollowed, limit: null }] : []),
    ...(spread.dragScale >= 0.15 ? [{ code: "drag-not-learned" as const, value: spread.dragScale, limit: null }] : []),
    ...(tool === undefined && motor.delay.kind === "adjustable"
      ? [{ code: "no-tool" as const, value: null, limit: null }]
      : []),
  ];
}
