import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { calmPlan, plan } from "../../test/plan.js";
import { bayFindings } from "../packing/bay-findings.js";
import { shareOutside } from "../packing/landing-zone.js";
import { noSpread } from "../spread/drawn-values.js";
import { decide } from "./decide.js";
import type { Decision } from "./decision.js";
import { prepareFlightSample } from "./flight-sample.js";
import { flightSampleSpec } from "./flight-sample-spec.js";
import type { DecisionInputs } from "./inputs.js";

const bay = { diameter: 0.072, length: 0.25, pins: [{ size: "2-56", count: 2 }] };
const boundary = { kind: "circle", east: 0, north: 0, radius: 150 } as const;
const windy: DecisionInputs = {
  ...calmPlan,
  wind: windFrom(4, 200),
  fieldLimits: { boundary, keepOff: [{ kind: "circle", east: 0, north: 0, radius: 50 }], ceiling: 5000 },
  packing: {
    bay,
    motorCharge: { mass: 0.001, wellHolds: 0.0014 },
    fittingsStrength: 900,
    options: { landingSpeed: 6 },
  },
};
const check = (decision: Decision, id: string) => decision.checks.find((each) => each.id === id);

test("decide() packs by what is stated, and knows nothing of what is not", async () => {
  const { packing, checks } = await decide(windy, { draws: 64 });
  expect(packing.bay).toEqual(bayFindings(bay, { motorCharge: { mass: 0.001, wellHolds: 0.0014 }, margin: 1.5 }));
  expect(packing.staticPorts?.of).toBe("bay");
  expect(packing.options.landingSpeed).toBe(6);
  expect(checks.find(({ code }) => code === "charge-in-well")).toMatchObject({ verdict: "pass", value: 0.001 });
  const bare = await decide({ ...windy, packing: {} }, { draws: 64 });
  expect(bare.packing).toMatchObject({ bay: null, staticPorts: null, stillShut: null });
  expect(check(bare, "charge-in-well")).toMatchObject({ verdict: "not-checked", missing: ["charge", "wellHolds"] });
});

test("decide() loads the first opening at the speed that 19 in 20 stay below, and lands as the nominal flight does", async () => {
  const decision = await decide(windy, { draws: 256 });
  const { packing, opened, settings, toCut } = decision;
  const setting = settings.find(({ delay }) => delay === toCut!.delay)!;
  expect(packing.firstOpeningAt).toBe("p95");
  expect(packing.openings.map(({ which, airspeed }) => [which, airspeed])).toEqual([
    ["main", setting.openingSpeed!.p95],
  ]);
  expect(packing.openings[0]!.weakest).toEqual({ part: "fittings", strength: 900 });
  expect(packing.landing).toMatchObject({ speedFrom: "flown", speed: opened!.landing!.groundSpeed });
  expect(packing.landing.sections[0]!.energy).toBeCloseTo(opened!.landing!.energy, 9);
  const { motor, rocket } = windy;
  expect(packing.landing.sections[0]!.mass).toBeCloseTo(rocket.mass + motor.loadedMass - motor.propellantMass, 12);
  expect(check(decision, "landing-energy")?.value).toBeCloseTo(opened!.landing!.energy, 9);
});

test("decide() asks to look at a landing that is half as fast again as is usual, and says stop at a drogue's speed", async () => {
  const { recovery } = windy;
  const under = async (diameter: number) => {
    const canopy = { ...recovery.main.canopy, diameter };
    const plan = { ...windy, recovery: { ...recovery, main: { ...recovery.main, canopy } } };
    return check(await decide(plan, { draws: 16 }), "landing-speed");
  };
  const usual = recovery.main.canopy.diameter;
  expect(await under(usual)).toMatchObject({ verdict: "pass", limit: 9 });
  // a diameter in centimetres that was meant in inches: 2.54 times as fast
  expect(await under(usual / 2.54)).toMatchObject({ verdict: "look", limit: 9 });
  expect(await under(usual / 4)).toMatchObject({ verdict: "stop", limit: 15 });
});

