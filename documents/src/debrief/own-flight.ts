import type { FlightDocument } from "../kinds/flight/schema.js";
import type { DebriefInputs } from "./debrief-inputs.js";
import type { WrittenFindings } from "./findings.js";
import { type PastFlight, pastFlight } from "./past-flight.js";
import { learnerOf } from "./teach.js";

/** The flight of now as one of the library. */
export function asPast(
  { flown, flight, file }: DebriefInputs,
  findings: WrittenFindings,
  forecast: FlightDocument["forecast"],
): PastFlight {
  const { rocket, motor, lot, drag } = learnerOf(flown);
  const document = { ...flight, findings, ...(forecast === undefined ? {} : { forecast }) };
  return pastFlight({ file, document, rocket, motor, lot, drag });
}
