import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { plan, usualLimits } from "../../test/plan.js";
import { settingWith } from "../../test/settings.js";
import { fly } from "../flight/fly.js";
import type { FlightResult } from "../flight/result.js";
import { choiceCheck, cuttingChecks, flightChecks, oddsChecks, windNearGround } from "./checks.js";
import type { Check, CheckCode, Setting, Stability, ToCut } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { stabilityOf } from "./stability.js";

const degree = Math.PI / 180;
const flight = fly(plan, { tolerance: 1e-6 });
const stability = stabilityOf(flight);

function verdictOf(checks: readonly Check[], code: CheckCode): Check["verdict"] | undefined {
  const found = checks.filter((check) => check.code === code);
  expect(found.length, code).toBeLessThanOrEqual(1);
  return found[0]?.verdict;
}

function exitingAt(speed: number): FlightResult {
  const exit = flight.events.guideExit!;
  return { ...flight, events: { ...flight.events, guideExit: { ...exit, velocity: [0, 0, speed] } } };
}

function withMargins(atExit: number, atBurnout: number): Stability {
  return {
    ...stability,
    guideExit: { ...stability.guideExit, calibres: atExit },
    burnout: { ...stability.burnout, calibres: atBurnout },
  };
}

const near = 1e-6;

/** A check on both sides of each of its limits: what is judged, and what it must say. */
const rows: readonly (readonly [
  code: CheckCode,
  inputs: Partial<DecisionInputs>,
  flown: FlightResult,
  stable: Stability,
  top: number,
  verdict: Check["verdict"] | undefined,
])[] = [
  ["guide-exit-speed", {}, exitingAt(10 - near), stability, 0, "stop"],
  ["guide-exit-speed", {}, exitingAt(10), stability, 0, "look"],
  ["guide-exit-speed", {}, exitingAt(15 - near), stability, 0, "look"],
  ["guide-exit-speed", {}, exitingAt(15), stability, 0, "pass"],
  ["guide-exit-speed", {}, { ...flight, events: { ...flight.events, guideExit: null } }, stability, 0, "stop"],
  // wind of 5 m/s: 15 and 20 m/s (check values, section 12: 4 x wind, 20 m/s governs; common practice, no source)
  ["guide-exit-against-wind", {}, exitingAt(15 - near), stability, 0, "stop"],
  ["guide-exit-against-wind", {}, exitingAt(15 + near), stability, 0, "look"],
  ["guide-exit-against-wind", {}, exitingAt(20 - near), stability, 0, "look"],
  ["guide-exit-against-wind", {}, exitingAt(20 + near), stability, 0, "pass"],
  ["margin-at-guide-exit", {}, flight, withMargins(1 - near, 2), 0, "look"],
  ["margin-at-guide-exit", {}, flight, withMargins(1, 2), 0, "pass"],
  ["margin-at-burnout", {}, flight, withMargins(2, 1 - near), 0, "look"],
  ["margin-at-burnout", {}, flight, withMargins(2, 1), 0, "pass"],
  ["over-stable", {}, flight, withMargins(2, 3 + near), 0, "look"],
  ["over-stable", {}, flight, withMargins(3, 3), 0, "pass"],
  ["cp-ahead-of-balance", {}, flight, withMargins(0, 2), 0, "stop"],
  ["cp-ahead-of-balance", {}, flight, withMargins(2, -0.1), 0, "stop"],
  ["cp-ahead-of-balance", {}, flight, withMargins(near, near), 0, "pass"],
  // 20 miles an hour: High Power Rocket Safety Code
  ["wind-limit", { wind: windFrom(8.9409, 0) }, flight, stability, 0, "look"],
  ["wind-limit", { wind: windFrom(8.9407, 0) }, flight, stability, 0, "pass"],
  ["tilt-limit", { guide: { travel: 1, tilt: 20.01 * degree, toward: 0 } }, flight, stability, 0, "look"],
  ["tilt-limit", { guide: { travel: 1, tilt: 19.99 * degree, toward: 0 } }, flight, stability, 0, "pass"],
  ["ceiling", { fieldLimits: { ceiling: 1500 } }, flight, stability, 1500.1, "stop"],
  ["ceiling", { fieldLimits: { ceiling: 1500 } }, flight, stability, 1500, "pass"],
  ["ceiling", {}, flight, stability, 1e5, undefined],
];

