import { describe, expect, test } from "vitest";
import type { PlanWindow } from "../compute/index.js";
import { inventedSetting, inventedTold } from "../standing/invented.js";
import { edgeOf, type PadStanding, padWords } from "./pad-words.js";

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
const window = (edge: number | null, beyond = false) =>
  ({ tilts: [0, 0.1], edges: [edge, 1], beyond: [beyond, false], winds: [0, 8] }) as unknown as PlanWindow;
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
    expect(plain(words.note?.lead)).toBe("Over the edge by 0.8 m/s.");
    expect(words.note?.text).toBe("Of 100: early fast 2, late fast 20.");
    expect(plain(words.oddsNote)).toBe("clean, least 80 %");
  });

  test("sends back to the plan before the cut and after an over-cut", () => {
    const before = padWords(standing({ told: inventedTold() }));
    expect(before).toMatchObject({ head: "Bag 3 is not cut yet", answer: "Not cut yet", act: "plan" });
    const best = { mass: 0.36, clean: 0.81, holds: 1 };
    const overCut = {
      delay: 8.3,
      ballast: [{ from: 0.36, to: 0.8, at: 0.2, best, checks: [] }],
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

test("edgeOf() takes the edge of the lean nearest to the guide's", () => {
  expect(edgeOf(window(4.5), 0.02)).toEqual({ wind: 4.5, beyond: false });
  expect(edgeOf(window(4.5), 0.09)).toEqual({ wind: 1, beyond: false });
  expect(edgeOf(null, 0)).toBeNull();
});
