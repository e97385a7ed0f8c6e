import { describe, expect, test } from "vitest";
import type { PlanWindow } from "../compute/index.js";
import { inventedSetting, inventedTold } from "../standing/invented.js";
import { edgeNote, edgeOf, type PadStanding, padWords, pastEdgeWords } from "./pad-words.js";

const plain = (text: string | undefined): string => (text ?? "").replace(/\s/gu, " ");

const cut = inventedSetting({ end: null, spacers: [], depth: 0.004 });
const asCut = (odds: Partial<typeof cut.odds> = {}, data: object = {}, wind = 2.2) => {
  const setting = { ...cut, odds: { ...cut.odds, ...odds } };
  return inventedTold({
    data: {
      settings: [setting],
      toCut: { ...setting, reachesLeast: true, reachesHolds: true },
      given: { delayKind: "adjustable", removedDepth: 0.004, guide: { tilt: 0 } },
      ...data,
    },
    facts: { element: { kind: "adjustable", removedDepth: 0.004 }, wind: { speed: wind, from: 4, height: 2 } },
  });
};
const drift = { id: "landing-inside", code: "landing-inside", verdict: "stop", value: 0.6, limit: 0.5, unit: "odds" };
const byOdds = (wind: number | null, beyond = false) => ({ wind, beyond, by: beyond ? null : "clean", check: null });
const windowOf = (end: object) => ({ tilts: [0, 0.1], ends: [end, byOdds(1)], winds: [0, 8] }) as unknown as PlanWindow;
const window = (edge: number | null, beyond = false) => windowOf(byOdds(edge, beyond));
const drifting = windowOf({ wind: 3.2, beyond: false, by: "rule", check: { ...drift, sense: "most" } });
const standing = (more: Partial<PadStanding> = {}): PadStanding => ({
  told: asCut(),
  window: window(4.74),
  age: { taken: "10:40", minutes: 12, stale: false },
  hand: "Bag 3",
  readAt: "2026-05-02T11:04",
  units: "metric",
  ...more,
});

describe("padWords()", () => {
  test("says whose cut it is, and that it is good up to a wind that stays true", () => {
    const words = padWords(standing());
    expect(plain(words.head)).toBe("Bag 3 is cut to 9 s");
    expect(plain(words.detail)).toBe("Demo H150, 4.0 mm out, read at 11:04");
    expect(plain(words.answer)).toBe("Yes, to 4.5 m/s");
    expect(words.note).toBeNull();
    expect(plain(padWords(standing({ units: "imperial" })).answer)).toBe("Yes, to 10 mph");
    expect(plain(padWords(standing({ window: window(8, true) })).answer)).toBe("Yes, past 8 m/s");
    expect(padWords(standing({ window: null })).answer).toBe("Yes");
  });

  test("does not say yes while a check says stop", () => {
    const checks = [{ code: "ceiling", verdict: "stop", value: 1, limit: 0, unit: "m", source: "" }];
    const words = padWords(standing({ told: asCut({}, { checks }) }));
    expect(words.answer).toBe("No: see the plan");
    expect(words.note?.lead).toBe("One check says stop.");
    expect(words.act).toBe("plan");
  });

  test("is good up to where a check says stop, and past it waits for less wind by that check", () => {
    expect(plain(padWords(standing({ window: drifting })).answer)).toBe("Yes, to 3 m/s");
    const stopped = asCut({}, { checks: [drift] }, 4.2);
    const over = padWords(standing({ told: stopped, window: drifting }));
    expect(over).toMatchObject({ answer: "No: wait", act: null });
    expect(plain(over.note?.lead)).toBe("Over the edge by 1.2 m/s.");
    expect(plain(over.note?.text)).toBe(
      "Past the edge a check says stop: opened landings outside the field, most 50 %.",
    );
    // another check is not mended by less wind
    const both = asCut({}, { checks: [drift, { ...drift, id: "ceiling", code: "ceiling" }] }, 4.2);
    const twice = padWords(standing({ told: both, window: drifting }));
    expect(twice).toMatchObject({ answer: "No: see the plan", note: { lead: "One check says stop." }, act: "plan" });
    expect(padWords(standing({ told: asCut({}, {}, 3.3), window: drifting })).answer).toBe("Yes, at the edge");
    // found at 4.4, said as 4: at 4.2 it is good still, and nobody is told "to 4"
    expect(padWords(standing({ told: asCut({}, {}, 4.2), window: window(4.4) })).answer).toBe("Yes, at the edge");
    expect(plain(padWords(standing({ told: asCut({}, {}, 3.9), window: window(4.4) })).answer)).toBe("Yes, to 4 m/s");
  });

  test("waits for a new wind when the reading is old", () => {
    const words = padWords(standing({ age: { taken: "10:40", minutes: 74, stale: true } }));
    expect(words).toMatchObject({ answer: "Read the wind", oddsNote: "clean at 10:40", act: "read" });
  });

  test("a reading of another day, or none, is no reading at the pad", () => {
    for (const age of [null, { taken: "10:40", minutes: null, stale: false }]) {
      const words = padWords(standing({ age }));
      expect(words).toMatchObject({ answer: "Read the wind", act: "read" });
      expect(words.note?.lead).toBe("The wind was not read today.");
    }
  });

  test("says by how much the wind is over the edge", () => {
    const words = padWords(standing({ told: asCut({ clean: 0.73, lateFast: 0.2, earlyFast: 0.02 }, {}, 5.54) }));
    expect(words.answer).toBe("No: wait");
    expect(plain(words.note?.lead)).toBe("Over the edge by 1.0 m/s.");
    expect(words.note?.text).toBe("Of 100: early fast 2, late fast 20.");
    expect(plain(words.oddsNote)).toBe("clean, least 80 %");
  });

  test("sends back to the plan before the cut and after an over-cut", () => {
    const before = padWords(standing({ told: inventedTold() }));
    expect(before).toMatchObject({ head: "Bag 3 is not cut yet", answer: "Not cut yet", act: "plan" });
    const best = { mass: 0.36, clean: 0.81, holds: 1 };
    const overCut = {
      delay: 8.3,
      ballast: [{ from: 0.36, to: 0.8, untriedBeyond: false, at: 0.2, best, checks: [] }],
      rockets: [],
      doNotFly: false,
    };
    const over = padWords(standing({ told: asCut({ clean: 0.56 }, { overCut }) }));
    expect(plain(over.head)).toBe("Bag 3 is over-cut: 8.3 s");
    expect(over).toMatchObject({ answer: "No: cut too deep", act: "plan" });
    expect(over.note?.lead).toBe("Do not fly Bag 3 like this.");
    expect(plain(over.note?.text)).toBe("360 g of ballast at 200 mm brings 81 %.");
  });

  test("has no question for a motor without delay", () => {
    expect(padWords(standing({ told: inventedTold({ data: { toCut: null, settings: [] } }) })).answer).toBe("No delay");
  });
});