test("decide() takes the fittings' strength for the recovery's where it is the weakest", async () => {
  const strengthWith = async (fittingsStrength: number) =>
    (await decide({ ...windy, packing: { fittingsStrength } }, { draws: 16 })).strength;
  const [weak, strong] = [await strengthWith(200), await strengthWith(9000)];
  expect(weak.speed).toBeLessThan(strong.speed);
  // the load grows with the square of the speed: 200 N against the canopy's 4000 N
  expect(strong.speed / weak.speed).toBeCloseTo(Math.sqrt(4000 / 200), 9);
});

test("decide() lands the draws opened and unopened, and holds both against the field", async () => {
  const decision = await decide(windy, { draws: 512 });
  const { opened, unopened } = decision.packing.landings;
  expect([opened!.draws, unopened.draws]).toEqual([128, 512]);
  // the same draws as those of the picture, whose nominal flight is another: a draw at the very edge may fall either way
  const setting = decision.settings.find(({ delay }) => delay === decision.toCut!.delay)!;
  const sample = prepareFlightSample(flightSampleSpec(windy, setting))(0, 128);
  expect(Math.abs(opened!.outside! - shareOutside(sample.opened, boundary))).toBeLessThan(0.02);
  // downwind of the pad, and drifting further opened than unopened
  expect(opened!.p95!.north).toBeGreaterThan(unopened.p95!.north);
  expect(opened!.outside!).toBeGreaterThan(0.5);
  expect(check(decision, "landing-inside")).toMatchObject({ verdict: "stop", value: opened!.outside, limit: 0.5 });
  expect(check(decision, "landing-inside-unopened")?.value).toBe(unopened.outside);
  expect(check(decision, "keep-off-zones-unopened")?.value).toBe(unopened.keepOff);
  expect(decision.unopened.ellipse95).toEqual(unopened.p95);
});

test("decide() opens, packs and lands at the flyer's own choice, and leaves the suggestion as it is", async () => {
  const own: DecisionInputs = { ...windy, choice: { delay: 14, reason: "trees" } };
  const [plain, chosen] = [await decide(windy, { draws: 256 }), await decide(own, { draws: 256 })];
  expect(chosen.toCut).toEqual(plain.toCut);
  expect(chosen.toCut!.delay).not.toBe(14);
  expect(chosen.settings).toEqual(plain.settings);
  expect(chosen.drivers).toEqual(plain.drivers);
  // an element that cannot be set otherwise says what the choice comes to
  const set = { ...own.motor, delay: { kind: "fixed", seconds: 14, clock: "burnout" } } as const;
  const alone = await decide({ ...windy, motor: set }, { draws: 256 });
  expect(chosen.opened!.landing).toEqual(alone.opened!.landing);
  expect(chosen.opened!.landing!.time).not.toBeCloseTo(plain.opened!.landing!.time, 0);
  expect(chosen.packing.landings).toEqual(alone.packing.landings);
  expect(chosen.packing.landings.opened).not.toEqual(plain.packing.landings.opened);
  const setting = chosen.choice!.setting;
  expect(chosen.packing.openings.map(({ airspeed }) => airspeed)).toEqual([setting.openingSpeed!.p95]);
  expect(check(chosen, "opening-speed")?.value).toBe(setting.openingSpeed!.p90);
  expect(check(chosen, "landing-inside")?.value).toBe(alone.packing.landings.opened!.outside);
  expect(check(chosen, "descent-time")).toEqual(check(alone, "descent-time"));
  expect(chosen.unopened.odds).toBe(setting.odds.grounded);
  // the checks of the suggestion's odds are of the suggestion
  expect(check(chosen, "below-least-clean")).toEqual(check(plain, "below-least-clean"));
  expect(await decide(own, { draws: 256, stages: [16, 64] })).toMatchObject({
    packing: chosen.packing,
    checks: chosen.checks,
  });
});

