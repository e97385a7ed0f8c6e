import type { ShortlistData, UnitSystem } from "@delaywright/documents";
import { shortlistHead } from "@delaywright/documents";

/** How far the shortlist has come, in words. */
export interface Standing {
  readonly state: "waiting" | "ready" | "wrong" | "failed";
  readonly data: ShortlistData | null;
  /** Motors that can be judged, and how many of them are. */
  readonly of: number;
  readonly done: number;
}

/** What the page says first. */
export function standingWords({ state, data, of, done }: Standing, units: UnitSystem): string {
  if (state === "wrong") return "The plan has to be right first, whatever its motor: what it still needs stands below.";
  if (data === null) return "Looking through the motor types …";
  if (of + data.unjudged.length === 0) return "There is no motor type on this bench yet.";
  if (state === "waiting") {
    const left = data.ranked.length;
    return `Judging for ${data.context.rocket}: ${done} of ${of} motors, ${left} ${left === 1 ? "is" : "are"} not refused so far.`;
  }
  return shortlistHead(data, units);
}

/** On what the rows rest, and what is still to be done with the one that is taken. */
export function basisWords({ draws, seed }: Pick<ShortlistData, "draws" | "seed">): string {
  return `${draws} flights drawn for each motor, seed ${seed}: enough to tell motors apart. The plan's own sheet flies many more for the one that you take, says how its delay is cut, and holds it against all rules, landing energy and those of flyer, field and day among them.`;
}
