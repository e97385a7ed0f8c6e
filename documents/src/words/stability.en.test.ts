import { describe, expect, test } from "vitest";
import type { StabilityData } from "../answer/stability-data.js";
import type { SteadinessData, SwingData } from "../answer/steadiness-data.js";
import { guideExitAngleSentence, stabilityCells, stabilityHeads, stabilityVerdictSentences } from "./stability.en.js";
import { modelsApartSentence, swingSentences } from "./steadiness.en.js";

const plain = (text: string | null): string => (text ?? "").replaceAll("\u00a0", " ");

const moment = {
  which: "guide-exit",
  time: 0.312,
  mach: 0.054,
  mass: 2.268,
  margin: 2.41,
  frequency: 2 * Math.PI,
  dampingRatio: 0.1234,
  angleOfAttack: Math.PI / 60,
} as const;
const stability: StabilityData = {
  moments: [moment],
  guideExitAngle: { mean: Math.PI / 36, highest: Math.PI / 18, gust: 1.34112 },
  findings: [],
  limits: { leastMargin: 1, mostMargin: 3, leastDamping: 0.05 },
  columns: {
    time: [],
    mach: [],
    mass: [],
    balance: [],
    cp: [],
    margin: [],
    frequency: [],
    dampingRatio: [],
    angleOfAttack: [],
  },
};
const swing = { from: 0.3, to: 2.3, time: 0.42, angle: Math.PI / 30, left: Math.PI / 900 };
const flown = (more: Partial<SwingData> = {}): SwingData => ({
  model: "rigid",
  ended: "landed",
  coast: 9.5,
  top: { time: 11.5, height: 600, airspeed: 8 },
  handOver: null,
  time: [],
  angleOfAttack: [],
  afterExit: swing,
  aroundBurnout: { from: 1, to: 3, time: 2.01, angle: Math.PI / 360, left: 0 },
  ...more,
});
const data: SteadinessData = {
  quick: flown({ model: "pitching" }),
  rigid: flown({ coast: 9.52, top: { time: 11.52, height: 601.3, airspeed: 8 } }),
  rough: flown({ coast: 9.4, top: { time: 11.4, height: 596, airspeed: 8 } }),
  seed: 5,
  calm: false,
  stability,
  overMach: { mach: [], loaded: [], empty: [] },
};

const verdictOf = (...findings: StabilityData["findings"]) =>
  stabilityVerdictSentences({ ...stability, findings }).map(plain);