test("flightChecks() judges on both sides of every limit", () => {
  expect(rows).toHaveLength(25);
  for (const [code, change, flown, stable, top, verdict] of rows) {
    const checks = flightChecks({ ...plan, ...change }, flown, stable, top);
    expect(verdictOf(checks, code), `${code}, ${verdict}`).toBe(verdict);
  }
});

test("flightChecks(): average thrust over lift-off weight stops below 3 and asks to look below 5", () => {
  const weight = 1.4 * flight.model.gravityAt(0);
  for (const [times, verdict] of [
    [3 - near, "stop"],
    [3 + near, "look"],
    [5 - near, "look"],
    [5 + near, "pass"],
  ] as const) {
    const burn = { ...flight.model.burn, averageThrust: times * weight };
    const checks = flightChecks(plan, { ...flight, model: { ...flight.model, burn } }, stability, 0);
    expect(verdictOf(checks, "thrust-to-weight"), `${times}`).toBe(verdict);
  }
  // ballast counts
  const heavy = { ...plan, ballast: { mass: 1.4, at: 0.3 } };
  const value = (inputs: DecisionInputs) =>
    flightChecks(inputs, fly(inputs, { tolerance: 1e-6 }), stability, 0).find((c) => c.code === "thrust-to-weight")!
      .value!;
  expect(value(heavy) / value(plan)).toBeCloseTo(0.5, 6);
});

test("flightChecks(): the guide may lean only inside the field's sector, over north too", () => {
  const leaning = (toward: number, from: number, to: number) => {
    const inputs: DecisionInputs = {
      ...plan,
      guide: { travel: 1.5, tilt: 3 * degree, toward: toward * degree },
      fieldLimits: { tiltSector: { from: from * degree, to: to * degree } },
    };
    return verdictOf(flightChecks(inputs, flight, stability, 0), "tilt-sector");
  };
  expect(leaning(45, 30, 60)).toBe("pass");
  expect(leaning(30, 30, 60)).toBe("pass");
  expect(leaning(60, 30, 60)).toBe("pass");
  expect(leaning(61, 30, 60)).toBe("stop");
  expect(leaning(29, 30, 60)).toBe("stop");
  expect(leaning(5, 340, 20)).toBe("pass");
  expect(leaning(355, 340, 20)).toBe("pass");
  expect(leaning(-5, 340, 20)).toBe("pass");
  expect(leaning(180, 340, 20)).toBe("stop");
  const upright = { ...plan, fieldLimits: { tiltSector: { from: 1, to: 2 } } };
  expect(verdictOf(flightChecks(upright, flight, stability, 0), "tilt-sector")).toBeUndefined();
});

test("windNearGround() is the reading of either kind of wind", () => {
  expect(windNearGround({ ...plan, wind: windFrom(7, 200) })).toBeCloseTo(7, 12);
  const aloft = { kind: "aloft", heights: [2, 500], east: [3, 20], north: [4, 20] } as const;
  expect(windNearGround({ ...plan, wind: aloft })).toBe(5);
});

function codes(checks: readonly Check[]): string[] {
  return checks.filter((c) => c.verdict === "stop").map((c) => c.code);
}

