import { expect, test } from "vitest";
import { plan } from "../../test/plan.js";
import { descend } from "../flight/descent.js";
import { fly } from "../flight/fly.js";
import { againstFlight } from "./against-flight.js";
import type { FlightRecord } from "./flight-record.js";
import type { EventName, FoundEvent, FoundEvents } from "./found-events.js";

const flight = fly(plan, { tolerance: 1e-6 });
const { liftOff, burnout, apogee } = flight.events;
const opensAt = burnout!.time + 12.5;
const opened = descend(flight.model, flight.at(opensAt), 1e-6);
const shift = 0.3 - liftOff!.time;

const time = Float64Array.from({ length: 2000 }, (_, i) => i * 0.05 - 2);
const record: FlightRecord = {
  time,
  height: time.map((t) => (t < 0.3 ? 0 : flight.at(t - shift).position[2] + 2)),
  speed: new Float64Array(time.length),
  acceleration: null,
  heightError: 0.3,
  accelerationError: null,
  rate: 20,
  flaws: [],
  zero: 0,
  marks: [],
};
const found = (at: number, height: number, timeError = 0.03): FoundEvent => ({
  time: at,
  timeError,
  height,
  heightError: 1,
  reason: "height-highest",
});
const events: FoundEvents = {
  liftOff: found(0.3, 0),
  guideExit: null,
  burnout: found(burnout!.time + shift + 0.5, burnout!.position[2]),
  apogee: found(apogee!.time + shift, apogee!.position[2] + 60),
  opening: found(opensAt + shift + 0.9, 700),
  main: null,
  landing: found(opened.landing!.time + shift - 8, 0),
};

test("againstFlight() lays the clocks together at lift-off, and says what each difference means", () => {
  const { events: rows } = againstFlight(flight, record, events, { opened, byDelay: true });
  const meaning = Object.fromEntries(rows.map((row) => [row.name, row.meaning])) as Record<EventName, string>;
  expect(meaning).toEqual({
    liftOff: "starts-clock",
    guideExit: "not-found",
    burnout: "burnt-longer",
    apogee: "top-higher",
    opening: "delay-longer",
    main: "not-found",
    landing: "down-early",
  });
  const top = rows.find(({ name }) => name === "apogee")!;
  expect(top.difference).toBeCloseTo(0, 9);
  expect(top.heightDifference).toBeCloseTo(60, 9);
  expect(rows.find(({ name }) => name === "opening")!.differenceError).toBeCloseTo(Math.hypot(0.03, 0.03), 12);
});

test("againstFlight() calls small differences as predicted, and an opening by electronics early or late", () => {
  const close = { ...events, apogee: found(apogee!.time + shift + 0.05, apogee!.position[2] + 3) };
  const rows = againstFlight(flight, record, close, { opened, byDelay: false }).events;
  expect(rows.find(({ name }) => name === "apogee")!.meaning).toBe("as-predicted");
  expect(rows.find(({ name }) => name === "opening")!.meaning).toBe("opened-late");
  const alone = againstFlight(flight, record, close).events;
  expect(alone.find(({ name }) => name === "opening")!.meaning).toBe("not-predicted");
});

test("againstFlight() leaves what the heights differ by, up to the opening", () => {
  const { residual } = againstFlight(flight, record, events, { opened, byDelay: true });
  expect(residual.time.length).toBeGreaterThan(100);
  expect(residual.time[0]).toBeGreaterThanOrEqual(0.3);
  expect(residual.time.at(-1)).toBeLessThan(events.opening!.time);
  for (const height of residual.height) expect(height).toBeCloseTo(2, 9);
});
