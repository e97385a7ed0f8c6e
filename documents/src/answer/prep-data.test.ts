import type { PrepEvent, PrepStepId } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { bent, motor, motorInHand, plan, rocket } from "../../test/fixtures.js";
import { preparedPlan } from "../../test/prepared.js";
import { type PrepBrief, prepData } from "./prep-data.js";

const { choice: _choice, ...unchosen } = plan;
const inHand = (after: string) => ({
  "plan.json": { ...unchosen, motor: "bag-3.json" },
  "bag-3.json": { ...motorInHand, readings: [{ when: "2026-05-02T10:12", before: "22.2 mm", after }] },
});
const cutOf = async (changed: Readonly<Record<string, unknown>>) =>
  (await preparedPlan(changed)).brief.planned.facts.cut;

/** Signs what is next until a step is signed. */
function signedUntil(brief: PrepBrief, last: PrepStepId): PrepEvent[] {
  const events: PrepEvent[] = [];
  for (let i = 0; i < 40; i++) {
    const { state } = prepData(brief, events);
    const next = state.steps.find(({ step }) => step.id === state.next)?.step;
    if (next === undefined) break;
    events.push({ kind: "sign", step: next.id, by: "AB", when: "", at: i, rests: next.rests });
    if (next.id === last) break;
  }
  return events;
}

describe("prepBrief()", () => {
  test("tells a cut to make, one that was made, none, and one that no instructions allow", async () => {
    expect(await cutOf({})).toBe("to-make");
    // 9 s of 14 s at 1/32 in a second: 3.96875 mm
    expect(
      await cutOf({ ...inHand("26.16875 mm"), "plan.json": { ...unchosen, motor: "bag-3.json", choice: undefined } }),
    ).toBe("made");
    expect(await cutOf({ "plan.json": { ...plan, choice: { delay: "14 s", reason: "as it is" } } })).toBe("none");
    expect(await cutOf({ "demo-h150.motor.json": bent(motor, ["delay", "instructions"], undefined) })).toBe(
      "not-confirmed",
    );
    const fixed = { ...bent(motor, ["designation"], undefined), delay: { kind: "fixed", seconds: "9 s" } };
    expect(await cutOf({ "demo-h150.motor.json": fixed, "plan.json": unchosen })).toBe("none");
  });

  test("asks for no cut that would not hold", async () => {
    const { brief } = await preparedPlan({ "plan.json": unchosen }, (data) => ({
      ...data,
      toCut: data.toCut && { ...data.toCut, reachesHolds: false },
    }));
    expect(brief.planned.facts.cut).toBe("does-not-hold");
  });

  test("tells electronics, pins and drogue from the rocket's document", async () => {
    const plain = (await preparedPlan()).brief.planned.facts;
    expect(plain).toMatchObject({
      delay: "adjustable",
      electronics: false,
      ownCharge: false,
      shearPins: true,
      drogue: false,
    });
    const recovery = {
      ...rocket.recovery,
      motorCharge: "backup",
      electronics: { fires: "apogee" },
      drogue: { canopy: { shape: "cross", diameter: "0.4 m" } },
      main: { ...rocket.recovery.main, opensAt: "150 m" },
    };
    const { brief } = await preparedPlan({ "demo.rocket.json": { ...bent(rocket, ["bay"], undefined), recovery } });
    expect(brief.planned.facts).toMatchObject({ electronics: true, ownCharge: true, shearPins: false, drogue: true });
    expect(brief.figures).toMatchObject({
      drogue: { shape: "cross", diameter: 0.4 },
      main: { opensAt: 150 },
      pins: [],
    });
  });

  test("carries the plan's figures, as plain data", async () => {
    const { brief } = await preparedPlan(inHand("24.6 mm"));
    expect(brief.figures).toMatchObject({
      inHand: { name: "Bag 3", label: "3", lot: "L-17" },
      firstDepth: 0.0222,
      charge: 0.001,
      pins: [{ size: "2-56", count: 2 }],
      readyMass: 2.28,
      // an H motor's people stand at 100 ft: High Power Rocket Safety Code, August 2012
      people: 30.48,
    });
    expect(structuredClone(brief)).toEqual(brief);
    expect(JSON.parse(JSON.stringify(brief))).toEqual(brief);
  });

  test("marks change with what was typed, and with nothing else", async () => {
    const basis = async (changed: Readonly<Record<string, unknown>>) =>
      (await preparedPlan(changed)).brief.planned.facts.basis;
    const before = await basis({});
    const changes = async (changed: Readonly<Record<string, unknown>>) => {
      const after = await basis(changed);
      return (Object.keys(before) as (keyof typeof before)[]).filter((key) => after[key] !== before[key]);
    };
    expect(await changes({ "plan.json": { ...plan, name: "Another", note: "windy" } })).toEqual([]);
    expect(await changes({ "plan.json": bent(plan, ["weather", "taken"], "11:20") })).toEqual([]);
    expect(await changes({ "plan.json": bent(plan, ["weather", "wind"], "3 m/s") })).toEqual(["weather"]);
    expect(await changes({ "plan.json": bent(plan, ["choice", "delay"], "8 s") })).toEqual(["setting"]);
    expect(await changes({ "plan.json": bent(plan, ["guide", "tilt"], "3 deg") })).toEqual(["guide"]);
    expect(await changes({ "demo.rocket.json": bent(rocket, ["massWithoutMotor"], "2 kg") })).toEqual(["rocket"]);
    expect(await changes({ "demo.rocket.json": bent(rocket, ["bay", "length"], "260 mm") })).toEqual(["bay"]);
    expect(await changes({ "demo-h150.motor.json": bent(motor, ["delay", "charge"], "1.2 g") })).toEqual([
      "motor",
      "charge",
    ]);
  });

  test("what a signature rests on is short enough to be written down", async () => {
    const { brief } = await preparedPlan();
    for (const { step } of prepData(brief, []).state.steps) expect(step.rests?.length ?? 0).toBeLessThanOrEqual(100);
  });
});

