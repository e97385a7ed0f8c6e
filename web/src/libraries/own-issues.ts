import { checkField, type Issue, readDocument, readValue } from "@delaywright/documents";
import type { Entry } from "../store/index.js";

const known = new WeakMap<Entry, readonly Issue[]>();

function look(entry: Entry): readonly Issue[] {
  const { path, kind, raw, text, drafts, unreadable } = entry;
  if (unreadable === "newer-record") {
    const accepted = "what the version of this app knows; load the page again once it was renewed";
    return [
      { file: path, path: "", code: "newer-version", found: "a document of a newer version", accepted, example: "" },
    ];
  }
  if (kind === null || raw === null) return readDocument(text ?? "", { file: path }).issues;
  const typed = Object.entries(drafts).flatMap(([field, draft]) => {
    const issue = checkField(kind, field, draft);
    return issue === undefined ? [] : [{ ...issue, file: path }];
  });
  const fields = new Set(typed.map((issue) => issue.path));
  const others = readValue(raw, { file: path }).issues.filter((issue) => !fields.has(issue.path));
  return [...typed, ...others];
}

/** What is wrong with a document by itself, what was typed and cannot be read yet included. */
export function ownIssues(entry: Entry): readonly Issue[] {
  const found = known.get(entry) ?? look(entry);
  known.set(entry, found);
  return found;
}

/**
 * What is wrong with a document in a few words; null where nothing is.
 *
 * @example
 * stateWords([{ code: "missing", … }]); // "1 thing is missing"
 */
export function stateWords(issues: readonly Pick<Issue, "code">[]): string | null {
  if (issues.length === 0) return null;
  const missing = issues.every((issue) => issue.code === "missing");
  const count = issues.length === 1 ? "1 thing is" : `${issues.length} things are`;
  return `${count} ${missing ? "missing" : "wrong or missing"}`;
}
