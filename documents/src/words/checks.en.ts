import type { Check, CheckCode } from "@delaywright/engine";
import type { UnitSystem } from "../quantity/systems.js";
import { wordForDetail } from "./check-details.en.js";
import { wordForFact } from "./facts.en.js";
import { findingFigure } from "./figures.en.js";
import { own } from "./own.js";

interface CheckWords {
  /** What is looked at. */
  readonly title: string;
  /** What it means where it does not pass. */
  readonly otherwise: string;
}

const words = (title: string, otherwise: string): CheckWords => ({ title, otherwise });

const checks: Readonly<Record<CheckCode, CheckWords> & Record<string, CheckWords>> = Object.freeze({
  "adult-in-charge": words(
    "an adult in charge of the launch",
    "nobody of at least 18 years is in charge: nobody may launch",
  ),
  "airport-distance": words("distance to the nearest airport", "an airport is near: only with an authorisation"),
  "aviation-class": words("class under the aviation rule", "the aviation rule asks more of such a rocket"),
  "aviation-notice": words(
    "notice to air traffic control",
    "the nearest air traffic control facility wants to know 24 hours to 3 days before",
  ),
  "below-least-clean": words(
    "odds of a clean opening",
    "even the best setting opens clean less often than you asked for",
  ),
  "building-distance": words(
    "distance to the nearest building",
    "an occupied building is nearer than the safety code allows: another pad",
  ),
  ceiling: words(
    "height against the field's ceiling",
    "it may fly above the field's ceiling: a smaller motor, or ballast",
  ),
  "certification-level": words(
    "the flyer's certification level",
    "this motor or rocket asks for a higher certification",
  ),
  "charge-parts-joint": words(
    "push of the motor's charge over what holds the joint shut",
    "the charge does not part the joint, or with little to spare: it would not open",
  ),
  "charge-in-well": words("ejection charge in the motor's well", "the charge is more than the motor's well holds"),
  "choice-below-least": words(
    "odds at your own setting",
    "your own setting opens clean, or holds, less often than you asked for",
  ),
  "choice-not-achievable": words(
    "your own setting",
    "your own setting cannot be made of this element with this tool, or not any more: choose one of those below",
  ),
  "cleared-diameter": words("ground cleared of what burns", "too little ground about the pad is cleared: it may burn"),
  "cloud-cover": words("cloud cover", "the clouds cover more of the sky than the aviation rule allows: wait"),
  "cloud-entry": words("height against the lowest cloud", "it may fly into a cloud: wait, a smaller motor, or ballast"),
  "club-rule": words("a rule of the club", "it cannot be followed as it is written"),
  "controlled-airspace": words("controlled airspace", "it would enter controlled airspace: only with an authorisation"),
  "cp-ahead-of-balance": words(
    "centre of pressure behind the balance point",
    "the centre of pressure is ahead of the balance point: it does not fly nose first. Ballast in the nose, larger fins, or a lighter motor",
  ),
  daylight: words("daylight", "the sun is not up: only with an authorisation"),
  "delay-reachable": words("the delay that would open at the top", "it takes another motor, or ballast"),
  "descent-time": words("time of descent", "it comes down slower than the rules at hand allow"),
  "draws-not-flown": words(
    "draws that could not be flown",
    "some draws never left the guide or never came down: they count as grounded",
  ),
  "element-over-cut": words(
    "delay left in the element",
    "it was cut deeper than the odds allow: ballast, another rocket, or do not fly it",
  ),
  "field-hours": words("time of the launch", "the field is closed then"),
  "fire-means": words("means to control a fire", "there must be means to report and to control a fire"),
  "fires-before-electronics": words(
    "odds that the charge fires before the electronics has opened the rocket",
    "the back-up charge may fire first, while the rocket is still fast: a longer delay",
  ),
  "flyer-age": words("the flyer's age", "this motor asks for an older flyer"),
  "guide-exit-against-wind": words(
    "guide-exit speed against the wind",
    "it leaves the guide too slowly for this wind and turns into it: a longer guide, more thrust, or less wind",
  ),
  "guide-exit-speed": words(
    "guide-exit speed",
    "it leaves the guide too slowly for its fins to work: a longer guide, less mass, or more thrust",
  ),
  "guide-length-in-wind": words(
    "guide-exit speed in more than a breeze",
    "above 5 mph of wind the safety code asks for a guide that is long enough",
  ),
  "instructions-not-confirmed": words(
    "the motor's instructions on shortening the delay",
    "until you have confirmed that they allow it, no cut is shown, and none that was made counts as allowed: delay.instructions.allowCutting",
  ),
  "keep-off-zones": words(
    "opened landings in a keep-off zone",
    "opened, it may come down where nothing should: less wind, a smaller canopy, another pad",
  ),
  "keep-off-zones-unopened": words(
    "unopened landings in a keep-off zone",
    "if nothing opens it may come down where nothing should: another lean of the guide, another pad",
  ),
  "landing-energy": words("landing energy", "it lands hard: a larger canopy"),
  "landing-inside": words(
    "opened landings outside the field",
    "opened, it may drift off the field: less wind, a smaller motor or canopy",
  ),
  "landing-inside-unopened": words(
    "unopened landings outside the field",
    "if nothing opens it may come down outside the field: another lean of the guide, less wind",
  ),
  "landing-speed": words(
    "landing speed",
    "it meets the ground faster than is usual under a main: check the canopy's size and its unit, or take a larger one",
  ),
  "lift-off-weight": words(
    "lift-off mass",
    "it is heavier than the code allows for this motor: less mass, or more thrust",
  ),
  "margin-at-burnout": words(
    "static margin at burnout",
    "the margin is small at burnout: ballast in the nose, or larger fins",
  ),
  "margin-at-guide-exit": words(
    "static margin at guide exit",
    "the margin is small where the rocket leaves the guide: ballast in the nose, or larger fins",
  ),
  "margin-in-flight": words(
    "least static margin in flight",
    "the margin is smallest between guide exit and top: ballast in the nose, or larger fins",
  ),
  "models-validity": words("range of the models", "the figures rest on models beyond the range they were held against"),
  "motor-certified": words("a certified motor", "the safety code asks for certified motors"),
  "no-charge": words(
    "ejection charge of the motor",
    "this motor has no ejection charge: something else must open the rocket",
  ),
  "no-setting-holds": words(
    "odds that the recovery holds",
    "no setting opens high and slow enough for the recovery to hold",
  ),
  "opening-speed": words("speed that nine in ten openings stay below", "one opening in ten is faster than you want"),
  "opening-strength-unrated": words(
    "strength of the recovery",
    "no strength is given for canopy or harness: twice the opening-speed limit stands for it",
  ),
  "over-stable": words(
    "static margin",
    "the margin is large: it turns far into the wind. Less nose mass, or less wind",
  ),
  "personnel-distance": words(
    "distance to the nearest person",
    "somebody stands nearer than the safety code allows: step back",
  ),
  "removal-within-limit": words(
    "what is taken out of the delay",
    "more than the motor's instructions allow to be taken out",
  ),
  retention: words("what keeps the motor in", "the ejection charge pushes the motor out of the tube too"),
  "road-distance": words(
    "distance to the nearest busy road",
    "a public road is nearer than the safety code allows: another pad",
  ),
  "site-edge-distance": words(
    "distance to the field's edge",
    "the pad is nearer to the field's edge than the safety code allows: another pad",
  ),
  "site-size": words("smallest dimension of the field", "the field is smaller than the safety code allows"),
  "site-size-for-height": words(
    "smallest dimension of the field for its height",
    "the field is small for the height that is allowed there",
  ),
  "thrust-to-weight": words("thrust to weight", "the motor is weak for this rocket: less mass, or more thrust"),
  "tilt-limit": words("lean of the guide", "the guide leans more than the safety code allows"),
  "tilt-sector": words("azimuth to which the guide leans", "the guide leans out of the sector that the field allows"),
  "tool-not-named": words(
    "the tool that the motor's instructions name",
    "cut only with the tool that the motor's own instructions name: delay.instructions.tool",
  ),
  "total-impulse": words("total impulse", "it is more than the code allows"),
  "uninvolved-distance": words(
    "distance to people and property with no part in it",
    "they are nearer than the aviation rule allows",
  ),
  visibility: words("visibility", "the aviation rule asks for a clearer view: wait"),
  "weather-age": words("age of the weather reading", "the weather was read long ago: read it again"),
  "wind-limit": words("wind", "the wind is above the limit for a launch: wait"),
});

