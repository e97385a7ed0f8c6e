import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { bag, demoFiles, few, inHand, type Loose, runOver } from "./demo.js";
import { faultsOf, schemaOf } from "./json-schema.js";

/** A drogue first, pins that must stay whole under it, an electronics bay, sections, a club's rules. */
const fullyPacked = demoFiles({
  "demo.rocket.json": (rocket) => {
    rocket.electronicsBay = { diameter: "70 mm", length: "150 mm" };
    rocket.sectionMasses = ["1.2 kg", "0.9 kg"];
    rocket.recovery.drogue = { canopy: { shape: "cross", diameter: "0.4 m" } };
    rocket.recovery.main.opensAt = "150 m";
    rocket.recovery.main.shearPins = [{ size: "4-40", count: 3 }];
  },
  "plan.json": (plan) => {
    plan.ruleSet = "club.json";
    plan.packing = { landingSpeed: "6 m/s" };
  },
  "club.json": () => ({ kind: "rule-set", version: 1, name: "Demo club", limits: { "wind-limit": { stop: "6 m/s" } } }),
});
const unconfirmed = demoFiles({
  "demo-h150.motor.json": (motor) => {
    delete motor.delay.instructions;
  },
});
const withoutDelay = demoFiles({
  "demo-h150.motor.json": (motor) => {
    motor.delay = { kind: "none" };
    delete motor.designation;
  },
  "plan.json": (plan) => {
    delete plan.tool;
  },
});
const backUp = demoFiles({
  "demo.rocket.json": (rocket) => {
    rocket.recovery.motorCharge = "backup";
    rocket.recovery.electronics = { fires: "apogee", delay: "0 s" };
  },
});
const oneFlight = demoFiles({
  "plan.json": (plan) => {
    plan.spread = "none";
    plan.choice = { delay: "8 s", reason: "a short walk" };
  },
});
const grounded = demoFiles({
  "demo-h150.motor.json": (motor) => {
    motor.delay = { kind: "fixed", seconds: "40 s" };
    delete motor.designation;
  },
});
const overCut = inHand("28.2 mm", {
  "heavy.rocket.json": () => ({
    ...JSON.parse(demoFiles()["demo.rocket.json"] ?? ""),
    name: "Demo rocket 76, heavy",
    massWithoutMotor: "2.7 kg",
  }),
});

const log = (name: string, ending = "csv"): string =>
  readFileSync(new URL(`../examples/debrief/${name}.${ending}`, import.meta.url), "utf8");

const cardOfABag = inHand("24.6 mm", {
  "me.json": () => ({ kind: "flyer", version: 1, name: "Demo flyer", certification: 1 }),
  "plan.json": (plan) => {
    plan.motor = "bag-3.json";
    plan.flyer = "me.json";
    plan.choice = { delay: "9.5 s", reason: "to see" };
  },
});

