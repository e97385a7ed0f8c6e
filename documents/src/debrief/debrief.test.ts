import type { DecisionInputs } from "@delaywright/engine";
import { beforeAll, describe, expect, test } from "vitest";
import { demoFiles } from "../../test/fixtures.js";
import { type FlightTruth, flownSamples } from "../../test/flown-samples.js";
import type { FlightDocument } from "../kinds/flight/schema.js";
import { loadPlan, type PlanParts } from "../load-plan.js";
import { readValue } from "../read.js";
import { planToEngine } from "../to-engine.js";
import { type Debriefed, debrief } from "./debrief.js";
import type { DebriefInputs } from "./debrief-inputs.js";
import { debriefedFlight, flightOfPlan } from "./flight-document.js";
import { type PastFlight, pastFlight } from "./past-flight.js";
import { learnerOf } from "./teach.js";

const truth: FlightTruth = { drag: 1.1, impulse: 0.98, delay: 9.6, seed: 5 };
const few = { draws: 64, seed: 1 };

let parts: PlanParts;
let inputs: DecisionInputs;
let flight: FlightDocument;
let one: Extract<Debriefed, { ok: true }>;

async function planned(changed: Readonly<Record<string, unknown>> = {}): Promise<PlanParts> {
  const loaded = await loadPlan("plan.json", demoFiles(changed));
  if (loaded.parts === undefined) throw new Error(JSON.stringify(loaded.issues));
  return loaded.parts;
}

async function debriefed(given: Partial<DebriefInputs> = {}): Promise<Extract<Debriefed, { ok: true }>> {
  const made = await debrief({ flown: parts, flight, file: "flight.json", past: [], ...given }, few);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  return made;
}

const record = (of: FlightTruth = truth) => ({ file: "log.csv", samples: flownSamples(inputs, of) });

function asPast({ findings, forecast }: typeof one, name: string): PastFlight {
  const { rocket, motor, lot, drag } = learnerOf(parts);
  const document = { ...flight, name, findings, ...(forecast === undefined ? {} : { forecast }) };
  return pastFlight({ file: `${name}.json`, document, rocket, motor, lot, drag });
}

beforeAll(async () => {
  parts = await planned();
  const made = planToEngine(parts);
  if (!made.ok) throw new Error(JSON.stringify(made.issues));
  inputs = made.inputs;
  flight = flightOfPlan("First", parts) as FlightDocument;
  one = await debriefed({ record: record(), set: 9 });
}, 60_000);

describe("debrief() of a record whose truth is known", () => {
  test("finds drag, impulse and delay within three of their sigmas", () => {
    const { climb, delay } = one.data;
    expect(Math.abs(Math.log((climb?.drag?.factor ?? 0) / truth.drag))).toBeLessThan(3 * (climb?.drag?.sd ?? 0));
    expect(Math.abs(Math.log((climb?.impulse?.factor ?? 0) / truth.impulse))).toBeLessThan(
      3 * (climb?.impulse?.sd ?? 0),
    );
    expect(climb?.drag?.sd).toBeLessThan(0.06);
    if (delay.flown.kind !== "seen") throw new Error(delay.flown.kind);
    expect(Math.abs(delay.flown.delay - (truth.delay ?? 0))).toBeLessThan(3 * delay.flown.error);
    expect(delay.flown.error).toBeLessThan(0.5);
  });

  test("says what that means: a lower top, a longer delay, a clean opening", () => {
    const meanings = Object.fromEntries(one.data.events.map(({ name, meaning }) => [name, meaning]));
    expect(meanings).toMatchObject({ liftOff: "starts-clock", apogee: "top-lower", main: "not-found" });
    expect(one.data.findings).toMatchObject({ outcome: "clean", outcomeStated: false, openedBy: "motor", set: 9 });
    expect(one.data.events[0]).toMatchObject({ name: "liftOff", flown: { time: 0, movedFrom: null } });
  });

  test("is plain data: nothing is lost through JSON or a structured clone", () => {
    expect(JSON.parse(JSON.stringify(one.data))).toEqual(one.data);
    expect(structuredClone(one.data)).toEqual(one.data);
  });

  test("narrows what is reckoned, and the next top with it", () => {
    const { prior, before, after, untaught } = one.data.learned;
    expect(untaught).toEqual([]);
    // the plan's own spread stands until a flight has taught
    expect(prior.drag).toMatchObject({ factor: 1, sd: inputs.spread.dragScale });
    expect(before).toEqual(prior);
    expect(after.drag.sd).toBeLessThan(prior.drag.sd);
    expect(after.drag.factor).toBeGreaterThan(1);
    expect(after.flights).toEqual({ rocket: 1, motor: 1, both: 1 });
    expect(after.delay?.mean).toBeGreaterThan(9);
    const width = ({ p05, p95 }: { readonly p05: number; readonly p95: number }) => p95 - p05;
    const { next } = one.data;
    expect(width(next.after.apogee)).toBeLessThan(width(next.before.apogee));
  });

  test("writes findings that read back as a right document, and teach the same without the record", async () => {
    const written = debriefedFlight(flightOfPlan("First", parts), one);
    expect(readValue(written, { file: "flight.json" })).toMatchObject({ state: "ready", issues: [] });
    const again = await debriefed({ flight: written as unknown as FlightDocument });
    expect(again.data.notes).toEqual(["findings-only"]);
    const [with1, without] = [one.data.learned.after, again.data.learned.after];
    // six digits are written down
    expect(without.drag.factor).toBeCloseTo(with1.drag.factor, 5);
    expect(without.impulse.sd).toBeCloseTo(with1.impulse.sd, 5);
    expect(without.delay?.mean).toBeCloseTo(with1.delay?.mean ?? 0, 3);
    expect(again.data.predicted).toMatchObject({ written: true });
    expect(again.findings).toEqual(one.findings);
    expect(JSON.parse(JSON.stringify(again.data))).toEqual(again.data);
  });
});

