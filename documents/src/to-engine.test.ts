import type { DecisionInputs } from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { bent, demoFiles, motor, motorInHand, plan, rocket, tool } from "../test/fixtures.js";
import { loadPlan } from "./load-plan.js";
import { planToEngine } from "./to-engine.js";
import { issueLine } from "./words/issues.en.js";

async function made(changed: Readonly<Record<string, unknown>> = {}) {
  const loaded = await loadPlan("plan.json", demoFiles(changed));
  if (loaded.parts === undefined) throw new Error(loaded.issues.map(issueLine).join("\n"));
  return planToEngine(loaded.parts);
}
async function inputsOf(changed: Readonly<Record<string, unknown>> = {}): Promise<DecisionInputs> {
  const result = await made(changed);
  if (!result.ok) throw new Error(result.issues.map(issueLine).join("\n"));
  return result.inputs;
}
async function issuesOf(changed: Readonly<Record<string, unknown>>): Promise<string[]> {
  const result = await made(changed);
  return result.ok ? [] : result.issues.map(issueLine);
}

describe("planToEngine()", () => {
  test("gives what the rigid model asks of a rocket, and nothing of it where it is not stated", async () => {
    const plain = (await inputsOf()).rocket;
    expect(plain).not.toHaveProperty("rollInertia");
    expect(plain.mount).not.toHaveProperty("thrustLine");
    expect(plain.finSets[0]).not.toHaveProperty("cant");
    const thrustLine = { angle: "0.2 deg", offset: "0.5 mm", toward: "90 deg" };
    const stated = {
      ...bent(rocket, ["fins", 0, "cant"], "-1 deg"),
      rollInertiaWithoutMotor: "0.003 kg m2",
      mount: { ...rocket.mount, thrustLine },
    };
    const { rocket: told } = await inputsOf({ "demo.rocket.json": stated });
    expect(told.rollInertia).toBeCloseTo(0.003, 15);
    expect(told.mount.thrustLine?.angle).toBeCloseTo((0.2 * Math.PI) / 180, 15);
    expect(told.mount.thrustLine?.offset).toBeCloseTo(0.0005, 15);
    expect(told.mount.thrustLine?.toward).toBeCloseTo(Math.PI / 2, 15);
    expect(told.finSets[0]?.cant).toBeCloseTo(-Math.PI / 180, 15);
  });

  test("gives the demo's figures in SI units", async () => {
    const inputs = await inputsOf();
    expect(inputs.air).toEqual({
      elevation: 210,
      latitude: 52.3 * (Math.PI / 180),
      temperature: 285.15,
      pressure: 98_700,
    });
    expect(inputs.rocket).toMatchObject({
      diameter: 0.076,
      length: 1.52,
      mass: 1.95,
      balance: 0.86,
      inertia: 0.36,
      inertiaSource: "given",
    });
    expect(inputs.rocket.finSets[0]?.shape).toEqual({
      kind: "trapezoid",
      root: 0.18,
      tip: 0.08,
      span: 0.09,
      sweep: 0.1,
    });
    expect(inputs.rocket.transitions).toEqual([{ at: 1.45, length: 0.07, aftDiameter: 0.06 }]);
    expect(inputs.motor.delay).toEqual({
      kind: "adjustable",
      longest: 14,
      mostRemoved: 8,
      leastLeft: 0,
      depthPerSecond: 0.0254 / 32,
      clock: "burnout",
      cuttingConfirmed: true,
      toolNamed: "Two-collar cutter (demo)",
    });
    expect(inputs.tool).toMatchObject({
      kind: "ends",
      depthError: 0.0002,
      ends: [{ name: "A", removes: { seconds: 6 } }, { name: "B" }],
    });
    expect(inputs.recovery).toMatchObject({
      motorCharge: "primary",
      lineStretch: 0.5,
      main: { strength: 1100 },
      harness: { length: 5 },
    });
    expect(inputs.limits).toEqual({ openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 });
    expect(inputs.fieldLimits.ceiling).toBe(900);
    expect(inputs.choice).toEqual({ delay: 9, reason: "landing before the trees" });
  });

  test("lets the wind blow from windFrom: from the west it goes east", async () => {
    const west = bent(bent(plan, ["weather", "windFrom"], "270 deg"), ["weather", "wind"], "5 m/s");
    const { wind } = await inputsOf({ "plan.json": west });
    expect(wind.kind === "power" && wind.east).toBeCloseTo(5, 12);
    expect(wind.kind === "power" && wind.north).toBeCloseTo(0, 12);
    expect(wind).toMatchObject({ referenceHeight: 2, exponent: 1 / 7, gradientHeight: 300 });
  });

  test("works out the travel: rail less stop less what the forward fitting sits before the tail", async () => {
    // Tail: the motor's aft end at 1.53 m; forward fitting at 0.95 m; 2.4 m of rail, stop at 0.15 m.
    expect((await inputsOf()).guide.travel).toBeCloseTo(2.4 - 0.15 - (1.53 - 0.95), 12);
    expect((await inputsOf({ "plan.json": { ...plan, guide: { travel: "1.8 m" } } })).guide.travel).toBe(1.8);
    // A swept fin that reaches behind motor and tube is the tail.
    const swept = bent(rocket, ["fins", 0, "sweep"], "250 mm");
    expect((await inputsOf({ "demo.rocket.json": swept })).guide.travel).toBeCloseTo(2.4 - 0.15 - (1.59 - 0.95), 12);
  });

  test("fills in every default, and says that no wind was given", async () => {
    const bare = {
      kind: "plan",
      version: 1,
      name: "bare",
      rocket: "demo.rocket.json",
      motor: "demo-h150.motor.json",
      guide: { travel: "2 m" },
    };
    const result = await made({ "plan.json": bare });
    expect(result.ok && result.warnings.map((warning) => warning.code)).toEqual(["wind-not-given"]);
    const inputs = await inputsOf({ "plan.json": bare });
    expect(inputs.air).toEqual({ elevation: 0, latitude: Math.PI / 4 });
    expect(inputs.wind).toEqual({
      kind: "power",
      east: 0,
      north: 0,
      referenceHeight: 2,
      exponent: 1 / 7,
      gradientHeight: 300,
    });
    expect(inputs.spread).toEqual({
      dragScale: 0.15,
      totalImpulse: 0.03,
      burnTime: 0.03,
      mass: 0.01,
      inertia: 0.05,
      balance: 0.005,
      guideTilt: Math.PI / 180,
      windSpeed: 0.2,
      windFrom: Math.PI / 12,
      windExponent: 0.05,
      windFloor: 0.7,
      temperature: 2,
      delay: { seconds: 0.75, fraction: 0.1 },
    });
    expect(inputs.limits).toEqual({ openingSpeed: 20, openingHeight: 100, leastClean: 0.8, leastHolds: 0.99 });
    expect(inputs.tool).toBeUndefined();
    expect(inputs.ballast).toEqual({ mass: 0, at: 0 });
  });

  test("makes every spread zero for none", async () => {
    const { spread } = await inputsOf({ "plan.json": { ...plan, spread: "none" } });
    expect(Object.values(spread).flatMap((each) => (typeof each === "number" ? [each] : Object.values(each)))).toEqual(
      Array(15).fill(0),
    );
  });

  test("takes a spread of temperature as a difference", async () => {
    const { spread } = await inputsOf({
      "plan.json": { ...plan, spread: { temperature: "9 degF", delay: { seconds: "0.5 s" } } },
    });
    expect(spread.temperature).toBeCloseTo(5, 12);
    expect(spread.delay).toEqual({ seconds: 0.5, fraction: 0.1 });
  });

  test("widens the inertia's spread where it is a guess, and works out a swing", async () => {
    const guess = await inputsOf({ "demo.rocket.json": bent(rocket, ["inertiaWithoutMotor"], undefined) });
    expect(guess.rocket.inertiaSource).toBe("estimated");
    expect(guess.spread.inertia).toBe(0.25);
    const measured = { swing: { strings: "1.2 m", apart: "0.8 m", period: "1.9 s" } };
    const swing = await inputsOf({ "demo.rocket.json": { ...rocket, inertiaWithoutMotor: measured } });
    // Bifilar pendulum: I = m g D² T² / (16 π² L), with WGS 84 gravity at 52.3 deg and 210 m, about 9.812 m/s².
    const expected = (1.95 * 9.812 * 0.64 * 3.61) / (16 * Math.PI ** 2 * 1.2);
    expect(swing.rocket.inertiaSource).toBe("swing");
    expect(Math.abs(swing.rocket.inertia / expected - 1)).toBeLessThan(1e-3);
    expect(swing.spread.inertia).toBe(0.05);
  });

  test("takes the motor out of a rocket that was weighed ready to fly", async () => {
    const { massWithoutMotor: _, balanceWithoutMotor: __, ...rest } = rocket;
    const motorAt = 1.53 - 0.205 / 2;
    const balance = (1.95 * 0.86 + 0.33 * motorAt) / 2.28;
    const ready = { ...rest, massReady: "2.28 kg", balanceReady: `${balance} m`, readyWith: "demo-h150.motor.json" };
    const inputs = await inputsOf({ "demo.rocket.json": ready });
    expect(inputs.rocket.mass).toBeCloseTo(1.95, 12);
    expect(inputs.rocket.balance).toBeCloseTo(0.86, 12);
    expect(await issuesOf({ "demo.rocket.json": { ...ready, massReady: "0.3 kg" } })).toEqual([
      'demo.rocket.json: massReady: "0.3 kg" found; more than the motor it was weighed with (330 g) is accepted',
    ]);
  });

  test("reduces pressure at sea level to the pad as in the standard atmosphere", async () => {
    const { pressure: _, ...weather } = plan.weather;
    const inputs = await inputsOf({
      "plan.json": { ...plan, weather: { ...weather, seaLevelPressure: "1013.25 hPa" } },
    });
    // U.S. Standard Atmosphere, 1976: 101 325 Pa (1 − 0.0065 H/288.15)^5.25588; geometric 210 m is geopotential 209.993 m.
    expect(Math.abs((inputs.air.pressure ?? 0) - 101_325 * (1 - (0.0065 * 209.993) / 288.15) ** 5.25588)).toBeLessThan(
      0.5,
    );
  });

  test("reads winds aloft, and no gradient height as none", async () => {
    const aloft = [
      { height: "0 m", wind: "2 m/s", from: "180 deg" },
      { height: "150 m", wind: "6 m/s", from: "270 deg" },
    ];
    const { wind } = await inputsOf({ "plan.json": { ...plan, weather: { aloft } } });
    expect(wind).toMatchObject({ kind: "aloft", heights: [0, 150] });
    expect(wind.kind === "aloft" && wind.east[1]).toBeCloseTo(6, 12);
    expect(wind.kind === "aloft" && wind.north[0]).toBeCloseTo(2, 12);
    const none = await inputsOf({ "plan.json": bent(plan, ["weather", "gradientHeight"], "none") });
    expect(none.wind.kind === "power" && none.wind.gradientHeight).toBe(Number.POSITIVE_INFINITY);
  });

  test("keeps the range of weather that a cut at home must leave room for", async () => {
    const range = { wind: ["0 m/s", "8 m/s"], temperature: ["5 degC", "25 degC"] };
    expect((await inputsOf({ "plan.json": { ...plan, weatherRange: range } })).weatherRange).toEqual({
      wind: [0, 8],
      temperature: [278.15, 298.15],
    });
    const windOnly = await inputsOf({ "plan.json": { ...plan, weatherRange: { wind: ["0 m/s", "8 m/s"] } } });
    expect(windOnly.weatherRange?.temperature).toEqual([285.15, 285.15]);
  });

  test("counts what was cut from the last depth, which a correction replaces", async () => {
    const inHand = (readings: unknown) => ({
      "plan.json": { ...plan, motor: "bag-3.json" },
      "bag-3.json": { ...motorInHand, readings },
    });
    const first = motorInHand.readings[0];
    expect((await inputsOf(inHand([first]))).cutSoFar?.removedDepth).toBeCloseTo(0.0024, 12);
    const deeper = { when: "2026-05-02T11:00", after: "25.4 mm" };
    expect((await inputsOf(inHand([first, deeper]))).cutSoFar?.removedDepth).toBeCloseTo(0.0032, 12);
    const corrected = { when: "2026-05-02T11:00", after: "24.2 mm", note: "caliper held aslant" };
    expect((await inputsOf(inHand([first, corrected]))).cutSoFar?.removedDepth).toBeCloseTo(0.002, 12);
    expect((await inputsOf(inHand([]))).cutSoFar).toBeUndefined();
    const impossible = { when: "2026-05-02T11:00", after: "20 mm", note: "whatever" };
    expect((await issuesOf(inHand([first, impossible])))[0]).toContain("nothing can be put back");
  });

  test("names the ceiling above the pad, whatever it counts from", async () => {
    const { field } = await import("../test/fixtures.js");
    const msl = { ...field, ceiling: { height: "1200 m", above: "sea level" } };
    expect((await inputsOf({ "larkmoor.field.json": msl })).fieldLimits.ceiling).toBe(990);
    expect((await inputsOf({ "larkmoor.field.json": { ...field, ceiling: "900 m" } })).fieldLimits.ceiling).toBe(900);
    expect(
      (await issuesOf({ "larkmoor.field.json": { ...field, ceiling: { height: "100 m", above: "sea level" } } }))[0],
    ).toContain("a ceiling above the pad");
  });

  const conflicts: readonly (readonly [string, Readonly<Record<string, unknown>>, string])[] = [
    [
      "a motor too large for the mount",
      { "demo-h150.motor.json": { ...motor, diameter: "54 mm" } },
      'demo-h150.motor.json: diameter: the motor is too large for the mount: "54 mm" found; no more than the mount\'s inner diameter, 38 mm is accepted',
    ],
    [
      "a curve that never lifts the rocket",
      { "demo-h150.motor.json": bent(motor, ["thrust", "newtons"], [0, 12, 19, 15, 4, 0]) },
      "demo-h150.motor.json: thrust: this motor never lifts the rocket: 19 N at most found; a thrust above the weight of Demo rocket 76 with this motor, 22.37 N is accepted",
    ],
    [
      "a rail without fittings",
      { "demo.rocket.json": bent(rocket, ["fittings"], undefined) },
      'plan.json: guide.travel: "2.4 m" found; the travel until the rocket is free, since the rocket names no fittings is accepted, for example "travel": "1.8 m"',
    ],
    [
      "a rail that is too short",
      { "plan.json": { ...plan, guide: { rail: "0.6 m", stop: "150 mm" } } },
      'plan.json: guide.rail: "0.6 m" found; a rail on which the forward fitting can travel; it starts beyond the rail\'s end is accepted, for example "travel": "1.8 m"',
    ],
    [
      "a tool for another grain",
      { "two-collar.tool.json": { ...tool, depthPerSecond: "1/16 in" } },
      'two-collar.tool.json: depthPerSecond: motor and tool disagree about the grain: "1/16 in" found; "1/32 in" within 2 %, as the motor has it, or removals given as depths: the tool\'s seconds are for another grain is accepted, for example "removes": "3.2 mm"',
    ],
    [
      "a choice above the longest delay",
      { "plan.json": bent(plan, ["choice", "delay"], "15 s") },
      'plan.json: choice.delay: "15 s" found; no more than the longest delay, 14 s is accepted',
    ],
    [
      "fins that hang off the tube, which the engine refuses",
      { "demo.rocket.json": bent(rocket, ["fins", 0, "at"], "1.45 m") },
      'demo.rocket.json: fins[0].at: "1.45 m" found; 0 … 1.34 m, so that the root ends on the body is accepted',
    ],
    [
      "an ogive that is too blunt",
      { "demo.rocket.json": bent(rocket, ["nose", "length"], "1 in") },
      'demo.rocket.json: nose.length: "1 in" found; length ≥ 0.5 diameters is accepted, for example "76 mm"',
    ],
  ];
  test.each(conflicts)("says what is wrong with %s", async (_, changed, line) => {
    expect(await issuesOf(changed)).toContain(line);
  });

  test("takes a tool for another grain whose removals are depths", async () => {
    const depths = { ...tool, depthPerSecond: "1/16 in", ends: [{ name: "A", removes: "4.8 mm" }], spacers: [] };
    expect((await inputsOf({ "two-collar.tool.json": depths })).tool).toMatchObject({
      ends: [{ removes: { depth: 0.0048 } }],
    });
  });

  test("names what stands beside the figures", async () => {
    const result = await made({ "plan.json": { ...plan, motor: "bag-3.json" } });
    expect(result.ok && result.context).toEqual({
      plan: "Demo rocket, third flight",
      rocket: "Demo rocket 76",
      motor: "Demo H150",
      tool: "Two-collar cutter (demo)",
      field: "Larkmoor",
      designation: "H150-14",
      maker: "invented for the demo",
      motorInHand: "Bag 3",
      label: "3",
      lot: "L-17",
      date: "2026-05-02",
      weatherTaken: "10:40",
      windGiven: true,
    });
  });
});
