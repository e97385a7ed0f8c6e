import { expect, test } from "vitest";
import { flownDelay } from "./flown-delay.js";
import type { FoundEvent, FoundEvents } from "./found-events.js";

const event = (time: number, timeError = 0.03): FoundEvent => ({
  time,
  timeError,
  height: 0,
  heightError: 1,
  reason: "descent-slows",
});
const events: FoundEvents = {
  liftOff: event(0.1, 0.02),
  guideExit: null,
  burnout: event(1.8, 0.03),
  apogee: event(12),
  opening: event(12.7, 0.04),
  main: null,
  landing: event(90),
};
const how = { clock: "burnout", nominalBurnEnd: 1.7, lineStretch: 0.5, motorCharge: "primary" } as const;

test("flownDelay() is the opening less line stretch and burnout, their errors together", () => {
  const delay = flownDelay(events, how);
  expect(delay).toMatchObject({ kind: "seen" });
  if (delay.kind !== "seen") return;
  expect(delay.delay).toBeCloseTo(12.7 - 0.5 - 1.8, 12);
  expect(delay.error).toBeCloseTo(0.05, 12);
});

test("flownDelay() of an ignition clock counts from the nominal burn time, whatever burnout was found", () => {
  const delay = flownDelay({ ...events, burnout: null }, { ...how, clock: "ignition", nominalLiftOff: 0.04 });
  expect(delay).toMatchObject({ kind: "seen", delay: expect.closeTo(12.7 - 0.5 - (0.1 - 0.04 + 1.7), 12) as number });
});

test("flownDelay() is a bound where electronics opened first, and where nothing opened", () => {
  expect(flownDelay(events, { ...how, motorCharge: "backup" })).toEqual({
    kind: "at-least",
    delay: expect.closeTo(10.4, 12) as number,
  });
  // the electronics has failed: two seconds after the top it is the motor's charge
  expect(flownDelay({ ...events, opening: event(15) }, { ...how, motorCharge: "backup" })).toMatchObject({
    kind: "seen",
  });
  expect(flownDelay({ ...events, opening: null }, how)).toEqual({
    kind: "at-least",
    delay: expect.closeTo(87.7, 12) as number,
  });
});

test("flownDelay() is not known without burnout, or without opening and landing", () => {
  expect(flownDelay({ ...events, burnout: null }, how)).toEqual({ kind: "unknown" });
  expect(flownDelay({ ...events, opening: null, landing: null }, how)).toEqual({ kind: "unknown" });
});