describe("edgeNote()", () => {
  const winds = { state: "waiting", window: null, fresh: false, failure: null } as const;

  test("says that the edge follows only while other winds are flown", () => {
    expect(edgeNote(asCut(), winds)).toBe("The edge follows: other winds are being flown.");
    expect(edgeNote(asCut(), { ...winds, state: "off" })).toBe("The edge follows: other winds are being flown.");
    expect(edgeNote(asCut(), { ...winds, state: "ready", window: window(4.5) })).toBe("");
  });

  test("says why there is none", () => {
    const without = inventedTold({ data: { toCut: null, settings: [] } });
    for (const state of ["off", "waiting", "ready"] as const)
      expect(edgeNote(without, { ...winds, state })).toBe("A motor without delay has no edge of wind.");
    expect(edgeNote(asCut(), { ...winds, state: "wrong" })).toBe(
      "The edge is not known while a field of the plan is wrong.",
    );
    const failed = { ...winds, state: "failed", failure: "It stopped." } as const;
    expect(edgeNote(asCut(), failed)).toBe("The edge is not known. It stopped.");
    expect(edgeNote(asCut(), { ...failed, window: window(4.5) })).toBe("The edge is that of before. It stopped.");
  });
});

test("edgeOf() takes the edge of the lean nearest to the guide's", () => {
  expect(edgeOf(window(4.5), 0.02)).toEqual(byOdds(4.5));
  expect(edgeOf(window(4.5), 0.09)).toEqual(byOdds(1));
  expect(edgeOf(null, 0)).toBeNull();
});

test("pastEdgeWords() says what ends it", () => {
  const said = (end: object) =>
    plain(pastEdgeWords(edgeOf(windowOf(end), 0)!, { leastClean: 0.8, leastHolds: 0.99 } as never, "metric"));
  expect(said(byOdds(4.5))).toBe("Past the edge clean is below 80 %.");
  expect(said({ ...byOdds(4.5), by: "holds" })).toBe("Past the edge holds is below 99.0 %.");
  expect(said(byOdds(null))).toBe("In any wind clean is below 80 %.");
  expect(said(byOdds(8, true))).toBe("");
});
