import { type PrepData, type PrepLine, prepData, prepEvents, prepLines, type UnitSystem } from "@delaywright/documents";
import { useMemo } from "react";
import type { PlanAnswer } from "../compute/index.js";
import { useEntries } from "../store/index.js";
import { flightsOf, type OpenFlight } from "./flights.js";
import { usePrepBrief } from "./use-prep-brief.js";

/** A plan's prep sheet with what was signed on it. */
export interface Prep {
  /** The newest flight of the plan; null: none was begun. */
  readonly flight: OpenFlight | null;
  readonly data: PrepData;
  /** Why nothing can be signed just now; null: it can. Nothing is signed by an answer that is not that of the plan as it stands. */
  readonly waiting: string | null;
}

/** Why nothing can be signed while new odds are flown. */
export const planChanged = "The plan has changed: the sheet follows in a moment.";

type Asked = Pick<PlanAnswer, "told" | "fresh" | "settling" | "issues">;

/**
 * A plan's prep sheet, kept up to date; null until there is an answer.
 *
 * @param path of the plan
 * @param answer to it
 */
export function usePrep(path: string, answer: Asked): Prep | null {
  const known = usePrepBrief(path, answer);
  const entries = useEntries("flight");
  const flight = useMemo(() => flightsOf(path, entries)[0] ?? null, [path, entries]);
  const brief = known?.brief;
  const data = useMemo(
    () => (brief === undefined ? null : prepData(brief, flight === null ? [] : prepEvents(flight.raw))),
    [brief, flight],
  );
  if (known === null || data === null) return null;
  return { flight, data, waiting: waitingWords(known.current, answer) };
}

function waitingWords(current: boolean, { issues }: Asked): string | null {
  if (issues.length > 0) return "A field of the plan is wrong: nothing can be signed until it is mended.";
  return current ? null : planChanged;
}

/** The first step that can be signed, of a flight that was begun; null: there is none. */
export function nextLine({ flight, data }: Prep, units: UnitSystem): PrepLine | null {
  if (flight === null || data.state.next === null) return null;
  return prepLines(data, units).find(({ id }) => id === data.state.next) ?? null;
}
