import type { DecisionData } from "../answer/decision-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { delayWords, figureWords } from "./numbers.en.js";
import { wordForHelp, wordForReason, wordForWhy } from "./reasons.en.js";

/** Why the delay is this one; where none is good enough: why, and what would help. Each is null where there is nothing to say. */
export interface WhySentences {
  readonly why: string | null;
  readonly noneGood: string | null;
  /** Airspeed at the top, told where none is good enough. */
  readonly atTop: string | null;
  readonly helps: string | null;
}

/** Why the delay to cut is this one. */
export function whySentences(
  { toCut, apogeeAirspeed, settings }: DecisionData,
  units: UnitSystem = "metric",
): WhySentences {
  const speed = (value: number): string => figureWords(value, "speed", units, 0);
  const nothing = { why: null, noneGood: null, atTop: null, helps: null };
  if (toCut === null) return nothing;
  const why = settings.length > 1 ? `Why ${delayWords(toCut.delay)}: ${wordForWhy(toCut.why)}.` : null;
  if (toCut.reachesLeast && toCut.reachesHolds) return { ...nothing, why };
  const { reasons, helps } = toCut;
  return {
    why,
    noneGood: reasons.length === 0 ? null : `Why none is good enough: ${reasons.map(wordForReason).join("; ")}.`,
    atTop: `Airspeed at the top, which no delay takes away: ${speed(apogeeAirspeed.p50)} in half of the flights, up to ${speed(apogeeAirspeed.p95)} in 19 of 20.`,
    helps: helps.length === 0 ? null : `What would help: ${helps.map(wordForHelp).join("; ")}.`,
  };
}
