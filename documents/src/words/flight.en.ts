import type { MarginAt } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import type { FlightData } from "../answer/flight-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { type FlownData, flownWords } from "./headline.en.js";
import { amount, decimals, figureWords, glued, percent, placeWords, rangeWords, upperFirst } from "./numbers.en.js";

const seconds = (value: number): string => amount(value, "s", 1);

/** The way up: guide exit, burnout, the fastest and the hardest moment, the top. */
export function climbSentence(
  { guideExit, burnout, apogee, fastest, hardest }: FlightData,
  units: UnitSystem = "metric",
): string {
  const speed = (value: number): string => figureWords(value, "speed", units, 0);
  const height = (value: number): string => figureWords(value, "distance", units);
  const parts = [
    guideExit &&
      `leaves the guide at ${figureWords(guideExit.speed, "speed", units)} after ${amount(guideExit.time, "s", 2)}`,
    burnout && `burnout after ${seconds(burnout.time)} at ${height(burnout.height)}, ${speed(burnout.speed)}`,
    `fastest ${speed(fastest.speed)} (Mach ${decimals(fastest.mach, 2)})`,
    `hardest ${figureWords(hardest.acceleration, "acceleration", units)}`,
    apogee &&
      `top after ${seconds(apogee.time)} at ${height(apogee.height)} AGL, still ${speed(apogee.airspeed)} through the air`,
  ];
  return `${upperFirst(parts.filter((part) => part !== null).join("; "))}.`;
}

/** The coast as it is expected, and its spread. */
export function coastSentence({ coast, apogeeHeight, draws }: DecisionData, units: UnitSystem = "metric"): string {
  const spread =
    draws === 1
      ? ""
      : `; 9 in 10 flights ${decimals(coast.p05, 1)} to ${seconds(coast.p95)}, top ${rangeWords(apogeeHeight.p05, apogeeHeight.p95, "distance", units)} AGL`;
  return `Coast from burnout to the top ${seconds(coast.nominal)}${spread}.`;
}

/** `2.2 calibres (11 % of the length)`. */
export function marginWords({ calibres, ofLength }: MarginAt): string {
  return `${glued(decimals(calibres, 1), "calibres")} (${percent(ofLength)} of the length)`;
}

/** Static margin where it matters. */
export function stabilitySentence({ stability }: DecisionData, units: UnitSystem = "metric"): string {
  const { guideExitAtAngle: angled } = stability;
  const degrees = decimals((angled.angle * 180) / Math.PI, 0);
  return `CP ${figureWords(stability.cp, "length", units)} from the nose tip. Margin leaving the guide ${marginWords(stability.guideExit)}, at the wind's ${glued(degrees, "deg")} there ${glued(decimals(angled.calibres, 1), "calibres")}; at burnout ${marginWords(stability.burnout)}.`;
}

/** The way down when it opens at the setting that is to be flown; null where it never opens. */
export function descentSentence(
  { opened: descent, ...flown }: Pick<DecisionData, "opened"> & FlownData,
  units: UnitSystem = "metric",
): string | null {
  if (descent === null) return null;
  const { openings, landing } = descent;
  const opened = openings.map(
    ({ which, height, airspeed, fill }) =>
      `${which} at ${figureWords(height, "distance", units)} AGL and ${figureWords(airspeed, "speed", units, 0)}, full after ${seconds(fill)}`,
  );
  const down =
    landing === null
      ? ""
      : ` Lands after ${seconds(landing.time)} at ${figureWords(landing.descentSpeed, "speed", units)} down and ${figureWords(landing.groundSpeed, "speed", units)} in all, ${figureWords(landing.energy, "energy", units)}, ${placeWords(landing.east, landing.north, units)}.`;
  const at = flown.choice === null && flown.toCut === null ? "" : ` at ${flownWords(flown)}`;
  return `Opened${at}: ${opened.join("; ")}.${down}`;
}

/** What opening the recovery bears. */
export function strengthSentence({ strength }: DecisionData, units: UnitSystem = "metric"): string {
  return strength.rated
    ? `Its weakest rated part bears an opening at ${figureWords(strength.speed, "speed", units, 0)}.`
    : "No strength is given for canopy or harness.";
}
