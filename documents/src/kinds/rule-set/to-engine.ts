import { type ClubLimit, type ClubRules, ruleById } from "@delaywright/engine";
import { given, si, siOr } from "../si.js";
import { readLimit } from "./limit.js";
import type { RuleSetDocument } from "./schema.js";

/** A club's rules in SI units. */
export function ruleSetToEngine({ name, source, edition, base, limits, distances }: RuleSetDocument): ClubRules {
  return {
    name,
    ...given("source", source),
    ...given("edition", edition),
    ...given("base", base),
    limits: Object.fromEntries(
      Object.entries(limits ?? {}).map(([id, change]) => [id, change === "off" ? change : limitOf(id, change)]),
    ),
    ...given(
      "distances",
      distances?.map((row) => ({
        upTo: si(row.upTo, "impulse"),
        single: si(row.single, "length"),
        complex: si(row.complex, "length"),
        ...given("cleared", siOr(row.cleared, "length", undefined)),
      })),
    ),
  };
}

type Change = Exclude<NonNullable<RuleSetDocument["limits"]>[string], "off">;

function limitOf(id: string, { look, stop }: Change): ClubLimit {
  const rule = ruleById(id);
  if (rule === undefined) return {};
  const value = (text: string | number | undefined): number | null | undefined => {
    if (text === undefined) return undefined;
    const read = readLimit(rule, text);
    return read.ok ? read.value : undefined;
  };
  return { ...given("look", value(look)), ...given("stop", value(stop)) };
}
