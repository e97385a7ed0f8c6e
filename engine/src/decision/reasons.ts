import { mostFiresFirst } from "../rules/delay-rules.js";
import { reachesLeast } from "./choose.js";
import type { HelpCode, ReasonCode, Setting } from "./decision.js";
import type { Limits } from "./inputs.js";

/** An outcome with less than this share is no reason. */
const worthNaming = 0.03;

/** Why the best setting is not good enough, most weighty first, and what would help. */
export interface Reasons {
  readonly reasons: readonly ReasonCode[];
  readonly helps: readonly HelpCode[];
}

/**
 * Names what stands in the way of the best setting.
 *
 * A delay is out of reach where the setting at one end is best and its failures all lie on the far side.
 *
 * @param settings longest delay first
 * @param best index of the best setting
 * @param learned the rocket's drag has been narrowed by flights
 */
export function reasonsFor(settings: readonly Setting[], best: number, limits: Limits, learned: boolean): Reasons {
  const { odds, firesFirst } = settings[best]!;
  if (reachesLeast(settings[best]!, limits) && odds.holds >= limits.leastHolds) return { reasons: [], helps: [] };
  const shares: [ReasonCode, number][] = [
    ["too-fast-early", odds.earlyFast],
    ["too-fast-late", odds.lateFast],
    ["lean", odds.leanFast],
    ["too-low", odds.low],
    ["grounded", odds.grounded],
    ["fires-before-electronics", firesFirst !== null && firesFirst > mostFiresFirst ? firesFirst : 0],
  ];
  const reasons = shares
    .filter(([, share]) => share >= worthNaming)
    .sort((a, b) => b[1] - a[1])
    .map(([code]) => code);
  if (odds.holds < limits.leastHolds) reasons.push("does-not-hold");
  const { earlyFast, lateFast } = odds;
  const wantsLonger = best === 0 && (earlyFast > 3 * lateFast || reasons.includes("fires-before-electronics"));
  const wantsShorter = best === settings.length - 1 && lateFast + odds.low + odds.grounded > 3 * earlyFast;
  if (wantsLonger && earlyFast >= worthNaming) reasons.push("out-of-reach-longer");
  if (wantsShorter && lateFast + odds.low >= worthNaming) reasons.push("out-of-reach-shorter");

  const helps = new Set<HelpCode>();
  if (reasons.includes("out-of-reach-longer")) helps.add("motor-with-longer-delay");
  if (reasons.includes("out-of-reach-shorter")) helps.add("motor-with-shorter-delay");
  if (odds.leanFast >= worthNaming || (lateFast >= worthNaming && earlyFast < worthNaming)) {
    helps.add("less-wind");
    helps.add("longer-guide");
  }
  if (earlyFast >= worthNaming && lateFast >= worthNaming && !learned) helps.add("log-a-flight");
  if (reasons.includes("does-not-hold")) helps.add("stronger-recovery");
  if (wantsLonger || wantsShorter) helps.add("ballast");
  helps.add("another-motor");
  return { reasons, helps: [...helps] };
}
