import { checkRules, type RuleFinding, type RuleSet } from "../../rules/check-rules.js";
import type { RuleFacts } from "../../rules/facts.js";
import type { MotorLook, MotorLookCode, NotChecked, Refusal, RefusalCode } from "./judged-motor.js";

/** What was found of a motor so far. */
export interface Findings {
  readonly refusals: readonly Refusal[];
  readonly looks: readonly MotorLook[];
  readonly notChecked: readonly NotChecked[];
}

/** Rules that need no flight. */
export const beforeFlight: readonly RefusalCode[] = [
  "certification-level",
  "motor-certified",
  "no-charge",
  "thrust-to-weight",
];

/** Rules that the nominal flight is held against. */
export const afterLaunch: readonly MotorLookCode[] = [
  "lift-off-weight",
  "guide-exit-speed",
  "guide-exit-against-wind",
  "guide-length-in-wind",
  "cp-ahead-of-balance",
  "margin-at-guide-exit",
  "margin-at-burnout",
  "margin-in-flight",
  "over-stable",
  "personnel-distance",
  "site-edge-distance",
];

/** Rules that all draws are held against. */
export const afterDraws: readonly RefusalCode[] = [
  "site-size",
  "ceiling",
  "draws-not-flown",
  "no-setting-holds",
  "below-least-clean",
  "fires-before-electronics",
  "instructions-not-confirmed",
  "tool-not-named",
  "landing-inside-unopened",
  "keep-off-zones-unopened",
];

/** Rules about where opened draws land, which are followed down only for a motor that nothing else refuses. */
export const afterLandings: readonly RefusalCode[] = ["landing-inside", "keep-off-zones"];

/**
 * Among many motors one is refused for what a single flight is only looked at: a margin below the least, and a delay that
 * does not reach the odds asked for.
 */
const refusedAtLook: ReadonlySet<string> = new Set([
  "margin-at-guide-exit",
  "below-least-clean",
  "fires-before-electronics",
]);

/** Reasons in the order in which groups of refusals are listed: what no ballast and no weather can cure comes first. */
export const refusalOrder: readonly RefusalCode[] = [
  "too-wide-for-mount",
  "too-long-for-mount",
  ...beforeFlight,
  "lift-off-weight",
  "guide-exit-speed",
  "guide-exit-against-wind",
  "guide-length-in-wind",
  "cp-ahead-of-balance",
  "margin-at-guide-exit",
  "personnel-distance",
  "site-edge-distance",
  ...afterDraws,
  ...afterLandings,
];

/** Papers of flyer and motor, and where it lands: where one of these cannot be told, that is said of each motor. */
const saidIfNotChecked: ReadonlySet<string> = new Set(["certification-level", "motor-certified", ...afterLandings]);

/**
 * Holds the facts against some of the rules of a set, with the set's own limits.
 *
 * @param titles of the rules
 * @param ruleSet left out: `association`
 */
export function findingsOf(
  facts: RuleFacts,
  titles: readonly MotorLookCode[],
  ruleSet: RuleSet = "association",
): Findings {
  const asked = new Set<string>(titles);
  const found = checkRules(facts, ruleSet).filter(({ title }) => asked.has(title));
  const refused = ({ title, verdict }: RuleFinding): boolean =>
    verdict === "stop" || (verdict === "look" && refusedAtLook.has(title));
  return {
    refusals: inOrder(found.filter(refused).map((finding) => plainly(finding) as Refusal)),
    looks: found.filter((finding) => finding.verdict === "look" && !refused(finding)).map(plainly),
    notChecked: found
      .filter(({ verdict, title }) => verdict === "not-checked" && saidIfNotChecked.has(title))
      .map(({ title, missing }) => ({ code: title as MotorLookCode, missing })),
  };
}

/** Refusals by the order of their reasons. */
export function inOrder(refusals: readonly Refusal[]): Refusal[] {
  return [...refusals].sort((a, b) => refusalOrder.indexOf(a.code) - refusalOrder.indexOf(b.code));
}

function plainly({ title, value, limit, unit, sense, details, source, edition, status }: RuleFinding): MotorLook {
  return { code: title as MotorLookCode, value, limit, unit, sense, details, source, edition, status };
}
