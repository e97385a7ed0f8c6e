import { expect, test } from "vitest";
import { syntheticLog } from "../../test/debrief/synthetic-log.js";
import { findEvents, flightRecord, flightsIn, movableRange, moveEvent } from "../index.js";

const log = syntheticLog(7, "clean");
const record = flightRecord(log.samples, flightsIn(log.samples)[0]!);
const events = findEvents(record, log.hints);

test("moveEvent() puts an event where it is told, with the height there, and leaves the others", () => {
  const time = events.apogee!.time + 0.3;
  const moved = moveEvent(record, events, "apogee", time);
  expect(moved.apogee).toMatchObject({ time, reason: "moved-by-flyer" });
  const row = record.time.findIndex((t) => t >= time);
  expect(Math.abs(moved.apogee!.height - record.height[row]!)).toBeLessThan(1);
  expect({ ...moved, apogee: null }).toEqual({ ...events, apogee: null });
});

test("moveEvent() keeps the order of a flight, and the record's ends", () => {
  for (const [name, time] of [
    ["burnout", events.apogee!.time + 0.1],
    ["liftOff", events.burnout!.time + 0.1],
    ["landing", events.opening!.time - 0.1],
    ["landing", record.time.at(-1)! + 1],
    ["liftOff", record.time[0]! - 1],
    ["apogee", Number.NaN],
  ] as const)
    expect(() => moveEvent(record, events, name, time)).toThrow(RangeError);
});

test("movableRange() lets an opening lie before the top or after it", () => {
  expect(movableRange(record, events, "opening")[0]).toBe(events.burnout!.time);
  expect(movableRange(record, events, "apogee")[1]).toBe((events.main ?? events.landing)!.time);
});