test("decide() goes by the suggestion where the flyer's own choice cannot be made", async () => {
  const [plain, chosen] = [
    await decide(windy, { draws: 64 }),
    await decide({ ...windy, choice: { delay: 13.5 } }, { draws: 64 }),
  ];
  expect(chosen.choice).toBeNull();
  expect(chosen.packing).toEqual(plain.packing);
  expect(chosen.opened!.landing).toEqual(plain.opened!.landing);
});

test("decide() asks of cutting what the flyer's own choice asks for", async () => {
  const { delay } = windy.motor;
  const motor = { ...windy.motor, delay: { ...delay, cuttingConfirmed: false } as typeof delay };
  const verdict = async (own: number) =>
    check(await decide({ ...windy, motor, choice: { delay: own } }, { draws: 16 }), "instructions-not-confirmed")
      ?.verdict;
  expect(await verdict(14)).toBeUndefined();
  expect(await verdict(10)).toBe("stop");
});

test("decide() knows before its last stage only where the unopened come down", async () => {
  const parts: Decision[] = [];
  await decide(windy, { draws: 64, stages: [16], onPart: (part) => parts.push(part) });
  expect(parts).toHaveLength(1);
  expect(parts[0]!.packing.landings).toMatchObject({ opened: null, unopened: { draws: 16 } });
  expect(check(parts[0]!, "landing-inside")).toMatchObject({ verdict: "not-checked", missing: ["outsideOpened"] });
  expect(check(parts[0]!, "landing-inside-unopened")?.verdict).not.toBe("not-checked");
});

test("decide() says of landings nothing where nothing opens, and is not asked for them without a field", async () => {
  const late = { ...windy.motor, delay: { kind: "fixed", seconds: 60, clock: "burnout" } } as const;
  const grounded = await decide({ ...windy, motor: late }, { draws: 32 });
  expect(grounded.packing).toMatchObject({ firstOpeningAt: null, openings: [], landings: { opened: null } });
  expect([check(grounded, "landing-inside"), check(grounded, "keep-off-zones")]).toEqual([undefined, undefined]);
  const plugged = await decide({ ...windy, motor: { ...windy.motor, delay: { kind: "none" } } }, { draws: 32 });
  expect(plugged.packing.bay?.motorCharge).toBeNull();
  expect(check(plugged, "opening-strength-unrated")).toBeUndefined();
  const nowhere = await decide({ ...plan, spread: noSpread }, { draws: 1 });
  expect(check(nowhere, "landing-inside")).toMatchObject({ verdict: "not-checked" });
  expect(nowhere.packing.landings.opened).toMatchObject({ draws: 1, p95: null, outside: null });
  const none = await decide({ ...windy, fieldLimits: { boundary, keepOff: [] } }, { draws: 16 });
  expect(check(none, "keep-off-zones-unopened")).toBeUndefined();
});

test("decide() is held against the rule set of its plan", async () => {
  const stormy = { ...calmPlan, wind: windFrom(9, 200) };
  const byDefault = await decide(stormy, { draws: 16 });
  expect(check(byDefault, "wind-limit")).toMatchObject({
    code: "wind-limit",
    verdict: "stop",
    limit: 20 * 0.44704,
    unit: "m/s",
    sense: "most",
    status: "verified",
    details: [],
    missing: [],
  });
  expect(byDefault.checks.map(({ verdict }) => verdict)).toEqual(
    [...byDefault.checks.map(({ verdict }) => verdict)].sort(
      (a, b) => ["stop", "look", "not-checked", "pass"].indexOf(a) - ["stop", "look", "not-checked", "pass"].indexOf(b),
    ),
  );
  expect(check(await decide({ ...stormy, ruleSet: "none" }, { draws: 16 }), "wind-limit")).toBeUndefined();
  const club = { name: "Demo club", limits: { "wind-limit": { stop: 10 } } };
  const loose = await decide({ ...stormy, ruleSet: club }, { draws: 16 });
  expect(check(loose, "wind-limit")).toMatchObject({ verdict: "pass", status: "the club's own" });
});
