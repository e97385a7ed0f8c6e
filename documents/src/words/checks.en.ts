import type { Check, CheckCode, Warning, WarningCode } from "@delaywright/engine";
import { amountIn, type Measure, type UnitSystem } from "../quantity/systems.js";

interface CheckWords {
  /** What is looked at. */
  readonly title: string;
  /** Whether the limit is the least or the most; `none` where there is nothing to compare. */
  readonly sense: "least" | "most" | "none";
  /** What it means where it does not pass. */
  readonly otherwise: string;
}

const checks: Readonly<Record<CheckCode, CheckWords> & Record<string, CheckWords>> = Object.freeze({
  "cp-ahead-of-balance": {
    title: "centre of pressure behind the balance point",
    sense: "least",
    otherwise:
      "the centre of pressure is ahead of the balance point: it does not fly nose first. Ballast in the nose, larger fins, or a lighter motor",
  },
  "guide-exit-speed": {
    title: "guide-exit speed",
    sense: "least",
    otherwise: "it leaves the guide too slowly for its fins to work: a longer guide, less mass, or more thrust",
  },
  "guide-exit-against-wind": {
    title: "guide-exit speed against the wind",
    sense: "least",
    otherwise:
      "it leaves the guide too slowly for this wind and turns into it: a longer guide, more thrust, or less wind",
  },
  "thrust-to-weight": {
    title: "thrust to weight",
    sense: "least",
    otherwise: "the motor is weak for this rocket: less mass, or more thrust",
  },
  "instructions-not-confirmed": {
    title: "the motor's instructions on shortening the delay",
    sense: "none",
    otherwise:
      "no cut is shown until you have confirmed that the motor's own instructions allow it: delay.instructions.allowCutting",
  },
  "tool-not-named": {
    title: "the tool that the motor's instructions name",
    sense: "none",
    otherwise: "cut only with the tool that the motor's own instructions name: delay.instructions.tool",
  },
  "no-setting-holds": {
    title: "odds that the recovery holds",
    sense: "least",
    otherwise: "no setting opens high and slow enough for the recovery to hold",
  },
  "below-least-clean": {
    title: "odds of a clean opening",
    sense: "least",
    otherwise: "even the best setting opens clean less often than you asked for",
  },
  "fires-before-electronics": {
    title: "odds that the charge fires before the electronics has opened the rocket",
    sense: "most",
    otherwise: "the back-up charge may fire first, while the rocket is still fast: a longer delay",
  },
  "choice-not-achievable": {
    title: "your own setting",
    sense: "none",
    otherwise:
      "your own setting cannot be made of this element with this tool, or not any more: choose one of those below",
  },
  "margin-at-guide-exit": {
    title: "static margin at guide exit",
    sense: "least",
    otherwise: "the margin is small where the rocket leaves the guide: ballast in the nose, or larger fins",
  },
  "margin-at-burnout": {
    title: "static margin at burnout",
    sense: "least",
    otherwise: "the margin is small at burnout: ballast in the nose, or larger fins",
  },
  "over-stable": {
    title: "static margin",
    sense: "most",
    otherwise: "the margin is large: it turns far into the wind. Less nose mass, or less wind",
  },
  ceiling: {
    title: "height against the field's ceiling",
    sense: "most",
    otherwise: "it may fly above the field's ceiling: a smaller motor, or ballast",
  },
  "wind-limit": { title: "wind", sense: "most", otherwise: "the wind is above the safety code's limit: wait" },
  "tilt-limit": {
    title: "lean of the guide",
    sense: "most",
    otherwise: "the guide leans more than the safety code or the field allows",
  },
  "tilt-sector": {
    title: "azimuth to which the guide leans",
    sense: "none",
    otherwise: "the guide leans out of the sector that the field allows",
  },
  "choice-below-least": {
    title: "odds at your own setting",
    sense: "least",
    otherwise: "your own setting opens clean, or holds, less often than you asked for",
  },
  "draws-not-flown": {
    title: "draws that could not be flown",
    sense: "most",
    otherwise: "some draws never left the guide or never came down: they count as grounded",
  },
  "opening-strength-unrated": {
    title: "strength of the recovery",
    sense: "none",
    otherwise: "no strength is given for canopy or harness: twice the opening-speed limit stands for it",
  },
  "element-over-cut": {
    title: "delay left in the element",
    sense: "none",
    otherwise: "it was cut deeper than the odds allow: ballast, another rocket, or do not fly it",
  },
  "no-charge": {
    title: "ejection charge of the motor",
    sense: "none",
    otherwise: "this motor has no ejection charge: something else must open the rocket",
  },
});

