import type { PrepLine } from "@delaywright/documents";
import type { PrepPhase, PrepState } from "@delaywright/engine";
import { timeOfDay } from "../standing/day.js";
import type { Prep } from "./use-prep.js";

/** Initials and time of a signature, in the device's own time: `AB 10:12`. */
export function signedWords({ by, when }: NonNullable<PrepLine["signed"]>): string {
  const time = new Date(when);
  return Number.isNaN(time.getTime()) ? by : `${by} ${timeOfDay(time)}`;
}

/** How far a sheet has come: `12 of 32 signed`, `flown`. */
export function progressWords({ steps, flown, next }: Pick<PrepState, "steps" | "flown" | "next">): string {
  if (flown && next === null) return "flown, and all signed";
  const signed = steps.filter(({ status }) => status === "signed").length;
  return `${signed} of ${steps.length} signed${flown ? ", flown" : ""}`;
}

/** How far the prep of a plan has come: `not begun`, `12 of 32 signed`. */
export function prepWords({ flight, data }: Pick<Prep, "flight" | "data">): string {
  return flight === null ? "not begun" : progressWords(data.state);
}

/** Seconds that must still pass before a step can be signed; 0: none. */
export function secondsLeft(notBefore: number | null, now: Date): number {
  return notBefore === null ? 0 : Math.max(0, Math.ceil(notBefore - now.getTime() / 1000));
}

/** The lines of each phase that has any, in their order. */
export function byPhase(lines: readonly PrepLine[]): readonly (readonly [PrepPhase, readonly PrepLine[]])[] {
  const groups: [PrepPhase, PrepLine[]][] = [];
  for (const line of lines) {
    const last = groups.at(-1);
    if (last?.[0] === line.phase) last[1].push(line);
    else groups.push([line.phase, [line]]);
  }
  return groups;
}
