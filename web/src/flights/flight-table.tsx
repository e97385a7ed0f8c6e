import {
  amountIn,
  delayWords,
  flownDelayWords,
  flownOutcomeWords,
  percent,
  type UnitSystem,
  untaughtWords,
} from "@delaywright/documents";
import { addressOf } from "../app/router.js";
import type { Entry } from "../store/index.js";
import type { PastFlight } from "./trends.js";

export interface FlightTableProps {
  readonly past: readonly PastFlight[];
  readonly entries: readonly Entry[];
  readonly units: UnitSystem;
}

/** All flights, a line each: where and when, how high, what the delay did, how it came in. */
export function FlightTable({ past, entries, units }: FlightTableProps) {
  return (
    <table className="flights-table">
      <caption className="hidden">All flights, the newest first</caption>
      <thead>
        <tr>
          {["flight", "rocket and motor", "top", "delay set", "flown", "odds given", "came in"].map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {past.map((flight) => (
          <FlightRow
            key={flight.file}
            flight={flight}
            entry={entries.find(({ path }) => path === flight.file)}
            units={units}
          />
        ))}
      </tbody>
    </table>
  );
}

interface FlightRowProps {
  readonly flight: PastFlight;
  readonly entry: Entry | undefined;
  readonly units: UnitSystem;
}

function FlightRow({ flight, entry, units }: FlightRowProps) {
  const { name, flown, rocket, motor, lot, top, topBand, set, delay, odds, outcome, excluded, untaught, file } = flight;
  const plan = [entry?.raw?.["planFile"], entry?.raw?.["plan"]].find((path) => typeof path === "string");
  const height = (metres: number): string => amountIn(metres, "distance", units);
  const at =
    plan === undefined
      ? addressOf({ page: "document", shelf: "flights", path: file })
      : addressOf({ page: "plan", path: plan });
  const inside = top === null || topBand === null ? null : top >= topBand[0] && top <= topBand[1];
  return (
    <tr className={excluded === null ? "" : "out"}>
      <th scope="row">
        <a href={at}>{name}</a>
        <small>{flown === null ? "day not written down" : flown.slice(0, 10)}</small>
      </th>
      <td data-label="rocket and motor">
        {rocket ?? "not read"}
        <small>{[motor ?? "not read", ...(lot === null ? [] : [`lot ${lot}`])].join(", ")}</small>
      </td>
      <td data-label="top">
        {top === null ? "–" : height(top)}
        {inside !== null && <small>{inside ? "in its band" : "outside its band"}</small>}
      </td>
      <td data-label="delay set">{set === null ? "–" : delayWords(set)}</td>
      <td data-label="flown">{delay.kind === "unknown" ? "–" : flownDelayWords(delay)}</td>
      <td data-label="odds given">{odds === null ? "–" : percent(odds)}</td>
      <td data-label="came in">
        {flownOutcomeWords(outcome)}
        {excluded !== null && <small>left out: {excluded}</small>}
        {excluded === null && untaught.length > 0 && <small>{untaught.map(untaughtWords).join("; ")}</small>}
      </td>
    </tr>
  );
}