describe("schemas", () => {
  test.each([
    ["the demo", demoFiles()],
    ["unconfirmed instructions", unconfirmed],
    ["a motor without delay", withoutDelay],
    ["a charge behind electronics", backUp],
    ["one flight without spread", oneFlight],
    ["a delay that outlasts every flight", grounded],
    ["an over-cut motor", overCut],
    ["a rocket of which all is stated", fullyPacked],
  ])("decide.schema.json describes every key of %s", async (_, files) => {
    const { json } = await runOver(files, ["decide", "plan.json", "--json", ...few]);
    expect(faultsOf(json(), schemaOf("decide"))).toEqual([]);
  });

  test.each([
    ["the demo", demoFiles()],
    ["a motor in hand and a flyer", cardOfABag],
    ["a motor without delay", withoutDelay],
    ["a charge behind electronics", backUp],
    ["one flight without spread", oneFlight],
    ["an over-cut motor", overCut],
  ])("card.schema.json describes every key of %s", async (_, files) => {
    const { json } = await runOver(files, ["card", "plan.json", "--json", ...few]);
    expect(faultsOf(json(), schemaOf("card"))).toEqual([]);
  });

  test("decide.schema.json holds the keys of the contract", async () => {
    const decision: Loose = (await runOver(demoFiles(), ["decide", "plan.json", "--json", ...few])).json();
    const keys = (value: object): string[] => Object.keys(value);
    expect(keys(decision)).toEqual(
      expect.arrayContaining(
        "flight coast settings toCut unopened stability drivers checks warnings seed draws model".split(" "),
      ),
    );
    expect(keys(decision.flight)).toEqual(
      expect.arrayContaining("guideExit burnout apogee fastest hardest".split(" ")),
    );
    expect(keys(decision.flight.apogee)).toEqual("time height speed airspeed east north".split(" "));
    expect(keys(decision.settings[0])).toEqual(
      expect.arrayContaining(
        "delay removed end spacers depth odds openingSpeed openingHeight secondsFromApogee".split(" "),
      ),
    );
    expect(keys(decision.settings[0].odds)).toEqual(
      expect.arrayContaining("clean earlyFast lateFast leanFast low grounded holds error".split(" ")),
    );
    expect(keys(decision.toCut)).toEqual(
      expect.arrayContaining("delay removed end spacers depth reachesLeast why homeCut".split(" ")),
    );
    expect(keys(decision.checks[0])).toEqual(
      expect.arrayContaining("code verdict value limit unit source id edition status details missing sense".split(" ")),
    );
    expect(keys(decision.packing)).toEqual(
      expect.arrayContaining("bay staticPorts canopy openings harness landing landings".split(" ")),
    );
    expect(keys(decision.stability)).toEqual(expect.arrayContaining("cp atGuideExit atBurnout".split(" ")));
  });

  test.each([
    ["opened", ["--delay", "9s"]],
    ["unopened", []],
    ["a draw, every half second", ["--draw", "5", "--every", "0.5s"]],
    ["a rigid body in turbulence", ["--model", "rigid", "--draw", "5"]],
  ])("fly.schema.json describes every key of a flight: %s", async (_, words) => {
    const { json } = await runOver(demoFiles(), ["fly", "plan.json", "--json", ...words]);
    expect(faultsOf(json(), schemaOf("fly"))).toEqual([]);
    const lengths = new Set(
      Object.values(json().trajectory as Record<string, unknown[]>).map((column) => column.length),
    );
    expect(lengths.size).toBe(1);
  });

  test.each([
    ["settings", []],
    ["a delay that is made", ["--to", "9s"]],
    ["a delay that is not", ["--to", "10s"]],
    ["a reading", ["--before", "22.2mm", "--after", "25.4mm"]],
    ["a reading past a limit", ["--before", "22.2mm", "--after", "25.4mm", "--to", "9s", "--most-removed", "1s"]],
  ])("cut.schema.json describes every key of %s", async (_, words) => {
    const { json } = await runOver(demoFiles(), [
      "cut",
      "two-collar.tool.json",
      "--longest",
      "14s",
      "--json",
      ...words,
    ]);
    expect(faultsOf(json(), schemaOf("cut"))).toEqual([]);
  });

  test.each([
    ["the demo", demoFiles(), ["--motor", "demo-h150.motor.json"]],
    ["no motor", demoFiles(), []],
    ["a plugged motor", withoutDelay, ["--motor", "demo-h150.motor.json"]],
    [
      "strange pins",
      demoFiles({
        "demo.rocket.json": (rocket) => {
          rocket.bay.shearPins = [{ size: "M2", count: 1 }];
        },
      }),
      ["--motor", "demo-h150.motor.json"],
    ],
  ])("charge.schema.json describes every key of %s", async (_, files, words) => {
    const { json } = await runOver(files, ["charge", "demo.rocket.json", "--json", ...words]);
    expect(faultsOf(json(), schemaOf("charge"))).toEqual([]);
  });

  test.each([
    ["a record", {}, ["second.csv", "--set", "9s"]],
    ["a record with an accelerometer, left out", {}, ["third.csv", "--set", "9s", "--exclude", "other nose"]],
    [
      "findings without a record, and a broken flight beside",
      { "flights/broken.json": "{" },
      ["flights/first.json", "--flights", "flights"],
    ],
    ["electronics that opens it", backUp, ["second.csv"]],
    ["a motor without delay", withoutDelay, ["second.csv"]],
  ])("debrief.schema.json describes every key of %s", async (_, more, words) => {
    const files = { ...demoFiles(), "second.csv": log("second-flight"), "third.csv": log("third-flight"), ...more };
    const first = log("flights/first.flight", "json");
    const { json } = await runOver({ ...files, "flights/first.json": first }, [
      "debrief",
      "plan.json",
      ...words,
      "--json",
      ...few,
    ]);
    expect(faultsOf(json(), schemaOf("debrief"))).toEqual([]);
  });

  test("check.schema.json describes issues and doubts", async () => {
    const files = { ...demoFiles(), "bad.json": JSON.stringify({ ...bag("21 mm"), label: 3 }) };
    const { json } = await runOver(files, ["check", "plan.json", "bad.json", "gone.json", "--json"]);
    expect(faultsOf(json(), schemaOf("check"))).toEqual([]);
    expect(json().files).toHaveLength(3);
  });

  test("faultsOf() finds a missing key, a strange key and a wrong type", () => {
    const schema = schemaOf("cut");
    const setting = { delay: 10, removed: 4, end: "B", spacers: [], depth: null };
    expect(faultsOf({ longest: 14, settings: [setting] }, schema)).toEqual([]);
    expect(faultsOf({ settings: [{ ...setting, delay: "10", more: 1 }] }, schema)).toEqual([
      ".longest: missing",
      ".settings[0].delay: string found, number accepted",
      ".settings[0].more: not in the schema",
    ]);
  });
});
