import { doubtLine, wordForCheck, wordForWarning } from "@delaywright/documents";
import type { Answer } from "../answer.js";
import type { Style } from "../style.js";
import { bullet, upperFirst, wrap } from "../wrap.js";

/** The warning that says on what the odds rest; it is told beside the odds. */
export const BASIS_WARNING = "drag-not-learned";

/** Checks that say look, what the models were not held against, and what is unlikely in the documents. */
export function lookOut({ decision, doubts }: Answer, style: Style): string | null {
  const looks = decision.checks
    .filter((check) => check.verdict === "look")
    .map((check) => `LOOK: ${wordForCheck(check)}.`);
  const warnings = decision.warnings
    .filter((warning) => warning.code !== BASIS_WARNING)
    .map((warning) => `${upperFirst(wordForWarning(warning))}.`);
  const unlikely = doubts.map((doubt) => `${doubtLine(doubt)}.`);
  const all = [...looks.map((text) => style.look(bullet(text))), ...[...warnings, ...unlikely].map(bullet)];
  return all.length === 0 ? null : ["What to look out for", ...all].join("\n");
}

/** The checks that pass, with what was found against which limit. */
export function withinLimits({ decision }: Answer): string | null {
  const passed = decision.checks.filter((check) => check.verdict === "pass").map(wordForCheck);
  return passed.length === 0 ? null : wrap(`Within limits: ${passed.join("; ")}.`, "", "  ");
}
