import type { Learned } from "@delaywright/engine";
import type { DebriefNote } from "../answer/debrief-data.js";
import type { Flown } from "./flown.js";
import type { OpenedRecord } from "./open-record.js";

/** What the notes are drawn from. */
export interface NotedParts {
  readonly opened: OpenedRecord | null;
  readonly flown: Flown;
  /** What the plan itself reckons with; left out: nothing. */
  readonly planLearned: Learned | undefined;
  /** What the flights that were given teach without this one. */
  readonly before: Learned;
}

/** What to know of how a flight was read. */
export function notesOf({ opened, flown, planLearned, before }: NotedParts): DebriefNote[] {
  const known = before.flights.rocket + before.flights.motor;
  const reckoned = planLearned === undefined ? 0 : planLearned.flights.rocket + planLearned.flights.motor;
  return [
    ...(opened !== null && opened.spans.length > 1 ? (["several-flights"] as const) : []),
    ...(flown.cutShort ? (["opened-before-top"] as const) : []),
    ...(flown.climb === null ? (["climb-not-fitted"] as const) : []),
    ...(flown.findings.outcomeStated ? (["outcome-stated"] as const) : []),
    ...(flown.record === null ? (["findings-only"] as const) : []),
    ...(reckoned > known ? (["plan-learned-more"] as const) : []),
  ];
}
