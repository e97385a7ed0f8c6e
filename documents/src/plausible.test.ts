import { describe, expect, test } from "vitest";
import { bent, demoFiles, field, motor, plan, rocket, tool } from "../test/fixtures.js";
import { loadAny } from "./load.js";
import { loadPlan } from "./load-plan.js";
import { nodeDoubts } from "./plausible.js";
import { planToEngine } from "./to-engine.js";
import { doubtLine } from "./words/issues.en.js";

async function doubts(changed: Readonly<Record<string, unknown>>): Promise<string[]> {
  const { parts, issues } = await loadPlan("plan.json", demoFiles(changed));
  const result = parts && planToEngine(parts);
  if (!result?.ok) throw new Error(JSON.stringify(result?.issues ?? issues));
  return result.warnings.map(doubtLine);
}

const cases: readonly (readonly [string, Readonly<Record<string, unknown>>, string])[] = [
  [
    "a balance point behind the tail",
    { "demo.rocket.json": { ...rocket, balanceWithoutMotor: "1.6 m" } },
    'demo.rocket.json: balanceWithoutMotor: this lies behind the tail: "1.6 m" found; a place before the tail expected',
  ],
  [
    "a balance point in the nose",
    { "demo.rocket.json": { ...rocket, balanceWithoutMotor: "0.2 m" } },
    'demo.rocket.json: balanceWithoutMotor: this lies within the nose: "0.2 m" found; a place behind the nose expected',
  ],
  [
    "a thrust curve off its label",
    { "demo-h150.motor.json": { ...motor, designation: "H225-14" } },
    "demo-h150.motor.json: thrust: the thrust curve's average is off its label: 148.7 found; 225 N ± 20 %, as on the label expected",
  ],
  [
    "a delay off its label",
    { "demo-h150.motor.json": { ...motor, designation: "H150-10" } },
    "demo-h150.motor.json: delay: the delay is not the label's: 14 found; 10 s, as on the label expected",
  ],
  [
    "a canopy of feet typed as metres",
    { "demo.rocket.json": bent(rocket, ["recovery", "main", "canopy", "diameter"], "30 m") },
    'demo.rocket.json: recovery.main.canopy.diameter: this canopy is very large for the rocket: "30 m" found; a canopy under which it comes down at 2 m/s or faster, not at 0.27 m/s; was it meant in ft? expected',
  ],
  [
    "a station pressure that was reduced",
    { "plan.json": bent(plan, ["weather", "pressure"], "1060 hPa") },
    'plan.json: weather.pressure: this pressure is unlikely at this elevation: "1060 hPa" found; within 60 hPa of 988.3 hPa, the standard\'s at this elevation; was it reduced to sea level? expected',
  ],
  [
    "an elevation in feet typed as metres",
    {
      "plan.json": bent(plan, ["weather", "pressure"], "842 hPa"),
      "larkmoor.field.json": { ...field, elevation: "5000 m" },
    },
    'larkmoor.field.json: elevation: this elevation does not fit the pressure: "5000 m" found; an elevation that fits the pressure; was it meant in feet? expected',
  ],
  [
    "a very hot day",
    { "plan.json": bent(plan, ["weather", "temperature"], "60 degC") },
    'plan.json: weather.temperature: "60 degC" found; -40 degC to 55 degC expected',
  ],
  [
    "a gale",
    { "plan.json": bent(plan, ["weather", "wind"], "25 m/s") },
    'plan.json: weather.wind: "25 m/s" found; up to 20 m/s expected',
  ],
  [
    "a mass in pounds typed as kilograms",
    { "demo.rocket.json": bent(bent(rocket, ["massWithoutMotor"], "6.5 kg"), ["diameter"], "61 mm") },
    'demo.rocket.json: massWithoutMotor: "6.5 kg" found; less mass for a rocket of this size; was it meant in lb? expected',
  ],
  [
    "thick fins",
    { "demo.rocket.json": bent(rocket, ["fins", 0, "thickness"], "25 mm") },
    'demo.rocket.json: fins[0].thickness: "25 mm" found; up to 20 mm expected',
  ],
  [
    "a long guide",
    { "plan.json": { ...plan, guide: { travel: "7 m" } } },
    'plan.json: guide.travel: "7 m" found; 0.5 m to 6 m expected',
  ],
  [
    "a long delay",
    { "demo-h150.motor.json": bent(bent(motor, ["delay", "longest"], "30 s"), ["designation"], undefined) },
    'demo-h150.motor.json: delay.longest: "30 s" found; up to 25 s expected',
  ],
  [
    "a cut without error",
    { "two-collar.tool.json": { ...tool, depthError: "0 mm" } },
    'two-collar.tool.json: depthError: "0 mm" found; more than 0: no hand cuts exactly expected',
  ],
  [
    "a high speed limit",
    { "plan.json": bent(plan, ["limits", "openingSpeed"], "50 m/s") },
    'plan.json: limits.openingSpeed: "50 m/s" found; up to 40 m/s expected',
  ],
  [
    "a motor loose in its mount",
    { "demo-h150.motor.json": { ...motor, diameter: "29 mm" } },
    'demo-h150.motor.json: diameter: "29 mm" found; about the mount\'s 38 mm, or an adapter expected',
  ],
  [
    "a small canopy",
    { "demo.rocket.json": bent(rocket, ["recovery", "main", "canopy", "diameter"], "110 mm") },
    'demo.rocket.json: recovery.main.canopy.diameter: "110 mm" found; a canopy wider than two calibres expected',
  ],
  [
    "a wind without direction",
    { "plan.json": bent(plan, ["weather", "windFrom"], undefined) },
    "plan.json: weather.windFrom: nothing found; where it blows from: north is reckoned with expected",
  ],
  [
    "no wind",
    { "plan.json": bent(plan, ["weather"], undefined) },
    "plan.json: weather.wind: nothing found; a wind (calm air is taken until then) expected",
  ],
];

describe("planDoubts()", () => {
  test("has none about the demo", async () => expect(await doubts({})).toEqual([]));
  test.each(cases)("warns of %s, and blocks nothing", async (_, changed, line) => {
    expect(await doubts(changed)).toContain(line);
  });
});

test("nodeDoubts() asks whether a diameter was meant in inches", async () => {
  const loaded = await loadAny("demo.rocket.json", demoFiles({ "demo.rocket.json": { ...rocket, diameter: "3 mm" } }));
  const lines = loaded.root === undefined ? [] : nodeDoubts(loaded.root).map(doubtLine);
  expect(lines[0]).toBe('demo.rocket.json: diameter: "3 mm" found; 12 mm to 600 mm; was it meant in inches? expected');
});