describe("prepData()", () => {
  test("a motor whose cut was signed for stays as it is cut while that is good enough", async () => {
    // cut to 9 s and signed for; then the best of all would be 8 s by a hair
    const files = inHand("26.16875 mm");
    const made = await preparedPlan(files);
    expect(made.brief.asCut).toBeNull();
    const events = signedUntil(made.brief, "charge-cap");
    const windier = await preparedPlan(files, (data) => {
      const deeper = data.settings.find(({ removed }) => removed > 5.5);
      if (deeper === undefined || data.toCut === null) throw new Error("nothing deeper");
      return { ...data, toCut: { ...data.toCut, ...deeper } };
    });
    expect(windier.brief.planned.facts.cut).toBe("to-make");
    expect(prepData(windier.brief, []).facts.cut).toBe("to-make");
    const { facts, setting, state } = prepData(windier.brief, events);
    expect(facts.cut).toBe("made");
    expect(setting?.delay).toBeCloseTo(9, 6);
    expect(state.steps.find(({ step }) => step.id === "charge-cap")?.status).toBe("signed");
  });

  test("a motor that is not good enough as it is cut must be cut again", async () => {
    const files = inHand("26.16875 mm");
    const events = signedUntil((await preparedPlan(files)).brief, "charge-cap");
    const worse = await preparedPlan(files, (data) => {
      const deeper = data.settings.find(({ removed }) => removed > 5.5);
      if (deeper === undefined || data.toCut === null) throw new Error("nothing deeper");
      return { ...data, toCut: { ...data.toCut, ...deeper }, limits: { ...data.limits, leastClean: 0.999 } };
    });
    expect(worse.brief.asCut).toBeNull();
    const { state } = prepData(worse.brief, events);
    expect(state.steps.find(({ step }) => step.id === "charge-cap")).toMatchObject({
      status: "blocked",
      due: "before-it",
    });
  });
});
