import { safetyCodeDistances } from "./distances.js";
import { type FactName, isMissing, type Known, type RuleFacts } from "./facts.js";
import type {
  DetailCode,
  Finding,
  Found,
  Rule,
  RuleLimits,
  RuleTerms,
  RuleText,
  RuleTitle,
  RuleVerdict,
} from "./rule.js";

/** Unit conversions must not push a figure that stands exactly at its limit over it: relative. */
const roundingAllowed = 1e-9;

interface PlainRule<Need extends FactName> extends RuleText<Need> {
  readonly unit: string;
  readonly sense: Rule["sense"];
  readonly limits?: RuleLimits;
  readonly limitsOf?: FactName;
  readonly byDistances?: true;
  /** With all needed facts known. */
  readonly find: (facts: Known<Need>, terms: RuleTerms) => Found | null;
}

/** A rule from its data and what it finds: missing facts and facts that are none are dealt with here. */
export function rule<Need extends FactName>(text: PlainRule<Need>): Rule {
  const { id, basis, sets, needs, unit, sense, limits = {}, limitsOf, find, applies = () => true } = text;
  const ownTerms: RuleTerms = { limits, distances: safetyCodeDistances };
  const finding = (found: Found): Finding => ({ value: null, limit: null, details: [], missing: [], ...found, unit });
  return {
    id,
    title: text.title ?? (id as RuleTitle),
    unit,
    sense,
    limits,
    ...(limitsOf === undefined ? {} : { limitsOf }),
    byDistances: text.byDistances ?? false,
    fixed: text.fixed ?? false,
    ...basis,
    sets,
    needs,
    judge(facts, terms = ownTerms) {
      const applying = applies(facts);
      if (applying === false || needs.some((name) => facts[name] === null)) return null;
      const missing: FactName[] = needs.filter((name) => isMissing(facts, name));
      if (applying !== true) missing.push(...applying.filter((name) => !(missing as string[]).includes(name)));
      if (missing.length > 0) return finding({ verdict: "not-checked", missing });
      const found = find(facts as Known<Need>, terms);
      return found === null ? null : finding(found);
    },
  };
}

interface Comparison<Need extends FactName> extends RuleText<Need> {
  readonly unit: string;
  readonly sense: "least" | "most";
  /** Left out: none of its own, so that it applies only where a club gives some. */
  readonly limits?: RuleLimits;
  /** The limits are multiples of this fact, which must be among the needed ones. */
  readonly limitsOf?: Need;
  /** What the limits are multiplied by; left out: the fact `limitsOf`. */
  readonly scale?: (facts: Known<Need>) => number;
  readonly value: (facts: Known<Need>) => number;
  /** A value exactly at the limit has passed it. */
  readonly strict?: true;
}

/** A rule that holds one figure against its limits. */
export function comparing<Need extends FactName>(text: Comparison<Need>): Rule {
  const { limitsOf, value, sense, strict = false } = text;
  const scale = text.scale ?? ((facts: Known<Need>) => (limitsOf === undefined ? 1 : Number(facts[limitsOf])));
  return rule({ ...text, find: (facts, { limits }) => compare(value(facts), sense, limits, scale(facts), strict) });
}

/** One figure against limits: past `stop` it must not fly, past `look` somebody should look. */
export function compare(
  value: number,
  sense: "least" | "most",
  { look, stop }: RuleLimits,
  scale = 1,
  strict = false,
): Found | null {
  const isPast = (limit: number | undefined): boolean =>
    limit !== undefined && past(value, sense, limit * scale, strict);
  const verdict: RuleVerdict = isPast(stop) ? "stop" : isPast(look) ? "look" : "pass";
  const limit = verdict === "stop" ? stop : (look ?? stop);
  return limit === undefined ? null : { verdict, value, limit: limit * scale };
}

function past(value: number, sense: "least" | "most", limit: number, strict: boolean): boolean {
  const room = Math.abs(limit) * roundingAllowed;
  const within = sense === "least" ? value - limit : limit - value;
  return value === limit ? strict : strict ? within <= room : within < -room;
}

interface Confirmation<Need extends FactName> extends RuleText<Need> {
  /** What must be true. */
  readonly confirmed: (facts: Known<Need>) => boolean;
  /** Left out: stop. */
  readonly otherwise?: "look" | "stop";
  readonly details?: readonly DetailCode[];
}

/** A rule that asks for a yes. */
export function confirming<Need extends FactName>(text: Confirmation<Need>): Rule {
  const { confirmed, otherwise = "stop", details = [] } = text;
  return rule({
    ...text,
    unit: "",
    sense: "none",
    find: (facts) => (confirmed(facts) ? { verdict: "pass" } : { verdict: otherwise, details }),
  });
}

/** Applies to high-power rockets. */
export const toHighPower = ({ highPower }: RuleFacts) => highPower ?? (["highPower"] as const);

/** Applies to model rockets; where that is not known, the rule for high power says so. */
export const toModelRockets = ({ highPower }: RuleFacts) => highPower === false;
