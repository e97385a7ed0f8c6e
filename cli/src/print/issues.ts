import { type Issue, issueLine } from "@delaywright/documents";
import { wrap } from "./wrap.js";

/** Every issue on its own line, for standard error. */
export function issuesText(issues: readonly Issue[]): string {
  return `${issues.map((issue) => wrap(issueLine(issue), "", "  ")).join("\n")}\n`;
}
