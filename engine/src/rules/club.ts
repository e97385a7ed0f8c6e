import { ruleById } from "./all-rules.js";
import { type DistanceRow, safetyCodeDistances } from "./distances.js";
import type { Basis, ClubIssueCode, Rule, RuleLimits, RuleSetName, RuleTerms } from "./rule.js";

/** A club's numbers for one rule: what is left out stays as it was, null takes a limit away. */
export interface ClubLimit {
  readonly look?: number | null;
  readonly stop?: number | null;
}

/** A club's own rule set: it tightens, loosens or turns off rules of another one, and may take in rules that have no limit there. */
export interface ClubRules {
  readonly name: string;
  /** Where its rules are written; left out: its name. */
  readonly source?: string;
  readonly edition?: string;
  /** What holds where the club says nothing; left out: `association`. */
  readonly base?: RuleSetName;
  /** By identifier of the rule. Numbers are in the rule's unit, or multiples where the rule's limits are. */
  readonly limits: Readonly<Record<string, ClubLimit | "off">>;
  /** In place of the safety code's table of distances: rows, rising. */
  readonly distances?: readonly DistanceRow[];
}

/** Something in a club's rules that cannot be followed. */
export interface ClubIssue {
  readonly code: ClubIssueCode;
  /** A dotted path into the club's rules: `limits.wind-limit`, `distances[2]`. */
  readonly path: string;
}

/** Rules of a club that are followed, and what is not. */
interface ClubReading {
  readonly off: ReadonlySet<string>;
  readonly limits: ReadonlyMap<string, ClubLimit>;
  readonly distances: readonly DistanceRow[] | undefined;
  readonly issues: readonly ClubIssue[];
}

/** Reads a club's rules: each is followed in full or reported. */
export function readClub(club: ClubRules): ClubReading {
  const off = new Set<string>();
  const limits = new Map<string, ClubLimit>();
  const issues: ClubIssue[] = [];
  for (const [id, change] of Object.entries(club.limits)) {
    const code = problemOf(ruleById(id), change);
    if (code !== null) issues.push({ code, path: `limits.${id}` });
    else if (change === "off") off.add(id);
    else limits.set(id, change);
  }
  const wrongRow = club.distances === undefined ? -1 : firstWrongRow(club.distances);
  if (wrongRow >= 0) issues.push({ code: "distances-not-rising", path: `distances[${wrongRow}]` });
  return { off, limits, distances: wrongRow >= 0 ? undefined : club.distances, issues };
}

/** A number that stays one when a rule multiplies it. */
function isPlain(limit: unknown): boolean {
  return typeof limit === "number" && Math.abs(limit) <= 1e12;
}

function problemOf(rule: Rule | undefined, change: ClubLimit | "off"): ClubIssueCode | null {
  if (rule === undefined) return "rule-unknown";
  if (rule.fixed) return "rule-is-fixed";
  if (change === "off") return null;
  if (typeof change !== "object" || change === null) return "limit-not-a-number";
  const { look, stop } = change;
  if (![look, stop].every((limit) => limit === undefined || limit === null || isPlain(limit)))
    return "limit-not-a-number";
  return rule.sense === "none" || rule.id === "choice-below-least" ? "rule-has-no-limit" : null;
}

/** Index of the first row that is not above the one before, or holds no distances; -1: all are right. */
function firstWrongRow(rows: readonly DistanceRow[]): number {
  if (rows.length === 0) return 0;
  return rows.findIndex(({ upTo, single, complex, cleared = 0 }, i) => {
    const numbers = [upTo, single, complex, cleared];
    return !numbers.every((n) => isPlain(n) && n >= 0) || upTo <= (rows[i - 1]?.upTo ?? 0);
  });
}

/**
 * What in a club's rules cannot be followed: rules that are unknown or fixed, limits that are no numbers or belong to rules
 * that none decides, a table that does not rise. All else is followed.
 *
 * @example
 * clubIssues({ name: "Demo club", limits: { "moon-limit": { stop: 3 } } }); // [{ code: "rule-unknown", path: "limits.moon-limit" }]
 */
export function clubIssues(club: ClubRules): readonly ClubIssue[] {
  return readClub(club).issues;
}

/** What a rule is judged by under a club, and whose rule it then is. */
export function clubTerms(rule: Rule, club: ClubRules, reading: ClubReading): { terms: RuleTerms; basis: Basis } {
  const change = reading.limits.get(rule.id);
  const ownTable = rule.byDistances && reading.distances !== undefined;
  const terms = {
    limits: change === undefined ? rule.limits : withChange(rule.limits, change),
    distances: reading.distances ?? safetyCodeDistances,
  };
  const { source, edition, status } = rule;
  return change === undefined && !ownTable
    ? { terms, basis: { source, edition, status } }
    : { terms, basis: { source: club.source ?? club.name, edition: club.edition ?? "", status: "the club's own" } };
}

function withChange(own: RuleLimits, { look = own.look ?? null, stop = own.stop ?? null }: ClubLimit): RuleLimits {
  return { ...(look === null ? {} : { look }), ...(stop === null ? {} : { stop }) };
}
