import { describe, expect, test } from "vitest";
import { inventedDocuments, inventedPart, inventedSetting, inventedTold } from "../standing/invented.js";
import { type SheetStanding, sectionStates } from "./section-state.js";

const standing = (more: Partial<SheetStanding> = {}): SheetStanding => ({
  documents: inventedDocuments({}, { weather: { wind: "2 m/s" } }),
  issues: [],
  told: inventedTold(),
  age: null,
  next: null,
  units: "metric",
  ...more,
});
const states = (more: Partial<SheetStanding> = {}) =>
  Object.fromEntries(
    sectionStates(standing(more)).map(({ id, mark, aside }) => [id, `${mark}: ${aside.replace(/\s/gu, " ")}`]),
  );

describe("sectionStates()", () => {
  test("says of each section how far it has come", () => {
    expect(states()).toEqual({
      rocket: "full: 1.95 kg, no motor",
      motor: "full: Demo H150",
      field: "full: wind 2 m/s",
      delay: "full: 9 s, 93 % clean",
      cut: "open: no motor in hand, not cut yet",
      packing: "open: not known yet",
      checks: "full: all within",
      prep: "open: not known yet",
      card: "full: ready to print",
      debrief: "open: not flown yet",
    });
  });

  test("marks the next section, and what is missing or wrong in one", () => {
    const issues = [
      { file: "demo-76.rocket.json", path: "length", code: "missing", found: "", accepted: "", example: "" },
    ];
    const next = { words: "", short: "", section: "rocket", field: { path: "", field: "" } } as const;
    expect(states({ issues })["rocket"]).toBe("part: something missing");
    expect(states({ issues, next })["rocket"]).toBe("now: something missing");
  });

  test("knows an old reading of the wind, and a field without one", () => {
    const age = { taken: "10:40", minutes: 74, stale: true };
    expect(states({ age })["field"]).toBe("part: wind 2 m/s, 74 min ago");
    expect(states({ documents: inventedDocuments() })["field"]).toBe("part: no wind given");
    expect(states({ units: "imperial" })["field"]).toBe("full: wind 4 mph");
  });

  test("says of a charge behind electronics that it opens clean alone", () => {
    const told = inventedTold({ data: { settings: [inventedSetting({ firesFirst: 0.02 })] } });
    expect(states({ told })["delay"]).toBe("full: 9 s, 93 % clean alone");
  });

  test("tells a cut from an over-cut", () => {
    const inHand = inventedPart("bag-3.motor-in-hand.json", { name: "Bag 3" });
    const cut = inventedSetting({ end: null, spacers: [], depth: 0.004 });
    const data = {
      settings: [cut],
      toCut: { ...cut, reachesLeast: true, reachesHolds: true },
      given: { delayKind: "adjustable", removedDepth: 0.004 },
    };
    const documents = inventedDocuments({ inHand });
    expect(states({ documents, told: inventedTold({ data }) })["cut"]).toBe("full: Bag 3, cut");
    const told = inventedTold({ data: { ...data, overCut: { delay: 6 } } });
    expect(states({ documents, told })["cut"]).toBe("part: Bag 3, over-cut");
  });

  test("says how far the prep sheet has come", () => {
    const prep = (flight: object | null, state: object) => ({ flight, data: { state } }) as SheetStanding["prep"];
    const steps = [{ status: "signed" }, { status: "open" }];
    const begun = { steps, flown: false, next: "cut" };
    expect(states({ prep: prep(null, begun) ?? null })["prep"]).toBe("open: not begun");
    expect(states({ prep: prep({ raw: {} }, begun) ?? null })["prep"]).toBe("part: 1 of 2 signed");
    const flown = { steps, flown: true, next: null };
    expect(states({ prep: prep({ raw: {} }, flown) ?? null })["prep"]).toBe("full: flown, and all signed");
  });

  test("says how the flight went, once that is known", () => {
    const prep = (raw: object) =>
      ({
        flight: { path: "", name: "", raw },
        data: { state: { steps: [], flown: true, next: null } },
      }) as unknown as SheetStanding["prep"];
    const debrief = (raw: object) => states({ prep: prep(raw) ?? null })["debrief"];
    expect(debrief({})).toBe("open: not debriefed yet");
    expect(debrief({ findings: { outcome: "clean", apogee: "612 m" } })).toBe("full: clean, top 612 m");
    expect(debrief({ findings: {}, excluded: { reason: "two fins gone" } })).toBe("full: left out");
  });

  test("counts the checks that say stop or look", () => {
    const check = (verdict: string) => ({ code: "ceiling", verdict, value: 1, limit: 0, unit: "m", source: "" });
    expect(states({ told: inventedTold({ data: { checks: [check("look")] } }) })["checks"]).toBe("part: 1 says look");
    const told = inventedTold({ data: { checks: [check("stop"), check("stop"), check("look")] } });
    expect(states({ told })["checks"]).toBe("part: 2 say stop");
  });
});
