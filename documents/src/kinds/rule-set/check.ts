import { clubIssues, ruleById, rules } from "@delaywright/engine";
import { type Fault, joinPath, show } from "../../issue.js";
import { nearestName } from "../../nearest.js";
import type { RawView } from "../raw.js";
import { readLimit } from "./limit.js";

/** What a club's rules must be: rules that there are, limits in their units, a table that rises. */
export function checkRuleSet(club: RawView): void {
  for (const id of club.at("limits").keys) checkLimit(club.at("limits").at(id), id);
  let before = 0;
  for (const row of club.at("distances").list) {
    const upTo = row.at("upTo").si("impulse");
    if (upTo === undefined) continue;
    if (upTo <= before) row.at("upTo").report("not-rising", "more than in the row before");
    before = upTo;
  }
}

/** What is wrong with one limit of a rule, by that rule alone; nothing of any other field. */
export function limitFault(steps: readonly PropertyKey[], value: unknown): Fault | undefined {
  const [limits, id, which] = steps;
  if (limits !== "limits" || (which !== "look" && which !== "stop") || value === undefined) return undefined;
  const rule = ruleById(String(id));
  const read = rule && readLimit(rule, value);
  if (read === undefined || read.ok) return undefined;
  return { path: joinPath(steps), code: read.code, found: show(value), accepted: read.accepted, example: read.example };
}

function checkLimit(limit: RawView, id: string): void {
  const rule = ruleById(id);
  if (rule === undefined) {
    const names = rules.map((each) => each.id);
    const near = nearestName(id, names);
    const accepted = near === undefined ? `the name of a rule: ${names.join(", ")}` : `did you mean \`${near}\`?`;
    limit.report("rule-unknown", accepted, near ?? "", JSON.stringify(id));
    return;
  }
  const off = limit.text === "off";
  if (!off && !limit.isObject) return;
  const change = off ? "off" : {};
  const [issue] = clubIssues({ name: "", limits: { [id]: change } });
  if (issue?.code === "rule-is-fixed") limit.report(issue.code, "nothing here: no club can change this rule");
  else if (issue !== undefined) limit.report(issue.code, '"off", or nothing: no number decides this rule', '"off"');
  if (off || issue !== undefined) return;
  const [look, stop] = (["look", "stop"] as const).map((key) => {
    if (!limit.has(key)) return rule.limits[key];
    const read = readLimit(rule, limit.at(key).given);
    if (read.ok) return read.value ?? undefined;
    limit.at(key).report(read.code, read.accepted, read.example);
    return undefined;
  });
  if (look === undefined || stop === undefined || !limit.has("look") || !limit.has("stop")) return;
  if (rule.sense === "most" ? look > stop : look < stop)
    limit.at("look").report("not-in-order", rule.sense === "most" ? "no more than stop" : "no less than stop");
}