const warnings: Readonly<Record<WarningCode, string> & Record<string, string>> = Object.freeze({
  "mach-above-validated": "it flies faster than the models were held against",
  "angle-of-attack-above-validated": "it meets the air at a larger angle than the models were held against",
  "fineness-below-validated": "it is stubbier than the models were held against",
  "fineness-above-validated": "it is more slender than the models were held against",
  "reynolds-above-validated": "it flies at a higher Reynolds number than the models were held against",
  "surface-wind-carried-up": "the wind aloft is a guess from a reading near the ground: winds aloft would tell",
  "inertia-estimated": "the transverse inertia is a guess from mass and length: a swing on two strings would tell",
  "drag-not-learned": "the drag is computed: no flight of this rocket is logged yet",
  "never-handed-over": "the swing had not settled by the top: the flight was reckoned with pitching all the way",
  "no-tool": "no tool is given: no cut is planned",
});

/** Units of a warning's figures; pure numbers where none is named. */
const warningUnits: Readonly<Record<string, string>> = Object.freeze({
  "angle-of-attack-above-validated": "rad",
  "surface-wind-carried-up": "m",
});

/** What a figure of a finding measures goes by its unit, and for the wind by the finding. */
type Figure = Pick<Check, "unit"> & { readonly code: string };

/** Units that other flyers read as others, by what they measure. */
const measures: Readonly<Record<string, Measure>> = Object.freeze({
  "m/s": "speed",
  m: "distance",
  kg: "mass",
  J: "energy",
});

/** What a figure measures where it is shown in other units elsewhere; undefined for pure numbers, times, angles and odds. */
export function measureOf({ code, unit }: Figure): Measure | undefined {
  return code === "wind-limit" ? "wind" : own(measures, unit);
}

/** A finding whose code may be newer than these words. */
type Coded<Finding> = Omit<Finding, "code"> & { readonly code: string };

/** What a check looks at, and what it means where it does not pass. A code that is not known speaks for itself. */
export function wordsForCheck(code: string): CheckWords {
  return own(checks, code) ?? { title: code.replaceAll("-", " "), sense: "none", otherwise: "" };
}

/**
 * One check as a line: what was found against which limit, and what it means where it does not pass.
 *
 * @example
 * wordForCheck(check); // "guide-exit speed 11.2 m/s, least 13.4 m/s: it leaves the guide too slowly …"
 */
export function wordForCheck(check: Coded<Check>, units: UnitSystem = "metric"): string {
  const { title, sense, otherwise } = wordsForCheck(check.code);
  const value = check.value === null ? "" : ` ${amount(check.value, check, units)}`;
  const limit = check.limit === null || sense === "none" ? "" : `, ${sense} ${amount(check.limit, check, units)}`;
  const meaning = check.verdict === "pass" || otherwise === "" ? "" : `: ${otherwise}`;
  return `${title}${value}${limit}${meaning}`;
}

/** One warning as a line. */
export function wordForWarning({ code, value, limit }: Coded<Warning>, units: UnitSystem = "metric"): string {
  const words = own(warnings, code) ?? code.replaceAll("-", " ");
  if (value === null) return words;
  const figure = { code, unit: own(warningUnits, code) ?? "" };
  return limit === null
    ? `${words} (${amount(value, figure, units)})`
    : `${words} (${amount(value, figure, units)}, limit ${amount(limit, figure, units)})`;
}

function own<Value>(record: Readonly<Record<string, Value>>, key: string): Value | undefined {
  return Object.hasOwn(record, key) ? record[key] : undefined;
}

/** Odds as people say them: never none, never certain. */
function percent(odds: number): string {
  if (odds > 0.999) return "over 99.9 %";
  if (odds < 0.01) return "under 1 %";
  return `${odds >= 0.985 ? (100 * odds).toFixed(1) : Math.round(100 * odds)} %`;
}

function amount(value: number, { code, unit }: Figure, units: UnitSystem): string {
  if (unit === "odds") return percent(value);
  const measure = measureOf({ code, unit });
  if (units === "imperial" && measure !== undefined) return amountIn(value, measure, units);
  const [shown, word] = unit === "rad" ? [(value * 180) / Math.PI, "deg"] : [value, unit];
  const number = Number(shown.toPrecision(3));
  return word === "" ? String(number) : `${number} ${word}`;
}
