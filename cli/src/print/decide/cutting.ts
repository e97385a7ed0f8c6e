import { cautions, wordForHelp, wordForReason, wordForWhy } from "@delaywright/documents";
import type { Answer } from "../answer.js";
import { kindOfCut, takeOutWords } from "../cut-words.js";
import { amount, delayWords } from "../numbers.js";
import { bullet, wrap } from "../wrap.js";

/** Right under the cut: the two cuts where there are two, and the cautions of cutting. */
export function cutting({ decision, inputs }: Answer): string | null {
  const { toCut } = decision;
  if (toCut === null) return null;
  const removedDepth = inputs.cutSoFar?.removedDepth;
  const kind = kindOfCut(toCut, removedDepth);
  if (kind !== "cut" && (toCut.homeCut === null || kindOfCut(toCut.homeCut, removedDepth) !== "cut")) return null;
  const home = toCut.homeCut;
  const twice =
    home === null || kindOfCut(home, removedDepth) !== "cut"
      ? []
      : [
          wrap(
            `At home first only to ${delayWords(home.delay)}: ${takeOutWords(home, removedDepth)}. At the field, once the wind is known, to ${delayWords(toCut.delay)}${kind === "cut" ? `: ${takeOutWords(toCut, removedDepth)}` : ""}.`,
          ),
        ];
  return [...twice, "Before you cut", ...cautions.cutting.map(bullet)].join("\n");
}

/** Why the delay is this one; where none is good enough: why, and what would help. */
export function why({ decision }: Answer): string | null {
  const { toCut, apogeeAirspeed, settings } = decision;
  if (toCut === null) return null;
  const lines: string[] = [];
  if (settings.length > 1) lines.push(wrap(`Why ${delayWords(toCut.delay)}: ${wordForWhy(toCut.why)}.`));
  if (toCut.reachesLeast && toCut.reachesHolds) return lines.length === 0 ? null : lines.join("\n");
  if (toCut.reasons.length > 0)
    lines.push(wrap(`Why none is good enough: ${toCut.reasons.map(wordForReason).join("; ")}.`, "", "  "));
  lines.push(
    wrap(
      `Airspeed at the top, which no delay takes away: ${amount(apogeeAirspeed.p50, "m/s")} in half of the flights, up to ${amount(apogeeAirspeed.p95, "m/s")} in 19 of 20.`,
    ),
  );
  if (toCut.helps.length > 0)
    lines.push(wrap(`What would help: ${toCut.helps.map(wordForHelp).join("; ")}.`, "", "  "));
  return lines.join("\n");
}