describe("debrief() teaches", () => {
  test("nothing where the flyer leaves the flight out: the next odds stay to the last digit", async () => {
    const excluded = { reason: "the wrong nose cone was on it" };
    const { data } = await debriefed({ record: record(), set: 9, flight: { ...flight, excluded } });
    expect(data.learned.untaught).toEqual(["excluded"]);
    expect(data.flight.excluded).toEqual({ ...excluded, when: null });
    expect(data.learned.after).toEqual(data.learned.before);
    expect(data.next.after).toEqual(data.next.before);
    expect(data.calibration.all.flights).toBe(0);
  });

  test("nothing of the delay where nobody said what it was set to", async () => {
    const { choice: _, ...document } = parts.plan.document;
    const open = { ...parts, plan: { ...parts.plan, document } };
    const { data } = await debriefed({ flown: open, record: record() });
    expect(data.delay.setFrom).toBe("suggested");
    expect(data.learned.untaught).toEqual(["set-not-known"]);
    expect(data.findings.set).toBeNull();
    expect(data.learned.learned.delay).toBeUndefined();
    expect(data.learned.after.drag.sd).toBeLessThan(data.learned.before.drag.sd);
  });

  test("more with every flight, and counts each of them once", async () => {
    const past = [asPast(one, "First")];
    const second = await debriefed({ record: record({ ...truth, seed: 6 }), set: 9, past });
    const { before, after } = second.data.learned;
    expect(before.drag).toEqual(one.data.learned.after.drag);
    expect(after.drag.sd).toBeLessThan(before.drag.sd);
    expect(after.flights).toEqual({ rocket: 2, motor: 2, both: 2 });
    expect(second.data.past.map(({ name, isThis }) => [name, isThis])).toEqual([
      ["First", false],
      ["First", true],
    ]);
    expect(second.data.calibration.all).toMatchObject({ flights: 2, times: 2 });
  });

  test("nothing from a flight of another rocket on another motor type", async () => {
    const stranger = asPast(one, "Stranger");
    const far: PastFlight = {
      ...stranger,
      data: { ...stranger.data, rocket: "B", motor: "C" },
      taught: stranger.taught && { ...stranger.taught, rocket: "B", motor: "C" },
    };
    const { data } = await debriefed({ record: record(), set: 9, past: [far] });
    expect(data.past[0]?.untaught).toEqual(["other-rocket-and-motor"]);
    expect(data.learned.before).toEqual(data.learned.prior);
    expect(data.learned.after).toEqual(one.data.learned.after);
  });
});

describe("debrief() takes the flyer's word", () => {
  test("for how it came in, whatever the record tells", async () => {
    const { data, findings } = await debriefed({ record: record(), set: 9, outcome: "low" });
    expect(data.findings).toMatchObject({ outcome: "low", outcomeStated: true });
    expect(findings).toMatchObject({ outcome: "low", outcomeBy: "flyer" });
    expect(data.calibration.all).toMatchObject({ flights: 1, times: 0 });
    const again = await debriefed({ record: record(), set: 9, flight: { ...flight, findings } });
    expect(again.data.findings.outcome).toBe("low");
  });

  test("for where an event was, now and when the flight is debriefed again", async () => {
    const samples = record();
    const moved = { ...samples, moved: { burnout: 2.5 } };
    const { data, findings } = await debriefed({ record: moved, set: 9 });
    const burnout = (events: typeof data.events) => events.find(({ name }) => name === "burnout")?.flown;
    const before = burnout(one.data.events);
    expect(burnout(data.events)).toMatchObject({ reason: "moved-by-flyer", movedFrom: before?.time });
    const again = await debriefed({ record: samples, flight: { ...flight, findings } });
    expect(burnout(again.data.events)?.time).toBeCloseTo(burnout(data.events)?.time ?? 0, 3);
    const wrong = await debrief(
      { flown: parts, flight, file: "f", past: [], record: { ...samples, moved: { burnout: 60 } } },
      few,
    );
    expect(wrong).toMatchObject({
      ok: false,
      issues: [{ file: "log.csv", path: "events.burnout", code: "out-of-order" }],
    });
  });
});

describe("debrief() says what is wrong", () => {
  test("where nothing flew, and where there is no flight of that number", async () => {
    const still = {
      time: Float64Array.from({ length: 400 }, (_, i) => i / 20),
      height: new Float64Array(400),
      marks: [],
    };
    const given = { flown: parts, flight, file: "flight.json", past: [] };
    expect(await debrief({ ...given, record: { file: "still.csv", samples: still } }, few)).toMatchObject({
      ok: false,
      issues: [{ file: "still.csv", code: "no-flight" }],
    });
    expect(await debrief({ ...given, record: { ...record(), number: 2 } }, few)).toMatchObject({
      ok: false,
      issues: [{ code: "no-such-flight", found: "2", accepted: "1: the record holds one flight" }],
    });
  });

  test("a rocket that came down unopened is grounded, and its delay a bound", async () => {
    const { data } = await debriefed({ record: record({ ...truth, delay: null }), set: 14 });
    expect(data.findings.outcome).toBe("grounded");
    expect(data.delay.flown.kind).toBe("at-least");
    expect(data.learned.untaught).toEqual(["delay-bound"]);
  });
});
