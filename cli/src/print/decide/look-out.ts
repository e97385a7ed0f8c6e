import { type DecisionData, lookOutSentences, wordForCheck } from "@delaywright/documents";
import type { Style } from "../style.js";
import { bullet, wrap } from "../wrap.js";

/** Checks that say look, what the models were not held against, and what is unlikely in the documents. */
export function lookOut(data: DecisionData, style: Style): string | null {
  const { looks, warnings, unlikely } = lookOutSentences(data);
  const all = [...looks.map((text) => style.look(bullet(`LOOK: ${text}`))), ...[...warnings, ...unlikely].map(bullet)];
  return all.length === 0 ? null : ["What to look out for", ...all].join("\n");
}

/** The checks that pass, with what was found against which limit. */
export function withinLimits({ checks }: DecisionData): string | null {
  const passed = checks.filter((check) => check.verdict === "pass").map((check) => wordForCheck(check));
  return passed.length === 0 ? null : wrap(`Within limits: ${passed.join("; ")}.`, "", "  ");
}
