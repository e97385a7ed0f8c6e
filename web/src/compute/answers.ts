import { defectWords } from "./failure-words.js";
import type { FromDesk } from "./protocol.js";
import type { Brief, PlanAnswer, SteadinessAnswer, Told, WindowAnswer } from "./told.js";

/** What the desk says of one job. */
export type JobMessage = Exclude<FromDesk, { kind: "ready" }>;

/** All draws are in it. */
export function isSettled(told: Told): boolean {
  return told.draws >= told.of;
}

/** What was there before where it says the same: nothing that rests on it need be drawn again. */
function kept<Value>(before: Value, now: Value): Value {
  return JSON.stringify(before) === JSON.stringify(now) ? before : now;
}

function withKeptDoubts(before: Told | null, { data }: Told): Told["data"] {
  return before === null ? data : { ...data, doubts: kept(before.data.doubts, data.doubts) };
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
  first: { issues: [], told: null, fresh: false, settling: false, failure: null, pictures: null },
  asked: (answer) => ({ ...answer, fresh: false, settling: true, failure: null }),
  failed: (answer, failure) => ({ ...answer, settling: false, failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read":
        return {
          ...answer,
          issues: kept(answer.issues, message.issues),
          ...(message.right ? {} : { settling: false }),
        };
      case "told": {
        const told = { ...message.told, data: withKeptDoubts(answer.told, message.told) };
        return { ...answer, told, fresh: answer.issues.length === 0, settling: !isSettled(told) };
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

/** The last known flights stay until the new ones have come. */
export const steadinessRules: Rules<SteadinessAnswer> = {
  first: { state: "waiting", steadiness: null, fresh: false, failure: null },
  asked: (answer) => ({ ...answer, state: "waiting", fresh: false, failure: null }),
  failed: (answer, failure) => ({ ...answer, state: "failed", failure }),
  after(answer, message) {
    switch (message.kind) {
      case "read":
        return message.right ? answer : { ...answer, state: "wrong" };
      case "steadiness":
        return { ...answer, state: "ready", steadiness: message.steadiness, fresh: true };
      case "failed":
        return steadinessRules.failed(answer, defectWords(message.reason));
      default:
        return answer;
    }
  },
};
