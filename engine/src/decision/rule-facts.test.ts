import { describe, expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { plan } from "../../test/plan.js";
import { settingWith } from "../../test/settings.js";
import { fly } from "../flight/fly.js";
import type { FlightResult } from "../flight/result.js";
import type { RuleFacts } from "../rules/facts.js";
import { checksOf } from "./checks.js";
import type { CheckCode, Stability } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { cuttingFacts, flightFacts, type Judged, oddsFacts } from "./rule-facts.js";
import { cutAllowed } from "./settings.js";
import { stabilityOf } from "./stability.js";
import { windNearGround } from "./wind-near-ground.js";

const degree = Math.PI / 180;
const flight = fly(plan, { tolerance: 1e-6 });
const stability = stabilityOf(flight);
const factsOf = (change: Partial<DecisionInputs> = {}, flown = flight, stable: Stability = stability, top = 800) =>
  flightFacts({ ...plan, ...change }, flown, stable, top);

test("flightFacts() are those of rocket, motor, guide and day", () => {
  const facts = factsOf();
  // reference flight (d): an I motor of 505.75 N s, 289 N over 1.75 s, or 293.85 N over its 5 % burn (check values, section 4)
  expect(facts.totalImpulse).toBeCloseTo(505.75, 6);
  expect(facts.motorClass).toBe("I");
  expect(facts.highPower).toBe(true);
  expect(facts.complex).toBe(false);
  expect(facts.liftOffMass).toBeCloseTo(plan.rocket.mass + plan.motor.loadedMass, 12);
  expect(facts.thrustToWeight).toBeCloseTo(293.84899 / (facts.liftOffMass! * flight.model.gravityAt(0)), 5);
  expect(facts.windSpeed).toBeCloseTo(windNearGround(plan), 12);
  expect(facts.height95).toBe(800);
  expect(facts.marginAtBurnout).toEqual({ least: stability.burnout.calibres, most: stability.burnout.calibres });
  // ballast counts
  const ballast = { mass: 1.4, at: 0.3 };
  const heavy = { ...plan, ballast };
  expect(factsOf({ ballast }, fly(heavy, { tolerance: 1e-6 })).liftOffMass).toBeCloseTo(facts.liftOffMass! + 1.4, 12);
});

test("flightFacts() leave out what nobody said", () => {
  const facts = factsOf();
  const unknown: (keyof RuleFacts)[] = [
    "ceiling",
    "highestAllowed",
    "tiltSector",
    "siteSmallest",
    "siteEdgeDistance",
    "peopleDistance",
    "charge",
    "wellHolds",
    "certifiedAverageThrust",
    "certification",
    "cloudBase",
  ];
  for (const name of unknown) expect(Object.hasOwn(facts, name), name).toBe(false);
  expect(Object.hasOwn(factsOf({ stated: { windRead: false } }), "windSpeed")).toBe(false);
});

test("flightFacts() pass on what is stated, and take a label's average thrust for the certified one", () => {
  const stated = { certification: 2, cloudBase: null, roadDistance: null, fireMeans: true } as const;
  const motor = { ...plan.motor, designation: "I289-14" };
  expect(factsOf({ stated, motor })).toMatchObject({ ...stated, certifiedAverageThrust: 289 });
});

test("flightFacts() know the field by its outline, unless it is stated otherwise", () => {
  const boundary = { kind: "circle", east: 0, north: 100, radius: 400 } as const;
  const people = [[{ east: 60, north: 0 }]];
  const fieldLimits = { boundary, people, ceiling: 900, keepOff: [] };
  expect(factsOf({ fieldLimits })).toMatchObject({
    siteSmallest: 800,
    siteEdgeDistance: 300,
    peopleDistance: 60,
    ceiling: 900,
    highestAllowed: 900,
  });
  const stated = { siteSmallest: 500, peopleDistance: 40 };
  expect(factsOf({ fieldLimits, stated })).toMatchObject(stated);
  // without a ceiling the field allows what the flight reaches
  expect(factsOf({ stated: { ceiling: null } })).toMatchObject({ ceiling: null, highestAllowed: 800 });
  const polygon = [
    { east: -50, north: -60 },
    { east: 50, north: -60 },
    { east: 0, north: 200 },
  ];
  const shaped = factsOf({ fieldLimits: { boundary: { kind: "polygon", points: polygon } } });
  // a triangle is narrowest over its longest side: twice its area over that side
  expect(shaped.siteSmallest).toBeCloseTo(26_000 / Math.hypot(50, 260), 9);
  const dented = [...polygon, { east: 0, north: 0 }];
  expect(factsOf({ fieldLimits: { boundary: { kind: "polygon", points: dented } } }).siteSmallest).toBeUndefined();
  expect(shaped.siteEdgeDistance).toBeGreaterThan(0);
});

test("flightFacts() know of a charge what is stated, and that a plugged motor has none", () => {
  expect(factsOf({ packing: { motorCharge: { mass: 0.001, wellHolds: 0.0014 } } })).toMatchObject({
    hasCharge: true,
    electronics: false,
    charge: 0.001,
    wellHolds: 0.0014,
  });
  const motor = { ...plan.motor, delay: { kind: "none" } } as const;
  expect(factsOf({ motor })).toMatchObject({ hasCharge: false, charge: null, wellHolds: null });
});

const near = 1e-6;

function exitingAt(speed: number): FlightResult {
  const exit = flight.events.guideExit!;
  return { ...flight, events: { ...flight.events, guideExit: { ...exit, velocity: [0, 0, speed] } } };
}

function withMargins(atExit: number, atBurnout: number, inFlight = 2): Stability {
  return {
    ...stability,
    guideExit: { ...stability.guideExit, calibres: atExit },
    burnout: { ...stability.burnout, calibres: atBurnout },
    inFlight: {
      least: { ...stability.inFlight.least, calibres: inFlight },
      most: { ...stability.inFlight.most, calibres: inFlight },
    },
  };
}

/** What a decision's own figures say on both sides of a limit. */
const rows: readonly (readonly [
  code: CheckCode,
  inputs: Partial<DecisionInputs>,
  flown: FlightResult,
  stable: Stability,
  verdict: "pass" | "look" | "stop" | undefined,
])[] = [
  // common practice, no source
  ["guide-exit-speed", {}, exitingAt(10 - near), stability, "stop"],
  ["guide-exit-speed", {}, exitingAt(15), stability, "pass"],
  ["guide-exit-speed", {}, { ...flight, events: { ...flight.events, guideExit: null } }, stability, "stop"],
  // wind of 5 m/s: 15 and 20 m/s (check values, section 12: 4 x wind, 20 m/s governs; common practice, no source)
  ["guide-exit-against-wind", {}, exitingAt(15 - near), stability, "stop"],
  ["guide-exit-against-wind", {}, exitingAt(20 - near), stability, "look"],
  ["guide-exit-against-wind", {}, exitingAt(20 + near), stability, "pass"],
  ["margin-at-guide-exit", {}, flight, withMargins(1 - near, 2), "look"],
  ["margin-at-burnout", {}, flight, withMargins(2, 1), "pass"],
  ["margin-in-flight", {}, flight, withMargins(2, 2, 1 - near), "look"],
  ["over-stable", {}, flight, withMargins(2, 3 + near), "look"],
  ["over-stable", {}, flight, withMargins(2, 2, 3 + near), "look"],
  ["cp-ahead-of-balance", {}, flight, withMargins(2, 2, -0.1), "stop"],
  ["cp-ahead-of-balance", {}, flight, withMargins(2, -0.1), "stop"],
  // 20 miles an hour, 20 deg: High Power Rocket Safety Code; no launch beyond them
  ["wind-limit", { wind: windFrom(8.9409, 0) }, flight, stability, "stop"],
  ["wind-limit", { wind: windFrom(8.9407, 0) }, flight, stability, "pass"],
  ["tilt-limit", { guide: { travel: 1, tilt: 20.01 * degree, toward: 0 } }, flight, stability, "stop"],
  ["tilt-limit", { guide: { travel: 1, tilt: 19.99 * degree, toward: 0 } }, flight, stability, "pass"],
  ["ceiling", { fieldLimits: { ceiling: 799.9 } }, flight, stability, "stop"],
  ["ceiling", { fieldLimits: { ceiling: 800 } }, flight, stability, "pass"],
  ["ceiling", { stated: { ceiling: null } }, flight, stability, undefined],
];

test("flightFacts() lead to the verdicts of the rules", () => {
  expect(rows).toHaveLength(20);
  for (const [code, change, flown, stable, verdict] of rows) {
    const found = checksOf(factsOf(change, flown, stable)).filter((check) => check.code === code);
    expect(found[0]?.verdict, `${code}, ${verdict}`).toBe(verdict);
  }
});

test("cuttingFacts() ask for confirmed instructions that name the tool at hand, only where something is cut", () => {
  const stops = (inputs: DecisionInputs, removed: number | null) =>
    checksOf(cuttingFacts(inputs, removed))
      .filter(({ verdict }) => verdict === "stop")
      .map(({ code }) => code);
  expect(cuttingFacts(plan, null)).toEqual({ cuts: false });
  expect(cuttingFacts({ ...plan, motor: { ...plan.motor, delay: { kind: "none" } } }, 3)).toEqual({ cuts: false });
  expect(stops(plan, 3)).toEqual([]);
  const { delay } = plan.motor;
  if (delay.kind !== "adjustable") throw new Error("not adjustable");
  const change = (d: Partial<typeof delay>): DecisionInputs => ({
    ...plan,
    motor: { ...plan.motor, delay: { ...delay, ...d } },
  });
  const unconfirmed = change({ cuttingConfirmed: false });
  const other = change({ toolNamed: "another tool" });
  const { toolNamed: _, ...unnamed } = delay;
  expect(stops(unconfirmed, 3)).toEqual(["instructions-not-confirmed"]);
  expect(stops(other, 3)).toEqual(["tool-not-named"]);
  expect(stops({ ...plan, motor: { ...plan.motor, delay: unnamed } }, 3)).toEqual(["instructions-not-confirmed"]);
  expect([plan, unconfirmed, other].map(cutAllowed)).toEqual([true, false, false]);
  // the maker's limit, and what must stay in
  expect(stops(change({ mostRemoved: 4 }), 4)).toEqual([]);
  expect(stops(change({ mostRemoved: 4 }), 4.01)).toEqual(["removal-within-limit"]);
  expect(cuttingFacts(change({ mostRemoved: 12, leastLeft: 4 }), 3).mostRemoved).toBe(10);
  expect(cuttingFacts(plan, 3).mostRemoved).toBeNull();
});

describe("cuttingFacts() of an element that was cut before, with nothing more to come off", () => {
  const { delay } = plan.motor;
  if (delay.kind !== "adjustable") throw new Error("not adjustable");
  const perSecond = 0.79375e-3;
  const read = (seconds: number, d: Partial<typeof delay> = {}): DecisionInputs => ({
    ...plan,
    motor: { ...plan.motor, delay: { ...delay, ...d } },
    cutSoFar: { removedDepth: seconds * perSecond, depthError: 0.1 * perSecond },
  });
  const verdicts = (inputs: DecisionInputs) =>
    Object.fromEntries(checksOf(cuttingFacts(inputs, null)).map(({ code, verdict }) => [code, verdict]));

  test("hold the maker's rules against what was taken out", () => {
    expect(verdicts(read(5, { cuttingConfirmed: false }))["instructions-not-confirmed"]).toBe("stop");
    expect(verdicts(read(5, { toolNamed: "another tool" }))["tool-not-named"]).toBe("stop");
    expect(verdicts(read(5, { mostRemoved: 4 }))["removal-within-limit"]).toBe("stop");
    expect(verdicts(read(5, { leastLeft: 10 }))["removal-within-limit"]).toBe("stop");
    expect(verdicts(read(5, { mostRemoved: 8 }))).toMatchObject({
      "instructions-not-confirmed": "pass",
      "tool-not-named": "pass",
      "removal-within-limit": "pass",
    });
    // a depth was read before the cut, none after it
    expect(cuttingFacts(read(0), null)).toEqual({ cuts: false });
  });

  test("take no element for over a limit by the reading's own error, two sigma of 0.1 s", () => {
    expect(cuttingFacts(read(5.19, { mostRemoved: 5 }), null).removed).toBe(5);
    expect(verdicts(read(5.19, { mostRemoved: 5 }))["removal-within-limit"]).toBe("pass");
    expect(cuttingFacts(read(5.21, { mostRemoved: 5 }), null).removed).toBeCloseTo(5.21, 9);
    expect(verdicts(read(5.21, { mostRemoved: 5 }))["removal-within-limit"]).toBe("stop");
  });

  test("do not take for known what is not: with which tool, or how many seconds, it was cut", () => {
    const { tool: _, ...toolless } = read(5, { mostRemoved: 8, depthPerSecond: perSecond });
    expect(verdicts(toolless)).toMatchObject({ "tool-not-named": "not-checked", "removal-within-limit": "pass" });
    const { tool: __, ...unknownGrain } = read(5, { mostRemoved: 8 });
    expect(verdicts(unknownGrain)["removal-within-limit"]).toBe("not-checked");
  });
});

const best = settingWith(10, { clean: 0.9, holds: 0.995 });
const judged: Judged = {
  settings: [settingWith(14, { holds: 0.999 }), best],
  setting: best,
  flown: best,
  goodEnough: true,
  choice: null,
  overCut: null,
  opened: null,
  topAt: 12,
  strengthRated: true,
  drawsNotFlown: 0,
  coast: 10,
};

test("oddsFacts() are those of the settings as judged", () => {
  expect(oddsFacts(plan, judged)).toMatchObject({
    bestHolds: 0.999,
    clean: 0.9,
    firesFirst: null,
    reachableDelays: { least: 10, most: 14 },
    wantedDelay: null,
    choice: null,
    overCut: null,
    strengthRated: true,
    descentTime: null,
  });
});

test("oddsFacts() ask for the delay that opens at the top only where no setting is good enough", () => {
  const { lineStretch } = plan.recovery;
  expect(oddsFacts(plan, { ...judged, goodEnough: false }).wantedDelay).toBeCloseTo(10 - lineStretch, 12);
  const backUp = { ...judged, setting: { ...best, firesFirst: 0.2 }, goodEnough: false };
  expect(oddsFacts(plan, backUp)).toMatchObject({ wantedDelay: null, clean: null, firesFirst: 0.2 });
});

test("oddsFacts() know a delay that is fixed, as that of a card typed off, from one that is to be cut", () => {
  const motor = { ...plan.motor, delay: { kind: "fixed", seconds: 9, clock: "burnout" } } as const;
  expect(oddsFacts({ ...plan, motor }, judged).delayFixed).toBe(true);
  expect(oddsFacts(plan, judged).delayFixed).toBe(false);
});

test("oddsFacts() of a motor without delay know that there is nothing to judge", () => {
  const none = oddsFacts(plan, { ...judged, settings: [], setting: null, flown: null });
  expect(none).toMatchObject({
    bestHolds: null,
    clean: null,
    openingSpeed90: null,
    strengthRated: null,
    reachableDelays: null,
  });
});

test("oddsFacts() hold the flyer's own setting, made or not", () => {
  const inputs = { ...plan, choice: { delay: 9 } };
  expect(oddsFacts(inputs, judged).choice).toEqual({ delay: 9, odds: null });
  expect(oddsFacts(inputs, { ...judged, choice: { setting: best, reason: null } }).choice).toMatchObject({
    delay: 9,
    odds: { clean: 0.9, holds: 0.995 },
  });
});

test("checksOf() takes the rule set that is asked for", () => {
  const facts = factsOf({ wind: windFrom(7, 0) });
  const wind = (set: Parameters<typeof checksOf>[1]) => checksOf(facts, set).find(({ code }) => code === "wind-limit");
  expect(wind(undefined)?.verdict).toBe("pass");
  expect(wind("none")).toBeUndefined();
  const club = { name: "Demo club", limits: { "wind-limit": { stop: 6 } } };
  expect(wind(club)).toMatchObject({ verdict: "stop", limit: 6, status: "the club's own" });
});

test("windNearGround() is the reading of either kind of wind", () => {
  expect(windNearGround({ wind: windFrom(7, 200) })).toBeCloseTo(7, 12);
  const aloft = { kind: "aloft", heights: [2, 500], east: [3, 20], north: [4, 20] } as const;
  expect(windNearGround({ wind: aloft })).toBe(5);
});
