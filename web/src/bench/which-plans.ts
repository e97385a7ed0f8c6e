import { shelfOf } from "../chrome/shelf-titles.js";
import type { Entry } from "../store/index.js";

/** Whether a document is a plan, or was one before it became unreadable. */
export function isPlan(entry: Pick<Entry, "path" | "kind">): boolean {
  return shelfOf(entry) === null;
}
