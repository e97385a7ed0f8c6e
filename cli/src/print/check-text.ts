import { doubtLine, issueLine } from "@delaywright/documents";
import type { CheckedFile } from "./answer.js";
import { wrap } from "./wrap.js";

function count(number: number, word: string): string {
  return `${number} ${word}${number === 1 ? "" : "s"}`;
}

function fileText({ file, state, kind, issues, doubts }: CheckedFile): string {
  const verdict =
    state === "ready" && issues.length === 0
      ? `right, a ${kind ?? "document"}`
      : state === "missing"
        ? "not there"
        : "not right";
  return [
    wrap(`${file}: ${verdict}`),
    ...issues.map((issue) => wrap(issueLine(issue), "  - ", "    ")),
    ...doubts.map((doubt) => wrap(`unlikely: ${doubtLine(doubt)}`, "  - ", "    ")),
  ].join("\n");
}

/** What was found in every file, and how much of it. */
export function checkText(files: readonly CheckedFile[]): string {
  const issues = files.reduce((sum, file) => sum + file.issues.length, 0);
  const doubts = files.reduce((sum, file) => sum + file.doubts.length, 0);
  const doubtful = doubts === 0 ? "" : `, ${count(doubts, "unlikely value")}`;
  return `${files.map(fileText).join("\n")}\n${count(files.length, "file")}, ${count(issues, "issue")}${doubtful}\n`;
}
