import type { Ask } from "../protocol.js";
import type { Task } from "./task.js";

/** What the desk works on; `pictures` follow a plan's answer. */
export type WorkKind = Ask | "pictures";

/** One piece of work that waits or is under way. */
export interface Work {
  readonly kind: WorkKind;
  readonly job: number;
  readonly plan: string;
  /** Does the work; throws `Dropped` once its task is dropped. */
  readonly run: (task: Task) => Promise<void>;
}

/** What is done first: what somebody looks at and waits for. */
const ranks: Readonly<Record<WorkKind, number>> = {
  plan: 0,
  steadiness: 1,
  window: 2,
  pictures: 3,
  shortlist: 4,
  brief: 5,
};

/** Is the first more urgent? */
export function goesBefore(a: Work, b: Work): boolean {
  return ranks[a.kind] < ranks[b.kind];
}

/** Takes the most urgent piece out of those that wait, the longest waiting among equals. */
export function takeNext(waiting: Work[]): Work | undefined {
  let best = 0;
  for (let i = 1; i < waiting.length; i++) if (goesBefore(waiting[i]!, waiting[best]!)) best = i;
  return waiting.splice(best, 1)[0];
}
