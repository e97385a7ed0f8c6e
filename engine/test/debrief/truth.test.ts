import { expect, test } from "vitest";
import { findEvents, flightRecord, flightsIn, type LogSamples } from "../../src/index.js";
import { type LogClass, syntheticLog } from "./synthetic-log.js";
import { type EventMiss, figuresOf, missesOf, NINETY, promised, studied } from "./truth-study.js";

/** Flights a class; the whole study of 500 is `node scripts/debrief-truth/run.mjs`. */
const flights = 40;
/** Seeds that the study does not use. */
const first = 9001;
const names = ["liftOff", "burnout", "apogee", "opening", "landing"] as const;

/** Least number of hits among n that a chance of 0.9 gives, but once in a thousand: normal approximation of the binomial. */
const leastOfNinety = (n: number): number => 0.9 * n - 3.09 * Math.sqrt(n * 0.9 * 0.1);

const misses: Readonly<Record<LogClass, EventMiss[]>> = {
  clean: studied("clean", first, flights),
  rough: studied("rough", first, flights),
};

for (const kind of ["clean", "rough"] as const)
  test(`findEvents() on ${kind} records keeps to ${promised[kind]} s, without bias, its 90 % intervals hold`, () => {
    for (const name of names) {
      const figures = figuresOf(name, misses[kind], promised[kind]);
      expect([name, figures.found]).toEqual([name, 1]);
      // one of 40 may miss: 99 % promised
      expect([name, figures.within >= 1 - 1 / flights]).toEqual([name, true]);
      // within chance of a mean, or a hundredth of a second
      expect([name, Math.abs(figures.bias) < Math.max(0.01, 3.3 * figures.biasError)]).toEqual([name, true]);
      expect([name, figures.coverage * flights >= leastOfNinety(flights)]).toEqual([name, true]);
    }
  });

test("the check of the intervals can fail: a third of the stated error covers too seldom", () => {
  const small = misses.rough.filter((m) => m.name === "apogee");
  const held = small.filter((m) => Math.abs(m.miss!) <= (NINETY * m.sigma) / 3).length;
  expect(held).toBeLessThan(leastOfNinety(small.length));
});

/** A record with a good accelerometer. */
const seed = 9002;
const pushed = syntheticLog(seed, "clean", {
  accelerometer: { scale: 1, offset: 0, noise: 0.2, most: 400, sign: 1, withGravity: true, jolt: 60, lag: 0.004 },
});
const eventsOf = (samples: LogSamples) => {
  const record = flightRecord(samples, flightsIn(samples)[0]!, pushed.flight.planned.air);
  return { record, events: findEvents(record, pushed.hints) };
};

test("an accelerometer with the other sign, at 0 or at 1 g at rest, gives the same events", () => {
  const plain = eventsOf(pushed.samples);
  expect(plain.events.burnout?.reason).toBe("acceleration-falls-through-zero");
  const { acceleration } = pushed.samples;
  for (const turned of [acceleration!.map((a) => -a), acceleration!.map((a) => a - 9.80665)]) {
    const { events } = eventsOf({ ...pushed.samples, acceleration: turned });
    for (const name of names) expect(events[name]!.time).toBeCloseTo(plain.events[name]!.time, 3);
  }
});

test("a column of another axis is not taken for the boost's", () => {
  const across = pushed.samples.acceleration!.map((_, i) => 0.4 * Math.sin(i * i));
  const { record, events } = eventsOf({ ...pushed.samples, acceleration: across });
  expect(record.acceleration).toBeNull();
  expect(events.burnout?.reason).toBe("speed-highest");
  expect(Math.abs(events.burnout!.time + record.zero - pushed.truth.burnout)).toBeLessThan(0.1);
});

test("acceleration alone tells lift-off, burnout and, within its wide error, the top", () => {
  const { time, acceleration, marks } = pushed.samples;
  const { record, events } = eventsOf({ time, acceleration: acceleration!, marks });
  expect(Math.abs(events.liftOff!.time + record.zero - pushed.truth.liftOff)).toBeLessThan(0.1);
  expect(Math.abs(events.burnout!.time + record.zero - pushed.truth.burnout)).toBeLessThan(0.1);
  expect(Math.abs(events.apogee!.time + record.zero - pushed.truth.apogee)).toBeLessThan(3 * events.apogee!.timeError);
  expect(events.apogee!.timeError).toBeGreaterThan(0.2);
});

test("fewer samples a second cost what the stated errors say", () => {
  const errors = [5, 10, 50].map((rate) => {
    const log = syntheticLog(seed, "clean", { rate });
    for (const miss of missesOf(log, seed).filter((m) => m.name !== "main"))
      expect([miss.name, Math.abs(miss.miss!) < 3.5 * miss.sigma]).toEqual([miss.name, true]);
    const record = flightRecord(log.samples, flightsIn(log.samples)[0]!);
    return findEvents(record, log.hints).opening!.timeError;
  });
  expect(errors[0]!).toBeGreaterThan(errors[1]!);
  expect(errors[1]!).toBeGreaterThan(errors[2]!);
});

test("a record that breaks off under the canopy keeps what came before; the landing is carried on or left out", () => {
  const { samples, truth } = pushed;
  const until = (seconds: number): LogSamples => {
    const n = samples.time.findIndex((t) => t > truth.landing - seconds);
    const cut = (c: Float64Array | undefined) => (c === undefined ? {} : c.slice(0, n));
    return {
      time: samples.time.slice(0, n),
      ...(samples.height ? { height: cut(samples.height) as Float64Array } : {}),
      ...(samples.pressure ? { pressure: cut(samples.pressure) as Float64Array } : {}),
      marks: [],
    };
  };
  const soon = eventsOf(until(5));
  expect(soon.events.landing?.reason).toBe("record-ends");
  expect(Math.abs(soon.events.landing!.time + soon.record.zero - truth.landing)).toBeLessThan(
    3 * soon.events.landing!.timeError,
  );
  const early = eventsOf(until(40));
  expect(early.events.landing).toBeNull();
  expect(Math.abs(early.events.apogee!.time + early.record.zero - truth.apogee)).toBeLessThan(0.15);
});
