import { wordForWarning } from "@delaywright/documents";
import type { Setting } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { amount, glued } from "../numbers.js";
import { wrap } from "../wrap.js";
import { suggested } from "./headline.js";
import { basisWarnings } from "./look-out.js";

/** `1.2 s before to 1.9 s after the top`. */
function timingWords({ p05, p95 }: NonNullable<Setting["secondsFromApogee"]>): string {
  const seconds = (value: number): string => amount(Math.abs(value), "s", 1);
  if (p05 < 0 && p95 > 0) return `${seconds(p05)} before to ${seconds(p95)} after the top`;
  return p95 <= 0
    ? `${seconds(p05)} to ${seconds(p95)} before the top`
    : `${seconds(p05)} to ${seconds(p95)} after the top`;
}

/** How nine in ten open, and on what that rests. */
export function openings(answer: Answer): string | null {
  const setting = suggested(answer);
  if (setting === undefined) return null;
  const { openingSpeed, openingHeight, secondsFromApogee } = setting;
  const rests = answer.decision.warnings.filter((w) => basisWarnings.includes(w.code)).map(wordForWarning);
  const lines =
    openingSpeed === null || openingHeight === null || secondsFromApogee === null
      ? [wrap("Every flight lands before it opens.")]
      : [
          wrap(
            `${glued("9", "in", "10")} open below ${amount(Math.ceil(openingSpeed.p90), "m/s")} and above ${amount(Math.floor(openingHeight.p10), "m")} AGL, ${timingWords(secondsFromApogee)}.`,
          ),
        ];
  if (rests.length > 0) lines.push(wrap(`On what that rests: ${rests.join("; ")}.`));
  lines.push(
    wrap("All odds hold if the charge fires and the rocket separates; zippered tubes and snatch are not in them."),
  );
  return lines.join("\n");
}