test("cuttingChecks() asks for confirmed instructions that name the tool at hand, only where something is cut", () => {
  expect(cuttingChecks(plan, false)).toEqual([]);
  expect(cuttingChecks({ ...plan, motor: { ...plan.motor, delay: { kind: "none" } } }, true)).toEqual([]);
  expect(codes(cuttingChecks(plan, true))).toEqual([]);
  const { delay } = plan.motor;
  if (delay.kind !== "adjustable") throw new Error("not adjustable");
  const change = (d: Partial<typeof delay>): DecisionInputs => ({
    ...plan,
    motor: { ...plan.motor, delay: { ...delay, ...d } },
  });
  expect(codes(cuttingChecks(change({ cuttingConfirmed: false }), true))).toEqual(["instructions-not-confirmed"]);
  expect(codes(cuttingChecks(change({ toolNamed: "another tool" }), true))).toEqual(["tool-not-named"]);
  const { toolNamed: _, ...unnamed } = delay;
  const inputs = { ...plan, motor: { ...plan.motor, delay: unnamed } };
  expect(codes(cuttingChecks(inputs, true))).toEqual(["instructions-not-confirmed"]);
});

const toCut: ToCut = {
  delay: 14,
  removed: 0,
  end: null,
  spacers: [],
  depth: 0,
  reachesLeast: true,
  reachesHolds: true,
  why: "best-odds",
  reasons: [],
  helps: [],
  homeCut: null,
  homeWeather: null,
};

test("oddsChecks() stops where no setting holds and asks to look below the least clean odds", () => {
  const judge = (best: Setting, others: readonly Setting[] = []) =>
    oddsChecks(plan, [best, ...others], toCut, best, true, 0);
  const at = (clean: number, holds: number) => settingWith(14, { lateFast: 1 - clean, clean, holds });
  expect(verdictOf(judge(at(0.8, 0.99)), "below-least-clean")).toBe("pass");
  expect(verdictOf(judge(at(0.8 - near, 0.99)), "below-least-clean")).toBe("look");
  expect(verdictOf(judge(at(0.8, 0.99)), "no-setting-holds")).toBe("pass");
  expect(verdictOf(judge(at(0.8, 0.99 - near)), "no-setting-holds")).toBe("stop");
  expect(verdictOf(judge(at(0.8, 0.5), [at(0.1, 0.99)]), "no-setting-holds")).toBe("pass");
});

test("oddsChecks() names an unrated recovery and flights that never came down", () => {
  const best = settingWith(14, {});
  expect(verdictOf(oddsChecks(plan, [best], toCut, best, true, 0), "opening-strength-unrated")).toBeUndefined();
  const unrated = oddsChecks(plan, [best], toCut, best, false, 0);
  expect(unrated.find((c) => c.code === "opening-strength-unrated")).toMatchObject({ verdict: "look", limit: 40 });
  expect(verdictOf(oddsChecks(plan, [best], toCut, best, true, 0), "draws-not-flown")).toBeUndefined();
  expect(verdictOf(oddsChecks(plan, [best], toCut, best, true, 1), "draws-not-flown")).toBe("stop");
});

test("oddsChecks(): a motor without a charge needs electronics", () => {
  expect(codes(oddsChecks(plan, [], null, null, true, 0))).toEqual(["no-charge"]);
  const electronics = { fires: "apogee", delay: 0 } as const;
  const inputs = { ...plan, recovery: { ...plan.recovery, electronics } };
  expect(oddsChecks(inputs, [], null, null, true, 0).map((c) => c.verdict)).toEqual(["pass"]);
});

test("choiceCheck() judges the flyer's own setting by both least odds", () => {
  const judge = (clean: number, holds: number) =>
    choiceCheck(settingWith(12, { lateFast: 1 - clean, clean, holds }), plan);
  expect(judge(0.8, 0.99).verdict).toBe("pass");
  expect(judge(0.79, 0.99)).toMatchObject({ verdict: "look", value: 0.79, limit: usualLimits.leastClean });
  expect(judge(0.9, 0.98)).toMatchObject({ verdict: "stop", value: 0.98, limit: usualLimits.leastHolds });
});
