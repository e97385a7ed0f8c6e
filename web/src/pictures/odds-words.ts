import type { UnitSystem } from "@delaywright/documents";
import { cutPieces } from "./cut-words.js";
import { amount, hundredths, percent, secondsWords } from "./figures.js";
import { outcomes } from "./hatches.js";
import type { DelayModel } from "./odds-model.js";
import type { PictureTable } from "./picture.js";
import { isFigure } from "./scale.js";
import { oddsWords } from "./strip.js";

/** The time to the top in a sentence. */
export function topSentence({ top, data }: DelayModel): string {
  if (!top) return "";
  const after = data.clock?.from === "ignition" ? "ignition" : "burnout";
  return `The top comes ${secondsWords(top.p50, 2)} after ${after}, 9 in 10 between ${top.p05.toFixed(2)} and ${secondsWords(top.p95, 2)}.`;
}

/** What the picture of the odds says, in sentences. */
export function oddsDescription(model: DelayModel): string {
  const { settings, data, chosen, gone } = model;
  const each = settings.map(({ delay, odds }) => `${secondsWords(delay)}: ${oddsWords(odds)}.`);
  const mine = settings[chosen];
  return [
    `Odds of ${settings.length === 1 ? "the one setting" : `${settings.length} settings`} by their delay; least odds of a clean opening ${percent(data.limits.leastClean)}.`,
    mine ? `First stands ${secondsWords(mine.delay)}.` : "",
    ...each,
    gone.length > 0 ? `Gone for good: ${gone.map((delay) => secondsWords(delay)).join(", ")}.` : "",
    topSentence(model),
  ]
    .filter(Boolean)
    .join(" ");
}

/** What the picture of the opening speed says, in sentences. */
export function speedDescription(model: DelayModel): string {
  const { settings, data } = model;
  const each = settings.map(({ delay, openingSpeed: { p50, p95 } }) =>
    isFigure(p50) && isFigure(p95)
      ? `${secondsWords(delay)}: half open below ${amount(p50, "speed", data.units)}, 95${"\u202f"}% below ${amount(p95, "speed", data.units)}.`
      : `${secondsWords(delay)}: no flight opens.`,
  );
  return [
    `Airspeed at opening by delay; the limit is ${amount(data.limits.openingSpeed, "speed", data.units)}.`,
    ...each,
    topSentence(model),
  ]
    .filter(Boolean)
    .join(" ");
}

/** The figures as a table. */
export function oddsTable({ settings }: DelayModel, units: UnitSystem): PictureTable {
  return {
    head: ["delay", "how", ...outcomes.map(({ words }) => `${words}, %`), "half below", "95 % below"],
    rows: settings.map((setting) => [
      secondsWords(setting.delay),
      cutPieces(setting, units),
      ...outcomes.map(({ key }) => hundredths(setting.odds[key])),
      ...[setting.openingSpeed.p50, setting.openingSpeed.p95].map((speed) =>
        isFigure(speed) ? amount(speed, "speed", units) : "–",
      ),
    ]),
  };
}
