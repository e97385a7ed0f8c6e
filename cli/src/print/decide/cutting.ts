import { cautions, wordForHelp, wordForReason, wordForWhy } from "@delaywright/documents";
import type { ToCut } from "@delaywright/engine";
import type { Answer } from "../answer.js";
import { kindOfCut, takeOutWords } from "../cut-words.js";
import { amount, delayWords } from "../numbers.js";
import { bullet, wrap } from "../wrap.js";

/** The cut at home and the one at the field, where there are two. */
export function twoCuts({ decision, inputs }: Answer): string | null {
  const { toCut } = decision;
  const home = toCut?.homeCut ?? null;
  const removedDepth = inputs.cutSoFar?.removedDepth;
  if (toCut === null || home === null || !toCut.reachesHolds) return null;
  const field = kindOfCut(toCut, removedDepth) === "cut" ? `: ${takeOutWords(toCut, removedDepth)}` : "";
  const first =
    kindOfCut(home, removedDepth) === "cut"
      ? `At home first only to ${delayWords(home.delay)}: ${takeOutWords(home, removedDepth)}.`
      : "At home leave it whole: the uncut delay could still be the best.";
  return wrap(
    `${first} At the field, once the wind is known, to ${delayWords(toCut.delay)}${field}.${weatherWords(toCut)}`,
  );
}

function weatherWords({ homeWeather }: ToCut): string {
  if (homeWeather === null) return "";
  const [[calm, windy], [cold, warm]] = [homeWeather.wind, homeWeather.temperature];
  return ` That leaves room for a wind of ${calm.toFixed(0)} to ${amount(windy, "m/s")} and ${(cold - 273.15).toFixed(0)} to ${amount(warm - 273.15, "°C")}.`;
}

/** Whether the answer asks for a cut: the cautions then stand right under it, else under the table that shows cuts. */
export function asksForCut({ decision, inputs }: Answer): boolean {
  const { toCut } = decision;
  return toCut?.reachesHolds === true && kindOfCut(toCut, inputs.cutSoFar?.removedDepth) === "cut";
}

/** The cautions of cutting, where any cut is shown. */
export function beforeYouCut({ decision, inputs }: Answer): string | null {
  const removedDepth = inputs.cutSoFar?.removedDepth;
  const shown = decision.settings.some((setting) => kindOfCut(setting, removedDepth) === "cut");
  return shown ? ["Before you cut", ...cautions.cutting.map(bullet)].join("\n") : null;
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
