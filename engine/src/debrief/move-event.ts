import type { FlightRecord } from "./flight-record.js";
import { type EventName, eventNames, type FoundEvents } from "./found-events.js";
import { interpolated } from "./interpolated.js";

/**
 * Puts one event where the flyer says; its height is read off the record there.
 *
 * @param time on the record's clock [s], within the record and between the events before and after
 * @returns the events with that one moved; its error is half a sample's spacing
 * @throws RangeError outside the record or out of order: the message names the limits
 * @example
 * moveEvent(record, events, "burnout", 1.72).burnout?.reason; // "moved-by-flyer"
 */
export function moveEvent(record: FlightRecord, events: FoundEvents, name: EventName, time: number): FoundEvents {
  const [earliest, latest] = movableRange(record, events, name);
  if (!(time >= earliest && time <= latest))
    throw new RangeError(`${name} at ${time} s: must be ${earliest}…${latest} s, between its neighbours`);
  return {
    ...events,
    [name]: {
      time,
      timeError: 0.5 / record.rate,
      height: interpolated(record.time, record.height, time),
      heightError: record.heightError,
      reason: "moved-by-flyer",
    },
  };
}

/**
 * Where an event may be moved: between the events found before and after it, inside the record [s].
 *
 * An apogee and an opening may change places: a charge fires before the top or after it.
 *
 * @example
 * movableRange(record, events, "burnout"); // [0.2, 9.6]
 */
export function movableRange(record: FlightRecord, events: FoundEvents, name: EventName): readonly [number, number] {
  const { time } = record;
  let earliest = time[0]!;
  let latest = time[time.length - 1]!;
  const place = eventNames.indexOf(name);
  eventNames.forEach((other, i) => {
    const at = events[other]?.time;
    if (at === undefined || i === place || freeOrder(name, other)) return;
    if (i < place) earliest = Math.max(earliest, at);
    else latest = Math.min(latest, at);
  });
  return [earliest, latest];
}

const freeOrder = (a: EventName, b: EventName): boolean =>
  (a === "apogee" && b === "opening") || (a === "opening" && b === "apogee");
