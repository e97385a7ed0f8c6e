import { defectWords } from "./failure-words.js";
import { heldOver } from "./held-over.js";
import type { FromDesk } from "./protocol.js";
import { type Brief, isSettled, type PlanAnswer, type SteadinessAnswer, type Told, type WindowAnswer } from "./told.js";

/** What was there before where it says the same: nothing that rests on it need be drawn again. */
function kept<Value>(before: Value, now: Value): Value {
  return JSON.stringify(before) === JSON.stringify(now) ? before : now;
}

function withKeptDoubts(before: Told | null, told: Told): Told {
  if (before === null) return told;
  return { ...told, data: { ...told.data, doubts: kept(before.data.doubts, told.data.doubts) } };
}

/** How an answer goes on: when it is asked anew, with each message, and when the computing stopped. */
export interface Rules<Value> {
  readonly first: Value;
  asked(value: Value): Value;
  after(value: Value, message: FromDesk): Value;
  failed(value: Value, words: string): Value;
}

/** The last answer stays until the first odds of the new one. */
export const planRules: Rules<PlanAnswer> = {
  first: { issues: [], told: null, fresh: false, settling: false, failure: null, pictures: null, pictured: false },
  asked: (answer) => ({ ...answer, fresh: false, settling: true, failure: null }),
  failed: (answer, failure) => ({ ...answer, settling: false, failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read": {
        const issues = kept(answer.issues, message.issues);
        if (message.right && issues === answer.issues) return answer;
        if (message.right) return { ...answer, issues };
        // what stands in the plan's place of a document that is gone has no last right value
        const gone = issues.some(({ code }) => code === "file-missing");
        return { ...answer, issues, settling: false, ...(gone ? { told: null, pictures: null, pictured: false } : {}) };
      }
      case "told": {
        // of the same documents, after all draws: rough odds would take it back
        if (answer.fresh && answer.told !== null && isSettled(answer.told)) return answer;
        const told = heldOver(withKeptDoubts(answer.told, message.told), answer.told);
        return { ...answer, told, fresh: answer.issues.length === 0, settling: !isSettled(told), pictured: false };
      }
      case "pictures":
        return { ...answer, pictures: message.pictures, pictured: true };
      case "failed":
        return planRules.failed(answer, defectWords(message.reason));
      default:
        return answer;
    }
  },
};

/** The last known answer stays until the new one has settled; where none is known, rough odds are better than none. */
export const briefRules: Rules<Brief> = {
  first: { state: "waiting", issues: [], told: null, failure: null },
  asked: (brief) => ({ ...brief, state: "waiting", failure: null }),
  failed: (brief, failure) => ({ ...brief, state: "failed", failure }),
  after(brief, message) {
    switch (message.kind) {
      case "read":
        return { ...brief, issues: message.issues, state: message.right ? "waiting" : "wrong" };
      case "told": {
        if (!isSettled(message.told)) {
          const known = brief.told !== null && isSettled(brief.told);
          return known ? brief : { ...brief, told: message.told };
        }
        return { ...brief, told: message.told, state: brief.issues.length === 0 ? "settled" : "wrong" };
      }
      case "failed":
        return briefRules.failed(brief, defectWords(message.reason));
      default:
        return brief;
    }
  },
};

/** The last known figures stay until the new ones have come. */
function keptUntilNew<Value extends WindowAnswer | SteadinessAnswer>(
  first: Value,
  come: (value: Value, message: FromDesk) => Value | null,
): Rules<Value> {
  const failed = (value: Value, failure: string): Value => ({ ...value, state: "failed", failure });
  return {
    first,
    failed,
    asked: (value) => ({ ...value, state: "waiting", fresh: false, failure: null }),
    after(value, message) {
      if (message.kind === "read") return message.right ? value : { ...value, state: "wrong" };
      if (message.kind === "failed") return failed(value, defectWords(message.reason));
      return come(value, message) ?? value;
    },
  };
}

export const windowRules: Rules<WindowAnswer> = keptUntilNew<WindowAnswer>(
  { state: "waiting", window: null, fresh: false, failure: null },
  (answer, message) =>
    message.kind === "window" ? { ...answer, state: "ready", window: message.window, fresh: true } : null,
);

export const steadinessRules: Rules<SteadinessAnswer> = keptUntilNew<SteadinessAnswer>(
  { state: "waiting", steadiness: null, fresh: false, failure: null },
  (answer, message) =>
    message.kind === "steadiness" ? { ...answer, state: "ready", steadiness: message.steadiness, fresh: true } : null,
);
