import { cautions } from "@delaywright/documents";
import type { Descent, FlightResult, MarginAt } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { speedOf } from "../flight-json.js";
import { amount, decimals, glued, percent, placeWords } from "../numbers.js";
import { bullet, upperFirst, wrap } from "../wrap.js";

const seconds = (value: number): string => amount(value, "s", 1);

function climb({ events, peaks }: FlightResult): string {
  const { fastest, hardest } = peaks();
  const { guideExit, burnout, apogee } = events;
  const parts = [
    guideExit && `leaves the guide at ${amount(speedOf(guideExit), "m/s", 1)} after ${amount(guideExit.time, "s", 2)}`,
    burnout &&
      `burnout after ${seconds(burnout.time)} at ${amount(burnout.position[2], "m")}, ${amount(speedOf(burnout), "m/s")}`,
    `fastest ${amount(fastest.speed, "m/s")} (Mach ${decimals(fastest.mach, 2)})`,
    `hardest ${amount(hardest.acceleration, "m/s²")}`,
    apogee &&
      `top after ${seconds(apogee.time)} at ${amount(apogee.position[2], "m")} AGL, still ${amount(apogee.airspeed, "m/s")} through the air`,
  ];
  return `${upperFirst(parts.filter((part) => part !== null).join("; "))}.`;
}

/** The flight as it is expected, and its spread. */
export function flightSummary({ decision }: Answer): string {
  const { coast, apogeeHeight, flight, draws } = decision;
  const spread =
    draws === 1
      ? ""
      : `; 9 in 10 flights ${decimals(coast.p05, 1)} to ${seconds(coast.p95)}, top ${decimals(apogeeHeight.p05, 0)} to ${amount(apogeeHeight.p95, "m")} AGL`;
  return [
    "The flight",
    wrap(climb(flight), "  "),
    wrap(`Coast from burnout to the top ${seconds(coast.nominal)}${spread}.`, "  "),
    ...cautions.igniter.map(bullet),
  ].join("\n");
}

function marginWords({ calibres, ofLength }: MarginAt): string {
  return `${glued(decimals(calibres, 1), "calibres")} (${percent(ofLength)} of the length)`;
}

/** Static margin where it matters. */
export function stabilityText({ decision }: Answer): string {
  const { stability } = decision;
  const { guideExitAtAngle: angled } = stability;
  const degrees = decimals((angled.angle * 180) / Math.PI, 0);
  return [
    "Stability",
    wrap(
      `CP ${amount(1000 * stability.cp, "mm")} from the nose tip. Margin leaving the guide ${marginWords(stability.guideExit)}, at the wind's ${glued(degrees, "deg")} there ${glued(decimals(angled.calibres, 1), "calibres")}; at burnout ${marginWords(stability.burnout)}.`,
      "  ",
    ),
  ].join("\n");
}

function descentWords({ openings, landing }: Descent): string {
  const opened = openings.map(
    ({ which, height, airspeed, fill }) =>
      `${which} at ${amount(height, "m")} AGL and ${amount(airspeed, "m/s")}, full after ${seconds(fill)}`,
  );
  const down =
    landing === null
      ? ""
      : ` Lands after ${seconds(landing.time)} at ${amount(landing.descentSpeed, "m/s", 1)} down and ${amount(landing.groundSpeed, "m/s", 1)} over ground, ${amount(landing.energy, "J")}, ${placeWords(landing.position[0], landing.position[1])}.`;
  return `Opened at the delay to cut: ${opened.join("; ")}.${down}`;
}

/** The way down, and the cautions of packing. */
export function packing({ decision }: Answer): string {
  const { opened, strength } = decision;
  const bears = strength.rated
    ? `Its weakest rated part bears an opening at ${amount(strength.speed, "m/s")}.`
    : "No strength is given for canopy or harness.";
  return [
    "Packing and the way down",
    ...(opened === null ? [] : [wrap(descentWords(opened), "  ")]),
    wrap(bears, "  "),
    ...[...cautions.charge, ...cautions.retention].map(bullet),
  ].join("\n");
}