describe("words of the stability", () => {
  test("stabilityVerdictSentences() names over-stable and under-damped with figure, limit and where it comes from", () => {
    const both = verdictOf(
      { code: "over-stable", value: 3.44, limit: 3, time: 2.1, from: 1.8, to: 2.6 },
      { code: "under-damped", value: 0.0412, limit: 0.05, time: 10.2, from: 9, to: 11 },
    );
    expect(both[0]).toContain(
      "Over-stable: its margin reaches 3.4 calibres 2.1 s after ignition, above 3.0 (common practice, no source).",
    );
    expect(both[1]).toContain(
      "Under-damped: its damping ratio falls to 0.041 10.2 s after ignition, below 0.05 (from memory).",
    );
  });

  test("stabilityVerdictSentences() says from when to when it is unstable, or its margin small", () => {
    const said = verdictOf(
      { code: "unstable", value: -0.5, limit: 0, time: 0.24, from: 0.24, to: 11.51 },
      { code: "low-margin", value: 0.84, limit: 1, time: 1.9, from: 1.2, to: 3.36 },
    );
    expect(said[0]).toContain(
      "Unstable: its centre of pressure lies ahead of its balance point between 0.2 and 11.5 s after ignition, at worst by 0.5 calibres, after 0.2 s.",
    );
    expect(said[1]).toContain(
      "Its margin falls to 0.84 calibres 1.9 s after ignition, and is below 1.0, the least that is asked for, between 1.2 and 3.4 s.",
    );
  });

  test("stabilityVerdictSentences() praises nothing where neither is found, and judges no rocket that stayed on the guide", () => {
    const [neither = ""] = stabilityVerdictSentences(stability).map(plain);
    expect(neither).toMatch(/^Neither unstable, over-stable nor under-damped as reckoned: .*1\.0 and 3\.0.*0\.05/);
    expect(neither).not.toMatch(/\bsafe|stable flight|good\b/i);
    expect(stabilityVerdictSentences({ ...stability, moments: [] })).toEqual([
      "It never left the guide: there is no swing to judge.",
    ]);
  });

  test("a code newer than the words speaks for itself", () => {
    const finding = { code: "rolls-through" as "over-stable", value: 1, limit: 1, time: 1, from: 1, to: 1 };
    expect(stabilityVerdictSentences({ ...stability, findings: [finding] })).toEqual(["rolls through."]);
  });

  test("guideExitAngleSentence() says the gust in the flyer's units, and none in a calm", () => {
    expect(plain(guideExitAngleSentence(stability))).toBe(
      "Leaving the guide, the air meets it at 5.0 deg, at most 10.0 deg with a gust of 1.3 m/s across (twice the turbulence's intensity in the day's wind).",
    );
    // 3 mph are 1.34112 m/s
    expect(plain(guideExitAngleSentence(stability, "imperial"))).toContain("a gust of 3 mph across");
    const calm = { ...stability, guideExitAngle: { mean: 0, highest: 0, gust: 0 } };
    expect(plain(guideExitAngleSentence(calm))).toBe("Leaving the guide, the air meets it at 0.0 deg.");
    expect(guideExitAngleSentence({ ...stability, guideExitAngle: null })).toBeNull();
  });

  test("stabilityCells() stand under their heads, in the flyer's units, with a dash where nothing swings", () => {
    expect(stabilityCells(moment)).toEqual(["guide exit", "0.31", "0.05", "2.27", "2.41", "1.00", "0.123", "3.0"]);
    expect(stabilityHeads()).toHaveLength(8);
    // 2.268 kg are 5.00 lb
    expect(stabilityHeads("imperial")[3]).toBe("mass\nlb");
    expect(stabilityCells(moment, "imperial")[3]).toBe("5.00");
    const still = { ...moment, frequency: 0, dampingRatio: 0, angleOfAttack: null };
    expect(stabilityCells(still).slice(5)).toEqual(["–", "–", "–"]);
  });
});

describe("words of the models beside each other", () => {
  test("modelsApartSentence() says how far the tops lie apart, and the coasts", () => {
    expect(plain(modelsApartSentence(data))).toBe(
      "The rigid model reaches the top 0.02 s later than the default model, 1.3 m higher: it coasts 9.52 s, the default model 9.50 s. In turbulence (seed 5) 0.10 s sooner, 4.0 m lower, a coast of 9.40 s; other seeds give other gusts.",
    );
    expect(plain(modelsApartSentence(data, "imperial"))).toContain("4 ft higher");
  });

  test("modelsApartSentence() says so where they agree, in a calm, and where one has no top", () => {
    const same = plain(modelsApartSentence({ ...data, rigid: data.quick, calm: true }));
    expect(same).toContain(
      "the top within a hundredth of a second of the default model, at the same height: it coasts 9.50 s",
    );
    expect(same).toContain("A calm makes no turbulence.");
    expect(modelsApartSentence({ ...data, rigid: flown({ top: null, coast: null }) })).toBe(
      "Not every model reaches a top: their flights can't be compared.",
    );
  });

  test("swingSentences() say the angles after the guide and around burnout, in turbulence with its seed", () => {
    expect(swingSentences(data).map(plain)).toEqual([
      "After the guide it swings up to 6.0 deg, 0.42 s after ignition; 0.2 deg left at 2.3 s.",
      "Around burnout, 1.0 s to 3.0 s, it swings up to 0.5 deg, 2.01 s after ignition.",
      "In turbulence (seed 5): after the guide up to 6.0 deg, around burnout up to 0.5 deg.",
    ]);
    expect(swingSentences({ ...data, calm: true })).toHaveLength(2);
    expect(plain(swingSentences({ ...data, quick: flown({ handOver: 4.04 }) }).at(-1) ?? "")).toBe(
      "The default model counts the swing as settled after 4.0 s, and flies nose-first.",
    );
  });
});
