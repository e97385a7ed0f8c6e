import type { MarginAt } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import type { DescentData, FlightData } from "../answer/flight-data.js";
import { amount, decimals, glued, percent, placeWords, upperFirst } from "./numbers.en.js";

const seconds = (value: number): string => amount(value, "s", 1);

/** The way up: guide exit, burnout, the fastest and the hardest moment, the top. */
export function climbSentence({ guideExit, burnout, apogee, fastest, hardest }: FlightData): string {
  const parts = [
    guideExit && `leaves the guide at ${amount(guideExit.speed, "m/s", 1)} after ${amount(guideExit.time, "s", 2)}`,
    burnout &&
      `burnout after ${seconds(burnout.time)} at ${amount(burnout.height, "m")}, ${amount(burnout.speed, "m/s")}`,
    `fastest ${amount(fastest.speed, "m/s")} (Mach ${decimals(fastest.mach, 2)})`,
    `hardest ${amount(hardest.acceleration, "m/s²")}`,
    apogee &&
      `top after ${seconds(apogee.time)} at ${amount(apogee.height, "m")} AGL, still ${amount(apogee.airspeed, "m/s")} through the air`,
  ];
  return `${upperFirst(parts.filter((part) => part !== null).join("; "))}.`;
}

/** The coast as it is expected, and its spread. */
export function coastSentence({ coast, apogeeHeight, draws }: DecisionData): string {
  const spread =
    draws === 1
      ? ""
      : `; 9 in 10 flights ${decimals(coast.p05, 1)} to ${seconds(coast.p95)}, top ${decimals(apogeeHeight.p05, 0)} to ${amount(apogeeHeight.p95, "m")} AGL`;
  return `Coast from burnout to the top ${seconds(coast.nominal)}${spread}.`;
}

/** `2.2 calibres (11 % of the length)`. */
export function marginWords({ calibres, ofLength }: MarginAt): string {
  return `${glued(decimals(calibres, 1), "calibres")} (${percent(ofLength)} of the length)`;
}

/** Static margin where it matters. */
export function stabilitySentence({ stability }: DecisionData): string {
  const { guideExitAtAngle: angled } = stability;
  const degrees = decimals((angled.angle * 180) / Math.PI, 0);
  return `CP ${amount(1000 * stability.cp, "mm")} from the nose tip. Margin leaving the guide ${marginWords(stability.guideExit)}, at the wind's ${glued(degrees, "deg")} there ${glued(decimals(angled.calibres, 1), "calibres")}; at burnout ${marginWords(stability.burnout)}.`;
}

/** The way down when it opens at the delay to cut. */
export function descentSentence({ openings, landing }: DescentData): string {
  const opened = openings.map(
    ({ which, height, airspeed, fill }) =>
      `${which} at ${amount(height, "m")} AGL and ${amount(airspeed, "m/s")}, full after ${seconds(fill)}`,
  );
  const down =
    landing === null
      ? ""
      : ` Lands after ${seconds(landing.time)} at ${amount(landing.descentSpeed, "m/s", 1)} down and ${amount(landing.groundSpeed, "m/s", 1)} over ground, ${amount(landing.energy, "J")}, ${placeWords(landing.east, landing.north)}.`;
  return `Opened at the delay to cut: ${opened.join("; ")}.${down}`;
}

/** What opening the recovery bears. */
export function strengthSentence({ strength }: DecisionData): string {
  return strength.rated
    ? `Its weakest rated part bears an opening at ${amount(strength.speed, "m/s")}.`
    : "No strength is given for canopy or harness.";
}
