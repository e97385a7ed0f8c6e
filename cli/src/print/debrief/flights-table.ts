import {
  amountParts,
  type DebriefData,
  decimals,
  delayNumber,
  factorCell,
  flownOutcomeWords,
  type PastFlightData,
  percentCell,
  type UnitSystem,
  untaughtWords,
} from "@delaywright/documents";
import { table } from "../table.js";

const NONE = "-";

/** Names longer than this are cut in a table. */
const LONGEST = 28;

function delayCell({ delay }: PastFlightData): string {
  if (delay.kind === "unknown") return NONE;
  const bound = { seen: "", "at-least": ">=", "at-most": "<=" }[delay.kind];
  return `${bound}${decimals(delay.delay, 1)}`;
}

/** What a flight does not teach here; empty: it teaches all. */
function untaughtCell({ untaught, excluded }: PastFlightData): string {
  if (excluded !== null) return `left out: ${excluded}`;
  return untaught.map((code) => untaughtWords(code).replace(/, since .*/, "")).join("; ");
}

/** Every flight of the library with what it was given, what came, and what it teaches; null where this is the only one. */
export function flightsTable({ past }: DebriefData, units: UnitSystem): string | null {
  if (past.length < 2) return null;
  const rows = past.map((flight) => [
    `${flight.isThis ? "> " : "  "}${short(flight.name, LONGEST)}`,
    flight.set === null ? NONE : delayNumber(flight.set),
    delayCell(flight),
    flight.top === null ? NONE : amountParts(flight.top, "distance", units).figure,
    flight.drag === null ? NONE : factorCell(flight.drag),
    flight.odds === null ? NONE : percentCell(flight.odds),
    flownOutcomeWords(flight.outcome),
    short(untaughtCell(flight), LONGEST),
  ]);
  return table(
    [
      { head: "  flight", align: "left" },
      { head: "set\ns" },
      { head: "burnt\ns" },
      { head: `top\n${units === "metric" ? "m" : "ft"}` },
      { head: "drag" },
      { head: "given\n%" },
      { head: "came in", align: "left" },
      { head: "", align: "left" },
    ],
    rows,
  );
}

function short(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 3)}...` : text;
}
