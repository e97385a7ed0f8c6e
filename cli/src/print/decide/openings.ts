import { defaultSpread, wordForWarning } from "@delaywright/documents";
import type { Setting } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { amount, glued } from "../numbers.js";
import { upperFirst, wrap } from "../wrap.js";
import { suggested } from "./headline.js";
import { BASIS_WARNING } from "./look-out.js";

/** `1.2 s before to 1.9 s after the top`. */
function timingWords({ p05, p95 }: NonNullable<Setting["secondsFromApogee"]>): string {
  const seconds = (value: number): string => amount(Math.abs(value), "s", 1);
  if (p95 - p05 < 0.05) return `${seconds(p05)} ${p05 < 0 ? "before" : "after"} the top`;
  if (p05 < 0 && p95 > 0) return `${seconds(p05)} before to ${seconds(p95)} after the top`;
  return p95 <= 0
    ? `${seconds(p05)} to ${seconds(p95)} before the top`
    : `${seconds(p05)} to ${seconds(p95)} after the top`;
}

function openingWords(
  { openingSpeed: speed, openingHeight: height, secondsFromApogee: timing }: Setting,
  draws: number,
): string {
  if (speed === null || height === null || timing === null) return "every flight lands before it opens";
  if (draws === 1)
    return `it opens at ${amount(speed.p50, "m/s")} and ${amount(height.p50, "m")} AGL, ${timingWords(timing)}`;
  return `${glued("9", "in", "10")} open below ${amount(Math.ceil(speed.p90), "m/s")} and above ${amount(Math.floor(height.p10), "m")} AGL, ${timingWords(timing)}`;
}

/** On what the odds rest. */
function restsWords({ decision, inputs }: Answer, { delaySd }: Setting): string {
  if (decision.draws === 1) return "one flight, without any spread";
  const { seconds, fraction } = inputs.spread.delay;
  const standard = seconds === defaultSpread.delay.seconds && fraction === defaultSpread.delay.fraction;
  const scatter = `${amount(delaySd, "s", 1)} one sigma`;
  const delay = standard
    ? `the standard's tolerance for the delay, ${scatter}, no delay of this motor type logged yet`
    : `the plan's own figure for the delay's scatter, ${scatter}`;
  const drag = decision.warnings
    .filter((warning) => warning.code === BASIS_WARNING)
    .map((warning) => wordForWarning({ ...warning, value: null }));
  return [delay, ...drag].join("; ");
}

/** How nine in ten open, and on what that rests. */
export function openings(answer: Answer): string | null {
  const setting = suggested(answer);
  if (setting === undefined) return null;
  const how = `${setting.firesFirst === null ? "" : "If the electronics fails: "}${openingWords(setting, answer.decision.draws)}.`;
  return [
    wrap(upperFirst(how)),
    wrap(`On what that rests: ${restsWords(answer, setting)}.`),
    wrap("All odds hold if the charge fires and the rocket separates; zippered tubes and snatch are not in them."),
  ].join("\n");
}
