import { DRAWS } from "./draws.js";
import { defectWords } from "./failure-words.js";
import type { FromDesk } from "./protocol.js";
import type { Brief, PlanAnswer, Told, WindowAnswer } from "./told.js";

/** What the desk says of one job. */
export type JobMessage = Exclude<FromDesk, { kind: "ready" }>;

/** All draws are in it. */
export function isSettled(told: Told): boolean {
  return told.draws >= told.of;
}

/** How an answer goes on: when it is asked anew, with each message, and when the computing stopped. */
export interface Rules<Value> {
  readonly first: Value;
  asked(value: Value): Value;
  after(value: Value, message: JobMessage): Value;
  failed(value: Value, words: string): Value;
}

/** The last answer stays until the first odds of the new one. */
export const planRules: Rules<PlanAnswer> = {
  first: { issues: [], told: null, fresh: false, progress: null, failure: null, pictures: null },
  asked: (answer) => ({ ...answer, fresh: false, progress: { done: 0, of: DRAWS }, failure: null }),
  failed: (answer, failure) => ({ ...answer, progress: null, failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read":
        return { ...answer, issues: message.issues, ...(message.right ? {} : { progress: null }) };
      case "told": {
        const { told } = message;
        const progress = isSettled(told) ? null : { done: told.draws, of: told.of };
        return { ...answer, told, fresh: answer.issues.length === 0, progress };
      }
      case "beat": {
        if (answer.progress === null || message.done <= answer.progress.done) return answer;
        return { ...answer, progress: { done: message.done, of: message.of } };
      }
      case "pictures":
        return { ...answer, pictures: message.pictures };
      case "failed":
        return planRules.failed(answer, defectWords(message.reason));
      default:
        return answer;
    }
  },
};

/** The last known answer stays until the new one has settled. */
export const briefRules: Rules<Brief> = {
  first: { state: "waiting", issues: [], told: null, failure: null },
  asked: (brief) => ({ ...brief, state: "waiting", failure: null }),
  failed: (brief, failure) => ({ ...brief, state: "failed", failure }),
  after(brief, message) {
    switch (message.kind) {
      case "read":
        return { ...brief, issues: message.issues, state: message.right ? "waiting" : "wrong" };
      case "told": {
        if (!isSettled(message.told)) return brief;
        return { ...brief, told: message.told, state: brief.issues.length === 0 ? "settled" : "wrong" };
      }
      case "failed":
        return briefRules.failed(brief, defectWords(message.reason));
      default:
        return brief;
    }
  },
};

/** The last known window stays until the new one has come. */
export const windowRules: Rules<WindowAnswer> = {
  first: { state: "waiting", window: null, fresh: false, failure: null },
  asked: (answer) => ({ ...answer, state: "waiting", fresh: false, failure: null }),
  failed: (answer, failure) => ({ ...answer, state: "failed", failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read":
        return message.right ? answer : { ...answer, state: "wrong" };
      case "window":
        return { ...answer, state: "ready", window: message.window, fresh: true };
      case "failed":
        return windowRules.failed(answer, defectWords(message.reason));
      default:
        return answer;
    }
  },
};
