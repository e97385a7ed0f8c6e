import { describe, expect, test } from "vitest";
import type { FlightResult } from "../flight/result.js";
import { cutShort, flownOpening, flownOutcome } from "./flown-opening.js";
import type { FoundEvent, FoundEvents } from "./found-events.js";

const found = (time: number, height = 0): FoundEvent => ({
  time,
  timeError: 0.05,
  height,
  heightError: 1,
  reason: "height-stops-changing",
});
const events = (given: Partial<FoundEvents>): FoundEvents => ({
  liftOff: found(1),
  guideExit: null,
  burnout: found(3),
  apogee: found(12, 600),
  opening: null,
  main: null,
  landing: found(110),
  ...given,
});
/** A flight whose airspeed is 20 m/s plus its time from ignition. */
const flight = {
  events: { liftOff: { time: 0.1 }, apogee: { time: 11 } },
  at: (time: number) => ({ airspeed: 20 + time }),
} as unknown as FlightResult;
const limits = { openingSpeed: 20, openingHeight: 100 };

describe("flownOpening()", () => {
  test("reads the flight's airspeed as long after lift-off as the record has its opening", () => {
    // 13 s on the record's clock are 12 s after its lift-off, 12.1 s after ignition
    expect(flownOpening(events({ opening: found(13, 590) }), flight)).toEqual({
      airspeed: 32.1,
      height: 590,
      fromTop: 1,
    });
  });

  test("counts from the top that the flight would have had where it opened before the recorded one", () => {
    const early = flownOpening(events({ opening: found(10, 580) }), flight);
    expect(early?.fromTop).toBeCloseTo(9.1 - 11, 12);
  });

  test("is null without an opening, a lift-off or a top", () => {
    expect(flownOpening(events({}), flight)).toBeNull();
    expect(flownOpening(events({ liftOff: null, opening: found(13) }), flight)).toBeNull();
    const topless = { ...flight, events: { ...flight.events, apogee: null } } as FlightResult;
    expect(flownOpening(events({ opening: found(13) }), topless)).toBeNull();
  });
});

test("cutShort() is true only where the opening is plainly before the top", () => {
  expect(cutShort(events({ opening: found(11.69) }))).toBe(true);
  expect(cutShort(events({ opening: found(11.8) }))).toBe(false);
  expect(cutShort(events({}))).toBe(false);
});

describe("flownOutcome()", () => {
  const opened = (airspeed: number, height: number) => ({ airspeed, height, fromTop: 0 });
  test.each([
    ["clean", 20, 100],
    ["fast", 20.1, 100],
    ["low", 30, 99.9],
  ] as const)("is %s at %d m/s and %d m", (outcome, speed, height) => {
    expect(flownOutcome(events({ opening: found(13) }), opened(speed, height), limits)).toBe(outcome);
  });

  test("is grounded where it landed and nothing opened, unknown where the record ends before", () => {
    expect(flownOutcome(events({}), null, limits)).toBe("grounded");
    expect(flownOutcome(events({ landing: { ...found(20), reason: "record-ends" } }), null, limits)).toBeNull();
    expect(flownOutcome(events({ landing: null }), null, limits)).toBeNull();
    expect(flownOutcome(events({ opening: found(13), liftOff: null }), null, limits)).toBeNull();
  });
});
