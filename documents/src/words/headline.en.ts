import type { DecisionData, SettingData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { wordForCheck } from "./checks.en.js";
import { kindOfCut, takeOutWords } from "./cut.en.js";
import { decimals, delayWords, glued, holdsPercent, percent } from "./numbers.en.js";

/** Delays closer than this are the same [s]. */
const SAME = 1e-6;

/** The answer in two parts, the first for large letters. */
export interface Headline {
  /** `Cut to 9 s`, `At best 9 s`, `Leave it at 14 s`. */
  readonly lead: string;
  /** `take 5 s out, end A with the ring, 4.0 mm (5/32 in)`, `no cut`; empty where the lead says all. */
  readonly detail: string;
  /** What stands between them in a sentence. */
  readonly joint: string;
}

/** The setting that the delay to cut stands for; undefined for a motor without delay. */
export function suggestedSetting({
  toCut,
  settings,
}: Pick<DecisionData, "toCut" | "settings">): SettingData | undefined {
  return toCut === null ? undefined : settings.find((setting) => Math.abs(setting.delay - toCut.delay) < SAME);
}

/** The setting that is to be flown: the flyer's own choice, else the delay to cut; undefined for a motor without delay. */
export function flownSetting(data: Pick<DecisionData, "choice" | "toCut" | "settings">): SettingData | undefined {
  return data.choice?.setting ?? suggestedSetting(data);
}

/** What says which setting is to be flown. */
export type FlownData = Pick<DecisionData, "choice" | "toCut" | "given">;

/** What the setting that is to be flown is called: `the delay to cut`, `the delay as it is`, `14 s, your own choice`. */
export function flownWords({ choice, toCut, given }: FlownData): string {
  if (choice !== null) return `${delayWords(choice.setting.delay)}, your own choice`;
  const asItIs = toCut !== null && ["uncut", "as-it-is"].includes(kindOfCut(toCut, given.removedDepth));
  return asItIs ? "the delay as it is" : "the delay to cut";
}

/**
 * What to cut, in two parts; null for a motor without delay.
 *
 * @example
 * headline(data); // { lead: "Cut to 9 s", joint: ": ", detail: "take 5 s out, end A with the ring, 4.0 mm (5/32 in)" }
 */
export function headline(
  { toCut, given }: Pick<DecisionData, "toCut" | "given">,
  units: UnitSystem = "metric",
): Headline | null {
  if (toCut === null) return null;
  const delay = delayWords(toCut.delay);
  if (given.delayKind === "fixed") return { lead: `Its delay is ${delay}`, joint: " and ", detail: "cannot be set" };
  if (!toCut.reachesHolds) return { lead: `At best ${delay}`, joint: ", and ", detail: "that does not hold" };
  const kind = kindOfCut(toCut, given.removedDepth);
  const details = {
    uncut: "no cut",
    "as-it-is": "as it is now cut",
    "not-shown": "no cut is shown",
    cut: takeOutWords(toCut, given.removedDepth, units),
  };
  const detail = details[kind];
  if (!toCut.reachesLeast) return { lead: `At best ${delay}`, joint: ": ", detail };
  if (kind === "uncut") return { lead: `Leave it at ${delay}`, joint: ": ", detail };
  if (kind === "as-it-is") return { lead: `Leave it at ${delay}`, joint: ", ", detail };
  if (kind === "not-shown") return { lead: `${delay} has the best odds`, joint: "; ", detail };
  return { lead: `Cut to ${delay}`, joint: ": ", detail };
}

/** The delay of another flyer's card, in two parts; null for a motor without delay. */
export function statedHeadline({ toCut }: Pick<DecisionData, "toCut">): Headline | null {
  return toCut === null
    ? null
    : { lead: `Its delay is ${delayWords(toCut.delay)}`, joint: ", ", detail: "as the card states it" };
}

/** The answer as a sentence: `Cut to 9 s: take 5 s out, …`. */
export function headlineSentence(data: DecisionData, units: UnitSystem = "metric"): string {
  const parts = headline(data, units);
  return parts === null ? noDelayWords : `${parts.lead}${parts.joint}${parts.detail}.`;
}

/** Said where the motor has no delay. */
export const noDelayWords = "No delay to cut: this motor has none.";

/** Said of a motor that is cut too deep for anything here. */
export const doNotFlyWords = "do not fly this motor as it is cut: see below.";

/** `91 % clean (± 0.6), holds 99.6 %`; of one flight, drawn or without spread, only how it ended. */
export function oddsWords({ odds, firesFirst }: Pick<SettingData, "odds" | "firesFirst">, draws: number): string {
  if (draws === 1)
    return `One flight, which makes no odds: ${odds.clean > 0.5 ? "clean" : "not clean"}, ${odds.holds > 0.5 ? "holds" : "does not hold"}`;
  const points = odds.error < 0.0005 ? glued("under", "0.1") : decimals(100 * odds.error, 1);
  const error = odds.error > 0 ? ` (${glued("±", points)})` : "";
  const fires = firesFirst === null ? "" : `fires before the electronics in ${percent(firesFirst)}; if that fails, `;
  return `${fires}${percent(odds.clean)} clean${error}, ${glued("holds", holdsPercent(odds.holds))}`;
}

/** What must not fly, a sentence each, most weighty first. */
export function stopSentences({ checks, overCut, given }: DecisionData, units: UnitSystem = "metric"): string[] {
  const stops = checks.filter((check) => check.verdict === "stop").map((check) => `${wordForCheck(check, units)}.`);
  return overCut?.doNotFly && given.removedDepth !== null ? [doNotFlyWords, ...stops] : stops;
}

/** The flyer's own choice with its odds; null without one. */
export function choiceSentence({ choice, draws }: DecisionData): string | null {
  if (choice === null) return null;
  const reason = choice.reason === null ? "" : ` (${choice.reason})`;
  return `Your own choice is ${delayWords(choice.setting.delay)}${reason}: ${oddsWords(choice.setting, draws)}.`;
}
