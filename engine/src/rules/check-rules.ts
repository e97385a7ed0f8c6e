import { ruleById, rules } from "./all-rules.js";
import { type ClubRules, clubTerms, readClub } from "./club.js";
import type { RuleFacts } from "./facts.js";
import type { Basis, Finding, Rule, RuleSetName, RuleTitle, RuleVerdict } from "./rule.js";

/** What one rule found, with where it comes from. */
export interface RuleFinding extends Finding, Basis {
  /** The rule's identifier; of something in a club's rules that cannot be followed: its path. */
  readonly id: string;
  readonly title: RuleTitle;
  readonly sense: Rule["sense"];
}

/** A rule set that comes with the engine, or a club's own. */
export type RuleSet = RuleSetName | ClubRules;

const order: readonly RuleVerdict[] = ["stop", "look", "not-checked", "pass"];

/**
 * Holds the facts against a rule set.
 *
 * Nothing passes on a fact that is not known: it is `not-checked`, with the fact's name. What a club's rules say that cannot
 * be followed is `not-checked` too. Rules that do not apply are left out.
 *
 * @param facts in SI; leave out what is not known, null what is known to be none
 * @param ruleSet `association`: the codes of the association, the aviation rule, physics and own defaults; `none`: physics,
 * common practice and own defaults only; or a club's own
 * @returns stop first, then look, not checked, pass
 * @source each finding carries its own, with its status
 * @example
 * checkRules({ thrustToWeight: 2.9 }, "none")[0]; // { id: "thrust-to-weight", verdict: "stop", value: 2.9, limit: 3, … }
 */
export function checkRules(facts: RuleFacts, ruleSet: RuleSet): readonly RuleFinding[] {
  const found = typeof ruleSet === "string" ? byName(facts, ruleSet) : byClub(facts, ruleSet);
  return order.flatMap((verdict) => found.filter((finding) => finding.verdict === verdict));
}

/**
 * The margin below which a rule set looks at a flight between guide exit and top [calibres]; null: it asks for none.
 *
 * @example
 * leastMarginOf("association"); // 1
 */
export function leastMarginOf(ruleSet: RuleSet): number | null {
  const rule = ruleById("margin-in-flight");
  if (rule === undefined) return null;
  if (typeof ruleSet === "string") return rule.limits.look ?? null;
  const reading = readClub(ruleSet);
  return reading.off.has(rule.id) ? null : (clubTerms(rule, ruleSet, reading).terms.limits.look ?? null);
}

function byName(facts: RuleFacts, name: RuleSetName): RuleFinding[] {
  return rules.filter(({ sets }) => sets.includes(name)).flatMap((rule) => findingOf(rule, rule, rule.judge(facts)));
}

function byClub(facts: RuleFacts, club: ClubRules): RuleFinding[] {
  const reading = readClub(club);
  const base = club.base ?? "association";
  const used = rules.filter(({ id, sets }) => !reading.off.has(id) && (sets.includes(base) || reading.limits.has(id)));
  const notFollowed = reading.issues.map(
    ({ code, path }): RuleFinding => ({
      id: path,
      title: "club-rule",
      verdict: "not-checked",
      value: null,
      limit: null,
      unit: "",
      details: [code],
      missing: [],
      sense: "none",
      source: club.source ?? club.name,
      edition: club.edition ?? "",
      status: "the club's own",
    }),
  );
  const judged = used.flatMap((rule) => {
    const { terms, basis } = clubTerms(rule, club, reading);
    return findingOf(rule, basis, rule.judge(facts, terms));
  });
  return [...judged, ...notFollowed];
}

function findingOf(
  { id, title, sense }: Rule,
  { source, edition, status }: Basis,
  finding: Finding | null,
): RuleFinding[] {
  return finding === null ? [] : [{ id, title, sense, ...finding, source, edition, status }];
}
