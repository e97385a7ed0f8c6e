import type { Decision, Odds } from "@delaywright/engine";
import type { NextData, NextOddsData } from "../answer/debrief-data.js";
import { cutData } from "../answer/decision-data.js";

/** So close a delay is the same setting [s]. */
const SAME_SETTING = 0.01;

/** What a plan would be told at one state of knowledge. */
export function nextOdds({ toCut, settings, apogeeHeight }: Decision): NextOddsData {
  const setting = toCut === null ? undefined : settings.find(({ delay }) => sameDelay(delay, toCut.delay));
  return {
    toCut:
      toCut === null || setting === undefined
        ? null
        : {
            ...cutData(toCut),
            odds: setting.odds,
            reachesLeast: toCut.reachesLeast,
            reachesHolds: toCut.reachesHolds,
            firesFirst: setting.firesFirst,
          },
    settings: settings.map(({ delay, odds }) => ({ delay, clean: odds.clean, holds: odds.holds })),
    apogee: apogeeHeight,
    delaySd: setting?.delaySd ?? null,
  };
}

/** How much a plan's odds change with one flight more: both from the same draws. */
export function nextData(plan: string, before: Decision, after: Decision): NextData {
  return {
    plan,
    before: nextOdds(before),
    after: nextOdds(after),
    sameDelay: before.toCut === null ? null : oddsAt(after, before.toCut.delay),
  };
}

/** Odds at a setting of the decision; null where it is none. */
export function oddsAt({ settings }: Pick<Decision, "settings">, delay: number): Odds | null {
  return settings.find((setting) => sameDelay(setting.delay, delay))?.odds ?? null;
}

function sameDelay(a: number, b: number): boolean {
  return Math.abs(a - b) < SAME_SETTING;
}
