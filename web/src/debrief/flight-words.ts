import { type FlightDocument, flownOutcomeWords, type Raw } from "@delaywright/documents";

type Said = Partial<Pick<FlightDocument, "flown" | "findings" | "excluded">>;

/** How far the debrief of a flight has come: `clean, top 612 m`, `left out`, `not debriefed yet`. */
export function debriefWords(flight: Raw): string {
  const { findings, excluded } = flight as unknown as Said;
  if (excluded !== undefined) return "left out";
  const told = [
    ...(findings?.outcome === undefined ? [] : [flownOutcomeWords(findings.outcome)]),
    ...(findings?.apogee === undefined ? [] : [`top ${findings.apogee}`]),
  ];
  return told.length === 0 ? "not debriefed yet" : told.join(", ");
}

/** A flight among others: its day where it has one, and how it went. */
export function flightWords(flight: Raw, name: string): string {
  const { flown } = flight as unknown as Said;
  const day = typeof flown === "string" ? flown.slice(0, 10) : null;
  return [name, ...(day === null ? [] : [day]), debriefWords(flight)].join(", ");
}
