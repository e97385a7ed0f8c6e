import type { NextData, NextOddsData } from "../answer/debrief-data.js";
import type { UnitSystem } from "../quantity/systems.js";
import { delayWords, holdsPercent, percent, rangeWords } from "./numbers.en.js";

/** Odds that differ by less than this are the same. */
const SAME_ODDS = 0.005;

function cutWords({ toCut }: NextOddsData): string {
  return toCut === null ? "" : `${delayWords(toCut.delay)}, ${percent(toCut.odds.clean)} clean`;
}

function backUpWords(delay: number, firesFirst: number, holds: number): string {
  return `${delayWords(delay)}, fires before the electronics in ${percent(firesFirst)}, holds ${holdsPercent(holds)} if the electronics fails`;
}

/**
 * Which delay to cut next and how good it is, with this flight and without.
 *
 * @example
 * nextSentence(data.next); // "The next one: cut to 10 s, 93 % clean. Without this flight it was 9 s, 92 % clean; …"
 */
export function nextSentence({ before, after, sameDelay }: NextData): string {
  const [was, is] = [before.toCut, after.toCut];
  if (was === null || is === null) return "The motor has no delay: nothing of the next opening hangs on it.";
  if (was.firesFirst !== null && is.firesFirst !== null)
    return `The next back-up delay: ${backUpWords(is.delay, is.firesFirst, is.odds.holds)}. Without this flight: ${backUpWords(was.delay, was.firesFirst, was.odds.holds)}.`;
  const good =
    is.reachesLeast && is.reachesHolds ? "The next one: " : "The next one, none of them good enough, at best: ";
  if (Math.abs(is.delay - was.delay) > 1e-6) {
    const same = sameDelay === null ? "" : `; that delay now has ${percent(sameDelay.clean)}`;
    return `${good}${cutWords(after)}. Without this flight it was ${cutWords(before)}${same}.`;
  }
  const change = is.odds.clean - was.odds.clean;
  if (Math.abs(change) < SAME_ODDS) return `${good}${cutWords(after)}: as without this flight.`;
  return `${good}${cutWords(after)}; without this flight ${percent(was.odds.clean)}.`;
}

/** How much narrower the next top is known. */
export function nextTopSentence({ before, after }: NextData, units: UnitSystem = "metric"): string {
  const band = ({ apogee }: NextOddsData): string => rangeWords(apogee.p05, apogee.p95, "distance", units);
  return `Its top: 9 in 10 from ${band(after)}; without this flight ${band(before)}.`;
}
