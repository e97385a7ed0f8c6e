import { cardDocument } from "../card/card-document.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { given } from "../kinds/si.js";
import type { PlanParts } from "../load-plan.js";
import type { LogMapping } from "../log/log-types.js";
import type { Raw } from "../migrate.js";
import type { WrittenFindings } from "./findings.js";

/** A record as a flight's document names it. */
export interface RecordNamed {
  /** Path of the CSV file, relative to the flight's own. */
  readonly source: string;
  readonly columns: LogMapping;
  /** By which the mapping is remembered; empty: there are none. */
  readonly headings: string;
  /** Which flight of the record, from 1. */
  readonly number: number;
}

/**
 * A new flight of a plan, the plan as flown inside it: what is later changed in the plan's files changes no flight.
 *
 * @example
 * flightOfPlan("Third flight", parts).kind; // "flight"
 */
export function flightOfPlan(name: string, parts: PlanParts): Raw {
  return { kind: "flight", version: 1, name, plan: cardDocument(parts) };
}

/** A flight's document with what a debrief found; all else in it stays as it is. */
export function debriefedFlight(
  flight: Raw,
  {
    findings,
    forecast,
    record,
    excluded,
  }: {
    readonly findings: WrittenFindings;
    readonly forecast: FlightDocument["forecast"];
    readonly record?: RecordNamed;
    readonly excluded?: FlightDocument["excluded"];
  },
): Raw {
  return {
    ...flight,
    ...(record === undefined ? {} : recordIn(flight, record)),
    ...given("forecast", forecast),
    findings,
    ...given("excluded", excluded),
  };
}

/** A record that the flight already has in a document of its own stays there. */
function recordIn(flight: Raw, { source, columns, headings, number }: RecordNamed): Raw {
  const log = { kind: "log", version: 1, name: source, source, columns, ...given("headings", headings || undefined) };
  return { log: typeof flight["log"] === "string" ? flight["log"] : log, logFlight: number };
}
