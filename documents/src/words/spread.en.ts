import type { Driver } from "@delaywright/engine";
import type { DecisionData } from "../answer/decision-data.js";
import { wordForInput } from "./drivers.en.js";
import { percent, shareWords, upperFirst } from "./numbers.en.js";

/** Inputs that cause less than this share are not told. */
const LEAST_SHARE = 0.005;

/** The uncertain inputs that matter, by their share of the spread in opening time, greatest first. */
export function rankedDrivers({ drivers }: DecisionData): Driver[] {
  return drivers.filter(({ timing }) => timing.total > LEAST_SHARE).sort((a, b) => b.timing.total - a.timing.total);
}

/** Which input drives the spread; null where none does, or the motor has no delay. */
export function driversSentence(data: DecisionData): string | null {
  const [first] = rankedDrivers(data);
  if (first === undefined || data.toCut === null) return null;
  const narrowed = first.input === "dragScale" ? ": one logged flight would narrow it" : "";
  return `${upperFirst(shareWords(first.timing.total))} of the spread in opening time is ${wordForInput(first.input)}${narrowed}.`;
}

/** What stays open even if the flight were known exactly; null where that was not reckoned. */
export function delayShareSentence({ delayShareOfOdds: share }: DecisionData): string | null {
  return share === null
    ? null
    : `${percent(share)} of clean or not stays open even if the flight were known exactly: the delay's own scatter.`;
}
