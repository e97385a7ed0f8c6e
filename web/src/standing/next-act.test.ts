import type { PrepLine } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { inventedDocuments, inventedPart, inventedSetting, inventedTold } from "./invented.js";
import { nextAct, type Standing, sectionOfIssue } from "./next-act.js";

const hand = (readings: readonly object[] = []) =>
  inventedPart("bag-3.motor-in-hand.json", { kind: "motor-in-hand", name: "Bag 3", readings });
const issue = (file: string, path: string, code = "missing") => ({
  file,
  path,
  code,
  found: "nothing",
  accepted: "a mass",
  example: "",
});

const standing = (more: Partial<Standing> = {}): Standing => ({
  documents: inventedDocuments(),
  issues: [],
  told: inventedTold(),
  age: null,
  ...more,
});
const words = (more: Partial<Standing> = {}) => nextAct(standing(more))?.words;

describe("nextAct()", () => {
  test("mends what is wrong before anything else, and says how many there are", () => {
    const issues = [
      issue("demo-76.rocket.json", "fins[0].root"),
      issue("demo-76.rocket.json", "length", "unit-missing"),
    ];
    expect(nextAct(standing({ issues }))).toEqual({
      words: "Next: enter fins 1, root, 1 of 2",
      short: "Next: enter fins 1, root",
      section: "rocket",
      field: { path: "demo-76.rocket.json", field: "fins[0].root" },
    });
    expect(words({ issues: issues.slice(1) })).toBe("Next: mend length");
  });

  test("asks for the motor's instructions before any cut, at the field itself", () => {
    const documents = inventedDocuments({ motor: inventedPart("demo.plan.json", { name: "Demo H150" }, "motor") });
    const act = nextAct(standing({ documents, told: inventedTold({ facts: { cutAllowed: false } }) }));
    expect(act?.section).toBe("motor");
    expect(act?.field).toEqual({ path: "demo.plan.json", field: "motor.delay.instructions.allowCutting" });
  });

  test("follows the day: name the motor, measure, cut, read the wind, the pad", () => {
    expect(words()).toBe("Next: name the motor in hand");
    expect(words({ documents: inventedDocuments({ inHand: hand() }) })).toBe("Next: measure Bag 3, then cut");
    const measured = hand([{ when: "2026-05-02T10:00", before: "14 mm" }]);
    expect(words({ documents: inventedDocuments({ inHand: measured }) })).toBe("Next: cut Bag 3, then read it");
    const age = { taken: "10:40", minutes: 74, stale: true };
    expect(words({ documents: inventedDocuments({ inHand: measured }), age })).toBe("Next: read the wind");
    const cut = inventedSetting({ end: null, spacers: [], depth: 0.004 });
    const given = { delayKind: "adjustable", removedDepth: 0.004 };
    const told = inventedTold({
      data: { settings: [cut], toCut: { ...cut, reachesLeast: true, reachesHolds: true }, given },
    });
    expect(nextAct(standing({ told }))?.pad).toBe(true);
  });

  test("sends to what would help, to the ways out, and to the checks that say stop", () => {
    const toCut = { ...inventedSetting(), reachesLeast: false, reachesHolds: true };
    expect(words({ told: inventedTold({ data: { toCut } }) })).toBe("Next: see what would help");
    expect(words({ told: inventedTold({ data: { overCut: { delay: 6 } } }) })).toBe("Next: see the ways out");
    const stop = { code: "ceiling", verdict: "stop", value: 1, limit: 0, unit: "m", source: "" };
    expect(words({ told: inventedTold({ data: { checks: [stop] } }) })).toBe("Next: see what says stop");
  });

  test("goes on with the prep sheet of a flight that was begun, and leaves the pad's steps to the pad view", () => {
    const cut = inventedSetting({ end: null, spacers: [], depth: 0.004 });
    const data = {
      settings: [cut],
      toCut: { ...cut, reachesLeast: true, reachesHolds: true },
      given: { delayKind: "adjustable", removedDepth: 0.004 },
    };
    const done = {
      told: inventedTold({ data }),
      documents: inventedDocuments({ inHand: hand([{ before: "22 mm" }]) }),
    };
    const step = (phase: string) => ({ phase, title: "Fold the parachute" }) as PrepLine;
    expect(nextAct(standing({ ...done, prepStep: step("packing") }))).toEqual({
      words: "Next: fold the parachute",
      short: "Next: the prep sheet",
      section: "prep",
    });
    expect(words({ ...done, prepStep: step("pad") })).toBe("Next: to the pad");
    expect(words({ ...done, prepStep: null })).toBe("Next: to the pad");
    // what is still to cut comes first
    expect(words({ prepStep: step("bench") })).toBe("Next: name the motor in hand");
  });

  test("has nothing to say without an answer and without an issue", () => {
    expect(words({ told: null })).toBeUndefined();
  });
});

describe("sectionOfIssue()", () => {
  test.each([
    ["demo-76.rocket.json", "length", "rocket"],
    ["demo-76.rocket.json", "recovery.main.canopy", "packing"],
    ["demo-h150.motor.json", "delay.longest", "motor"],
    ["demo.plan.json", "weather.wind", "field"],
    ["demo.plan.json", "guide.rail", "field"],
    ["demo.plan.json", "date", "field"],
    ["demo.plan.json", "flyer", "field"],
    ["demo.plan.json", "ballast.mass", "rocket"],
    ["demo-76.rocket.json", "electronicsBay.length", "packing"],
    ["demo.plan.json", "site.cloudCover", "field"],
    ["demo.plan.json", "packing.charge", "packing"],
    ["demo.plan.json", "ruleSet", "checks"],
    ["me.flyer.json", "age", "field"],
    ["club.rule-set.json", "limits.wind-limit.stop", "checks"],
    ["demo.plan.json", "tool", "cut"],
    ["demo.plan.json", "spread.dragScale", "delay"],
  ])("%s %s stands in %s", (file, path, section) => {
    const flyer = inventedPart("me.flyer.json", {});
    const ruleSet = inventedPart("club.rule-set.json", {});
    expect(sectionOfIssue({ file, path }, inventedDocuments({ flyer, ruleSet }))).toBe(section);
  });

  test("looks into documents that stand inside the plan", () => {
    const documents = inventedDocuments({ rocket: inventedPart("demo.plan.json", {}, "rocket") });
    const at = (path: string) => sectionOfIssue({ file: "demo.plan.json", path }, documents);
    expect(at("rocket.recovery.main")).toBe("packing");
    expect(at("rocket.fins[0]")).toBe("rocket");
    expect(at("weather.wind")).toBe("field");
  });
});
