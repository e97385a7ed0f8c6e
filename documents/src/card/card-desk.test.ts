import { burnOf, decide } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoFiles, field, motor, plan } from "../../test/fixtures.js";
import { memoryFiles } from "../file-source.js";
import { loadPlan } from "../load-plan.js";
import { planToEngine } from "../to-engine.js";
import { assumptionWords } from "../words/card-desk.en.js";
import { deskIssue, deskPlan } from "./card-desk.js";
import type { DeskEntry } from "./desk-entry.js";

/** The least that a card must say: the demo rocket on the demo motor. */
const least: DeskEntry = {
  mass: "2.28 kg",
  balance: "942 mm",
  diameter: "76 mm",
  length: "1.52 m",
  cp: "1.106 m",
  impulse: "309 N s",
  burnTime: "2.08 s",
  delay: "9 s",
  canopy: "1.1 m",
};

async function inputsOf(entry: DeskEntry) {
  const { document, issues } = deskPlan(entry);
  if (document === null) throw new Error(JSON.stringify(issues));
  const { parts, issues: found } = await loadPlan("card", memoryFiles({ card: JSON.stringify(document) }));
  const made = parts && planToEngine(parts);
  if (!made?.ok) throw new Error(JSON.stringify(made?.issues ?? found));
  return made.inputs;
}

describe("deskPlan()", () => {
  test("makes a plan of the least that a card must say, at the delay that is set", async () => {
    const inputs = await inputsOf(least);
    const { settings, checks } = await decide(inputs, { draws: 64 });
    expect(settings.map(({ delay }) => delay)).toEqual([9]);
    expect(checks.length).toBeGreaterThan(5);
    expect(inputs.rocket.mass + inputs.motor.loadedMass).toBeCloseTo(2.28, 9);
    const burn = burnOf(inputs.motor.thrust);
    expect([burn.totalImpulse, burn.burnTime]).toEqual([expect.closeTo(309, 9), expect.closeTo(2.08, 9)]);
  });

  test("lists everything that it assumed, and nothing that the card said", () => {
    const { assumptions } = deskPlan(least);
    expect(assumptions.map((each) => each.field).sort()).toEqual(
      [
        "canopyShape",
        "electronics",
        "field",
        "finRoot",
        "guide",
        "loadedMass",
        "motor",
        "motorDiameter",
        "motorLength",
        "motorName",
        "noseLength",
        "noseShape",
        "propellantMass",
        "weather",
      ].sort(),
    );
    for (const each of assumptions) expect(assumptionWords(each)).toMatch(/^[A-Z].+: .+/);
    for (const each of assumptions) expect(assumptionWords(each, "imperial")).not.toMatch(/\d (?:mm|m|kg|g)\b/);
    const { assumptions: fewer } = deskPlan({
      ...least,
      guide: "1.8 m",
      canopyShape: "hemispherical",
      electronics: false,
    });
    expect(fewer.map((each) => each.field)).not.toEqual(expect.arrayContaining(["guide"]));
    expect(fewer).toHaveLength(assumptions.length - 3);
  });

  test("a full card with a motor of the library comes near its own plan", async () => {
    const { parts } = await loadPlan("plan.json", demoFiles());
    const own = parts && planToEngine(parts);
    if (parts === undefined || !own?.ok) throw new Error("the demo plan is right");
    const { weather } = plan;
    const inputs = await inputsOf({
      ...least,
      cp: "",
      noseShape: "ogive",
      noseLength: "300 mm",
      finCount: "3",
      finAt: "1.26 m",
      finRoot: "180 mm",
      finTip: "80 mm",
      finSpan: "90 mm",
      finSweep: "100 mm",
      finThickness: "4 mm",
      canopyShape: "hemispherical",
      guide: "1.67 m",
      motor: parts.motor,
      field,
      weather,
    });
    const [card, whole] = [await decide(inputs, { draws: 64 }), await decide(own.inputs, { draws: 64 })];
    const [ours, theirs] = [card.flight.events.apogee?.position[2] ?? 0, whole.flight.events.apogee?.position[2] ?? 0];
    // without the boat-tail and the fittings the drag is a little another
    expect(Math.abs(ours / theirs - 1)).toBeLessThan(0.05);
    expect(inputs.motor.delay).toEqual({ kind: "fixed", seconds: 9, clock: "burnout" });
    expect(inputs.motor.designation).toBe("H150");
    expect(motor.designation).toBe("H150-14");
  });

  test("tells of every missing field at once, beside that field", () => {
    const { document, issues } = deskPlan({});
    expect(document).toBeNull();
    expect(issues.map(({ path, code }) => `${path} ${code}`).sort()).toEqual(
      ["balance", "burnTime", "canopy", "cp", "delay", "diameter", "impulse", "length", "mass"].map(
        (each) => `${each} missing`,
      ),
    );
    for (const issue of issues) expect(issue.accepted.length, issue.path).toBeGreaterThan(10);
  });

  test.each([
    ["mass", "2.28", "unit-missing"],
    ["balance", "942 kg", "wrong-dimension"],
    ["delay", "nine", "number-missing"],
    ["impulse", "-3 N s", "out-of-range"],
    ["burnTime", "2 kg", "wrong-dimension"],
    ["canopy", "1,500 ft", "ambiguous-comma"],
    ["cp", "1.1", "unit-missing"],
    ["noseShape", "spike", "wrong-choice"],
    ["motorDiameter", "38", "unit-missing"],
    ["guide", "0 m", "out-of-range"],
    ["canopyShape", "bedsheet", "wrong-choice"],
  ] as const)("tells of a wrong field beside it: %s %s", (name, text, code) => {
    const { document, issues } = deskPlan({ ...least, [name]: text });
    expect(document).toBeNull();
    expect(issues.filter((issue) => issue.path === name).map((issue) => issue.code)).toEqual([code]);
  });

  test("a motor lighter than its propellant is told beside the propellant", () => {
    const { issues } = deskPlan({ ...least, loadedMass: "100 g" });
    expect(issues.map(({ path, code }) => `${path} ${code}`)).toEqual(["propellantMass propellant-above-loaded"]);
  });

  test("half of the fins is told as what is missing of them", () => {
    const { issues } = deskPlan({ ...least, finSpan: "90 mm" });
    expect(issues.map(({ path, code }) => `${path} ${code}`)).toEqual(["finRoot missing", "finTip missing"]);
    expect(
      deskPlan({ ...least, finRoot: "180 mm", finTip: "80 mm", finSpan: "90 mm", finCount: "many" }).issues.map(
        ({ path }) => path,
      ),
    ).toEqual(["finCount"]);
  });

  test("what only shows between the documents is told beside a field too", async () => {
    const { document } = deskPlan({ ...least, mass: "300 g" });
    const { parts } = await loadPlan("card", memoryFiles({ card: JSON.stringify(document) }));
    const made = parts && planToEngine(parts);
    if (made === undefined || made.ok) throw new Error("a rocket lighter than its motor is refused");
    expect(made.issues.map((issue) => deskIssue(issue).path)).toContain("mass");
  });

  test("electronics makes the charge a back-up", async () => {
    const { recovery } = await inputsOf({ ...least, electronics: true });
    expect(recovery).toMatchObject({ motorCharge: "backup", electronics: { fires: "apogee" } });
  });
});
