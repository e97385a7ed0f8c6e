import { describe, expect, test } from "vitest";
import { bag, demoFiles, few, inHand, type Loose, runOver } from "./demo.js";
import { faultsOf, schemaOf } from "./json-schema.js";

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

describe("schemas", () => {
  test.each([
    ["the demo", demoFiles()],
    ["unconfirmed instructions", unconfirmed],
    ["a motor without delay", withoutDelay],
    ["a charge behind electronics", backUp],
    ["one flight without spread", oneFlight],
    ["a delay that outlasts every flight", grounded],
    ["an over-cut motor", overCut],
  ])("decide.schema.json describes every key of %s", async (_, files) => {
    const { json } = await runOver(files, ["decide", "plan.json", "--json", ...few]);
    expect(faultsOf(json(), schemaOf("decide"))).toEqual([]);
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
    expect(keys(decision.stability)).toEqual(expect.arrayContaining("cp atGuideExit atBurnout".split(" ")));
  });

  test.each([
    ["opened", ["--delay", "9s"]],
    ["unopened", []],
    ["a draw, every half second", ["--draw", "5", "--every", "0.5s"]],
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