/** Words for one verdict, where a check looks at two figures and tells the one that is missed. */
const byVerdict: Readonly<Record<string, Readonly<Record<string, CheckWords>>>> = Object.freeze({
  "choice-below-least": {
    stop: words(
      "odds that your own setting holds",
      "your own setting opens too fast or too low for the recovery to hold as often as you asked for",
    ),
    look: words("odds that your own setting opens clean", "your own setting opens clean less often than you asked for"),
  },
});

/** What of a check is told; its code may be newer than these words. */
export type ToldCheck = Pick<Check, "verdict" | "value" | "limit" | "unit" | "sense" | "details" | "missing"> & {
  readonly code: string;
};

/**
 * What a check looks at, and what it means where it does not pass. A code that is not known speaks for itself.
 *
 * @param verdict what it found, where it is told of one plan
 */
export function wordsForCheck(code: string, verdict?: Check["verdict"]): CheckWords {
  const told = verdict === undefined ? undefined : own(own(byVerdict, code) ?? {}, verdict);
  return told ?? own(checks, code) ?? { title: code.replaceAll("-", " "), otherwise: "" };
}

/** `most 8.94 m/s`; empty where there is nothing to compare. */
export function limitWords({ code, limit, unit, sense }: ToldCheck, units: UnitSystem = "metric"): string {
  return limit === null || sense === "none" ? "" : `${sense} ${findingFigure(limit, unit, code, units)}`;
}

/** What a check that does not pass means, and what is to be said beside its figures; empty where it passes without more. */
export function meaningWords({ code, verdict, details, missing }: ToldCheck): string {
  const beside = details.map(wordForDetail);
  if (verdict === "not-checked" && missing.length > 0) return `not known: ${missing.map(wordForFact).join(", ")}`;
  const { otherwise } = wordsForCheck(code, verdict);
  return [...beside, ...(verdict === "pass" || otherwise === "" ? [] : [otherwise])].join("; ");
}

/**
 * One check as a line: what was found against which limit, and what it means where it does not pass.
 *
 * @example
 * wordForCheck(check); // "guide-exit speed 11.2 m/s, least 13.4 m/s: it leaves the guide too slowly …"
 */
export function wordForCheck(check: ToldCheck, units: UnitSystem = "metric"): string {
  const { title } = wordsForCheck(check.code, check.verdict);
  const value = check.value === null ? "" : ` ${findingFigure(check.value, check.unit, check.code, units)}`;
  const limit = limitWords(check, units);
  const meaning = meaningWords(check);
  return `${title}${value}${limit === "" ? "" : `, ${limit}`}${meaning === "" ? "" : `: ${meaning}`}`;
}
