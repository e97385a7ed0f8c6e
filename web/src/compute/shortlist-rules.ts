import type { Rules } from "./answers.js";
import { defectWords } from "./failure-words.js";
import type { ShortlistAnswer } from "./told.js";

/** What stands stays where it is until it is judged anew. */
export const shortlistRules: Rules<ShortlistAnswer> = {
  first: { state: "waiting", issues: [], shelf: null, rows: new Map(), waiting: new Set(), failure: null },
  asked: (answer) => ({ ...answer, state: "waiting", waiting: new Set(answer.rows.keys()), failure: null }),
  failed: (answer, failure) => ({ ...answer, state: "failed", failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read":
        return { ...answer, issues: message.issues, state: message.right ? "waiting" : "wrong" };
      case "shelf": {
        const waiting = new Set(message.shelf.motors);
        const rows = new Map([...answer.rows].filter(([path]) => waiting.has(path)));
        return { ...answer, shelf: message.shelf, rows, waiting };
      }
      case "rows": {
        const rows = new Map(answer.rows);
        const waiting = new Set(answer.waiting);
        for (const row of message.rows) {
          rows.set(row.id, row);
          waiting.delete(row.id);
        }
        return { ...answer, rows, waiting };
      }
      case "done":
        return answer.state === "waiting" ? { ...answer, state: "ready" } : answer;
      case "failed":
        return shortlistRules.failed(answer, defectWords(message.reason));
      default:
        return answer;
    }
  },
};
