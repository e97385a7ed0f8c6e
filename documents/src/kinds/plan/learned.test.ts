import { learn, learnedDelayAt, type TaughtFlight, withoutLearned } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoFiles, motor, plan, rocket } from "../../../test/fixtures.js";
import { loadPlan } from "../../load-plan.js";
import { planToEngine } from "../../to-engine.js";
import { issueLine } from "../../words/issues.en.js";
import { learnedFor, learnedToDocument, learnedToEngine } from "./learned-to-engine.js";

const priors = { dragScale: 0.15, totalImpulse: 0.03, delay: { seconds: 0.75, fraction: 0.1 } };
const flight = (set: number, delay: number, lot: string | null): TaughtFlight => ({
  rocket: "r",
  motor: "m",
  lot,
  climb: {
    lnDrag: 0.1,
    lnImpulse: -0.02,
    covariance: [
      [4e-4, 2e-4],
      [2e-4, 4e-4],
    ],
  },
  set,
  flown: { kind: "seen", delay, error: 0.1 },
});
const flights = [flight(10, 11, "x"), flight(8, 9.1, "x"), flight(12, 12.4, null)];
const learned = learn(flights, { rocket: "r", motor: "m", lot: "x" }, priors);
const names = { rocket: rocket.name, motor: motor.name };

async function planOf(change: Readonly<Record<string, unknown>>) {
  const { parts, issues } = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, ...change } }));
  if (parts === undefined) throw new Error(issues.map(issueLine).join("\n"));
  const made = planToEngine(parts);
  if (!made.ok) throw new Error(made.issues.map(issueLine).join("\n"));
  return made;
}

describe("learnedToDocument() and learnedToEngine()", () => {
  test("give back what was learned to six digits, and the very same once it was written", () => {
    const document = learnedToDocument(learned, { ...names, lot: "x" }, "2026-05-02T19:30");
    const back = learnedToEngine(document);
    expect(back.drag.mean).toBeCloseTo(learned.drag.mean, 5);
    expect(back.correlation).toBeCloseTo(learned.correlation, 5);
    expect(back.flights).toEqual({ rocket: 3, motor: 3, both: 3 });
    for (const set of [4, 9, 14]) {
      const [was, is] = [learnedDelayAt(learned.delay!, set), learnedDelayAt(back.delay!, set)];
      expect(is.mean).toBeCloseTo(was.mean, 4);
      expect(is.sd).toBeCloseTo(was.sd, 4);
      expect(is.degrees).toBe(was.degrees);
    }
    expect(learnedToDocument(back, { ...names, lot: "x" }, "2026-05-02T19:30")).toEqual(document);
    expect(JSON.parse(JSON.stringify(document))).toEqual(document);
  });
});

describe("a plan with what was learned", () => {
  test("reckons with it, and with nothing of it where it is taken out", async () => {
    const document = learnedToDocument(learned, names);
    const { inputs, warnings } = await planOf({ learned: document });
    const plain = await planOf({});
    expect(inputs.rocket.drag.scale).toBeCloseTo(plain.inputs.rocket.drag.scale * document.drag.factor, 12);
    expect(inputs.spread.dragScale).toBe(document.drag.sd);
    expect(inputs.learned?.delay?.seen).toBe(3);
    expect(withoutLearned(inputs)).toEqual(plain.inputs);
    expect(warnings).toEqual(plain.warnings);
  });

  test("does not reckon with what was learned of another rocket, motor type or lot, and says so", async () => {
    const document = { ...learnedToDocument(learned, { ...names, lot: "x" }) };
    const codes = async (change: Readonly<Record<string, unknown>>) => {
      const { inputs, warnings } = await planOf(change);
      return {
        learned: inputs.learned,
        codes: warnings.map(({ code }) => code).filter((code) => /^learned/.test(code)),
      };
    };
    const otherRocket = await codes({ learned: { ...document, rocket: "Another" } });
    expect(otherRocket.codes).toContain("learned-of-another-rocket");
    expect(otherRocket.learned?.drag).toEqual({ mean: 0, sd: plan.spread.dragScale });
    expect(otherRocket.learned?.impulse.sd).toBe(document.impulse.sd);
    const otherMotor = await codes({ learned: { ...document, motor: "Another" } });
    expect(otherMotor.codes).toEqual(["learned-of-another-motor"]);
    expect(otherMotor.learned).not.toHaveProperty("delay");
    const neither = await codes({ learned: { ...document, rocket: "A", motor: "B" } });
    expect(neither.learned).toBeUndefined();
    const otherLot = await codes({ learned: document });
    expect(otherLot.codes).toEqual(["learned-of-another-lot"]);
    expect(otherLot.learned?.delay?.mean[2]).toBe(0);
  });

  test("knows its lot by that of the motor in hand", () => {
    const document = learnedToDocument(learned, { ...names, lot: "x" });
    const share = (lot: string) => learnedFor(document, { ...names, lot }, priors)?.delay?.mean[2];
    expect(share("x")).toBeCloseTo(learned.delay!.mean[2], 5);
    expect(share("y")).toBe(0);
  });

  test("refuses what cannot be", async () => {
    const document = { ...learnedToDocument(learned, names), correlation: 2, drag: { factor: 0, sd: -1 } };
    const { issues } = await loadPlan("plan.json", demoFiles({ "plan.json": { ...plan, learned: document } }));
    expect(issues.map(({ path }) => path)).toEqual(
      expect.arrayContaining(["learned.correlation", "learned.drag.factor", "learned.drag.sd"]),
    );
  });
});
