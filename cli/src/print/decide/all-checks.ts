import {
  checkCounts,
  checkFigures,
  checkLine,
  type DecisionData,
  missingFieldSentences,
  notCheckedSentence,
  verdictWords,
} from "@delaywright/documents";
import { bullet, wrap } from "../wrap.js";

/** How many rules were looked at, and what would have to be known for the others. */
export function checksNote({ checks }: DecisionData, everyCheck: boolean): string {
  const { pass } = checkCounts(checks);
  const more = everyCheck ? "" : " (--all-checks lists every rule)";
  const within = `${pass} ${pass === 1 ? "rule is" : "rules are"} within limits${more}.`;
  const notChecked = notCheckedSentence(checks);
  return wrap(notChecked === null ? within : `${within} ${notChecked}`, "", "  ");
}

/** Every rule with what was found, its limit, what it means and where it is from; then what would make the others known. */
export function allChecks({ checks }: DecisionData): string {
  const lines = checks.map((check) => {
    const line = checkLine(check);
    const { name, meaning, source } = line;
    return bullet(
      `${verdictWords[check.verdict]}: ${[name, checkFigures(line)].filter((part) => part !== "").join(" ")}. ${meaning === "" ? "" : `${meaning} `}[${source}]`,
    );
  });
  const fields = missingFieldSentences(checks);
  return [
    "Every rule",
    ...lines,
    ...(fields.length === 0 ? [] : [wrap("What is not known would be said here:", "  ")]),
    ...fields.map((sentence) => wrap(sentence, "    ")),
  ].join("\n");
}
