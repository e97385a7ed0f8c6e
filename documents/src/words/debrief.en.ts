import type { FlownDelay } from "@delaywright/engine";
import type { DebriefData, FlownOutcome, SetFrom } from "../answer/debrief-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { factorCell } from "./learned.en.js";
import { amount, decimals, delayWords, figureWords, glued, percent, rangeWords, upperFirst } from "./numbers.en.js";
import { timingWords } from "./openings.en.js";

/** No error is shown as none [s]. */
const LEAST_ERROR = 0.01;

const outcomes: Readonly<Record<FlownOutcome, string>> = Object.freeze({
  clean: "clean",
  fast: "opened too fast",
  low: "opened too low",
  grounded: "came down unopened",
});

/** How a flight came in: `clean`, `opened too fast`. */
export function flownOutcomeWords(outcome: FlownOutcome | null): string {
  return outcome === null ? "not known" : outcomes[outcome];
}

const setFrom: Readonly<Record<SetFrom, string>> = Object.freeze({
  given: "as you say",
  findings: "as written with the flight",
  reading: "by the depth that was read",
  choice: "as the plan chose",
  fixed: "as the motor comes",
  suggested: "as was suggested; nobody said what it was set to",
});

/** Who says to what the delay was set. */
export function setFromWords(from: SetFrom): string {
  return setFrom[from];
}

/** A delay as it burnt: `9.5 s ± 0.1 s`, `at least 12.3 s`. */
export function flownDelayWords(delay: FlownDelay): string {
  if (delay.kind === "unknown") return "not known";
  if (delay.kind === "seen") {
    const count = delay.error < 0.05 ? 2 : 1;
    return `${amount(delay.delay, "s", count)} ± ${amount(Math.max(delay.error, LEAST_ERROR), "s", count)}`;
  }
  return `${delay.kind === "at-least" ? "at least" : "at most"} ${amount(delay.delay, "s", 1)}`;
}

/**
 * What happened, in a sentence.
 *
 * @example
 * debriefHead(data); // "Set to 9 s, burnt 9.5 s ± 0.1 s; opened 1.3 s after the top, at 572 m and about 14 m/s: clean."
 */
export function debriefHead({ delay, findings, top }: DebriefData, units: UnitSystem = "metric"): string {
  const { set, flown, secondsFromApogee, openingHeight, openingSpeed } = delay;
  const element =
    set === null
      ? []
      : [`set to ${delayWords(set)}${flown.kind === "unknown" ? "" : `, burnt ${flownDelayWords(flown)}`}`];
  const opened =
    secondsFromApogee === null || openingHeight === null || openingSpeed === null
      ? []
      : [
          `opened ${timingWords(secondsFromApogee, secondsFromApogee)}, at ${figureWords(openingHeight, "distance", units)} and about ${figureWords(openingSpeed, "speed", units, 0)}`,
        ];
  const height = top === null ? [] : [`top ${figureWords(top.height, "distance", units)}`];
  const said = [...element, ...height, ...opened].join("; ");
  const outcome = findings.outcome === null ? "" : `${said === "" ? "" : ": "}${flownOutcomeWords(findings.outcome)}`;
  return upperFirst(`${said}${outcome}` === "" ? "Nothing was found out." : `${said}${outcome}.`);
}

/** Whether the top lay in the band that should hold nine in ten; null without a top. */
export function topBandSentence({ top, predicted }: DebriefData, units: UnitSystem = "metric"): string | null {
  if (top === null) return null;
  const { p05, p95 } = predicted.apogee;
  const height = figureWords(top.height, "distance", units);
  if (top.inBand === null || p05 === p95) return `Top: ${height}.`;
  const place = top.inBand ? "inside" : top.height < p05 ? "below" : "above";
  const band = rangeWords(p05, p95, "distance", units);
  return `Top: ${height}, ${place} the ${band} that should hold ${glued("9", "in", "10")}.`;
}

/** Whether it opened when nine in ten should; null where there is nothing to compare. */
export function openingRangeSentence({ delay, predicted }: DebriefData): string | null {
  const { secondsFromApogee, openingInRange } = delay;
  const range = predicted.secondsFromApogee;
  if (secondsFromApogee === null || openingInRange === null || range === null) return null;
  const place = openingInRange ? "inside" : secondsFromApogee < range.p05 ? "before" : "after";
  return `Opening: ${timingWords(secondsFromApogee, secondsFromApogee)}, ${place} the ${timingWords(range.p05, range.p95)} that should hold ${glued("9", "in", "10")}.`;
}

/** What it was given and how it came in; null where no odds were given. */
export function oddsGivenSentence({ predicted, findings }: DebriefData): string | null {
  if (predicted.clean === null) return null;
  const given = predicted.written ? "It was given" : "By the plan it had";
  const came =
    findings.outcome === null
      ? ""
      : `; it ${findings.outcome === "clean" ? "came clean" : flownOutcomeWords(findings.outcome)}`;
  return `${given} ${percent(predicted.clean)} for a clean opening${came}.`;
}

/** To what the delay was set, and who says so; null for a motor without delay. */
export function setSentence({ delay }: DebriefData): string | null {
  return delay.set === null || delay.setFrom === null
    ? null
    : `The delay counts as set to ${delayWords(delay.set)}, ${setFromWords(delay.setFrom)}.`;
}

/** Coast as flown and as predicted; null where one of them is missing. */
export function coastFlownSentence({ delay }: DebriefData): string | null {
  const { coast, predictedCoast } = delay;
  if (coast === null || predictedCoast === null) return null;
  return `Coast from burnout to the top: ${amount(coast, "s", 1)} as flown, ${amount(predictedCoast, "s", 1)} as predicted.`;
}

/** What this climb alone says of drag and impulse; null where it was not fitted. */
export function fittedClimbSentence({ climb }: DebriefData, units: UnitSystem = "metric"): string | null {
  if (climb === null || (climb.drag === null && climb.impulse === null)) return null;
  const factors = [
    ...(climb.drag === null ? [] : [`drag ${factorCell(climb.drag)}`]),
    ...(climb.impulse === null ? [] : [`impulse ${factorCell(climb.impulse)}`]),
  ].join(" and ");
  const together =
    climb.correlation !== null && Math.abs(climb.correlation) > 0.5
      ? `; the two hang together (correlation ${decimals(climb.correlation, 2)}): more of one and more of the other fit nearly as well`
      : "";
  return `This climb alone: ${factors} times what the plan's documents say${together}. Its heights lie within ${figureWords(climb.residual, "distance", units, 1, 0)} of the fit.`;
}
