import { type DecisionInputs, noSpread } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoFiles } from "../../test/fixtures.js";
import { defaultSpread } from "../defaults.js";
import { loadAny } from "../load.js";
import { dragShift } from "./drag-basis.js";
import { type PastFlight, pastFlightOf } from "./past-flight.js";
import { pastOdds } from "./past-odds.js";
import { hasOtherDrag, learnFrom } from "./teach.js";

const findings = {
  set: "9 s",
  delay: "9.6 s",
  delayError: "0.1 s",
  apogee: "590 m",
  outcome: "clean",
  drag: { factor: 1.08, sd: 0.02 },
  impulse: { factor: 1, sd: 0.01 },
};
const forecast = { clean: 0.92, apogee: { from: "550 m", to: "680 m" } };

async function past(flight: Record<string, unknown> = {}, files: Record<string, unknown> = {}): Promise<PastFlight> {
  const document = { kind: "flight", version: 1, name: "First", plan: "plan.json", findings, forecast, ...flight };
  const read = await loadAny("first.json", demoFiles({ "first.json": document, ...files }), ["flight"]);
  const found = pastFlightOf(read);
  if (found === undefined) throw new Error(JSON.stringify(read.issues));
  return found;
}

const inputs = { spread: { ...noSpread, ...defaultSpread } } as unknown as DecisionInputs;
const learner = { rocket: "Demo rocket 76", motor: "Demo H150", lot: null, drag: { from: "build-up", level: 1 } };

describe("pastFlightOf()", () => {
  test("reads rocket, motor type and lot by their names, and what the flight teaches", async () => {
    const bag = { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json", lot: "L-17" };
    const { data, taught } = await past({ motorInHand: bag, flown: "2026-05-02T11:10" });
    expect(data).toMatchObject({
      rocket: "Demo rocket 76",
      motor: "Demo H150",
      lot: "L-17",
      flown: "2026-05-02T11:10",
      odds: 0.92,
      topBand: [550, 680],
      untaught: [],
    });
    expect(taught).toMatchObject({
      rocket: "Demo rocket 76",
      lot: "L-17",
      set: 9,
      flown: { kind: "seen", delay: 9.6, error: 0.1 },
    });
  });

  test.each([
    ["left out by the flyer", { excluded: { reason: "other nose" } }, ["excluded"], false],
    ["nothing found out", { findings: {} }, ["no-findings"], false],
    ["no delay read off", { findings: { ...findings, delay: undefined, delayError: undefined } }, ["no-delay"], true],
    ["a bound", { findings: { ...findings, delayIs: "at-least", delayError: undefined } }, ["delay-bound"], true],
    ["not known what was set", { findings: { ...findings, set: undefined } }, ["set-not-known"], true],
    ["no climb", { findings: { ...findings, drag: undefined, impulse: undefined } }, ["no-climb"], true],
    ["the plan gone", { plan: "gone.json" }, ["not-read"], false],
  ])("says why a flight teaches less: %s", async (_, flight, untaught, teaches) => {
    const found = await past(JSON.parse(JSON.stringify(flight)));
    expect(found.data.untaught).toEqual(untaught);
    expect(found.taught !== null).toBe(teaches);
  });

  test("takes names from what can still be read where another file of the plan is broken", async () => {
    const { data, taught } = await past({}, { "two-collar.tool.json": { kind: "tool", version: 1, name: 3 } });
    expect(data.rocket).toBe("Demo rocket 76");
    expect(taught).not.toBeNull();
  });

  test("is undefined for what is no flight", async () => {
    expect(pastFlightOf(await loadAny("gone.json", demoFiles({}), ["flight"]))).toBeUndefined();
  });
});

describe("learnFrom()", () => {
  test("with nothing that teaches says what the plan's spread says", async () => {
    const excluded = await past({ excluded: { reason: "other nose" } });
    expect(learnFrom([excluded], learner, inputs)).toEqual(learnFrom([], learner, inputs));
    expect(learnFrom([], learner, inputs).drag).toEqual({ mean: 0, sd: defaultSpread.dragScale });
  });

  test("the same flight teaches less drag once the rocket's own document has taken it over", async () => {
    const flight = await past();
    const before = learnFrom([flight], learner, inputs);
    const after = learnFrom([flight], { ...learner, drag: { from: "build-up", level: 1.08 } }, inputs);
    expect(before.drag.mean).toBeGreaterThan(0.05);
    // its factor of 1.08 was on a scale of 1: on a scale of 1.08 it is 1
    expect(Math.abs(after.drag.mean)).toBeLessThan(1e-6);
    expect(after.delay).toEqual(before.delay);
  });

  test("a rocket whose drag is reckoned in another way now keeps the delay that was learned, and no drag", async () => {
    const flight = await past();
    const other = { ...learner, drag: { from: "constant", level: 0.5 } };
    expect(hasOtherDrag(flight, other)).toBe(true);
    expect(learnFrom([flight], other, inputs)).toMatchObject({
      drag: { mean: 0, sd: defaultSpread.dragScale },
      delay: { seen: 1 },
    });
  });
});

test("dragShift() is the logarithm of the ratio of two levels of one kind", () => {
  expect(dragShift({ from: "constant", level: 0.6 }, { from: "constant", level: 0.5 })).toBeCloseTo(Math.log(1.2), 12);
  expect(dragShift({ from: "constant", level: 0.6 }, { from: "build-up", level: 1 })).toBeNull();
});

test("pastOdds() takes a flight that has odds and an outcome, and is not left out", async () => {
  expect(pastOdds(await past())).toEqual({ odds: 0.92, clean: true, top: 590, topBand: [550, 680] });
  expect(pastOdds(await past({ excluded: { reason: "other nose" } }))).toBeUndefined();
  expect(pastOdds(await past({ findings: { ...findings, outcome: undefined } }))).toBeUndefined();
  expect(pastOdds(await past({ forecast: undefined }))).toBeUndefined();
});
