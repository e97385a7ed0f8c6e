import { expect, test } from "vitest";
import { windFrom } from "../../reference/trajectories/inputs.js";
import { heavyPlan } from "../../test/plan.js";
import { decide } from "./decide.js";
import type { Check, CheckCode, Odds, Setting } from "./decision.js";
import type { DecisionInputs } from "./inputs.js";
import { judgeSettings, type OddsOptions, runHere } from "./odds.js";
import { type OtherRocket, overCutAdvice } from "./over-cut.js";
import { achievableSettings, type Element } from "./removals.js";

const options: OddsOptions = { draws: 128, seed: 1, flight: {}, run: runHere };
const perSecond = 0.79375e-3;

/** The heavy rocket whose element was cut by so many seconds. */
function overCut(seconds: number): { inputs: DecisionInputs; plan: ReturnType<typeof achievableSettings>[number] } {
  const inputs = { ...heavyPlan, cutSoFar: { removedDepth: seconds * perSecond, depthError: 0.1e-3 } };
  const [plan] = achievableSettings(inputs.motor.delay as Element, inputs.tool, inputs.cutSoFar);
  return { inputs, plan: plan! };
}

async function oddsAt(seconds: number, mass: number): Promise<Odds> {
  const { inputs, plan } = overCut(seconds);
  const there = { ...inputs, ballast: { mass, at: inputs.rocket.nose.length } };
  return (await judgeSettings(there, [plan], options)).settings[0]!.odds;
}

async function asItIs(seconds: number): Promise<Setting> {
  const { inputs, plan } = overCut(seconds);
  return (await judgeSettings(inputs, [plan], options)).settings[0]!;
}

async function advice(seconds: number, deeperIsGood = false, rockets: readonly OtherRocket[] = []) {
  return overCutAdvice(overCut(seconds).inputs, await asItIs(seconds), deeperIsGood, rockets, options);
}

test("overCutAdvice() finds the ballast that brings an element back, out to where the odds reach their least", async () => {
  const { ballast, clean, delay, doNotFly } = await advice(4);
  expect(delay).toBeCloseTo(10, 9);
  expect(clean).toBeLessThan(0.1);
  expect(doNotFly).toBe(false);
  expect(ballast).toHaveLength(1);
  const [range] = ballast;
  expect(range!.from).toBeGreaterThan(0);
  expect(range!.to).toBeGreaterThan(range!.from);
  expect(range!.at).toBe(heavyPlan.rocket.nose.length);
  // the lower edge is halved to some grams: good there, and no longer good 10 g below it
  expect((await oddsAt(4, range!.from)).clean).toBeGreaterThanOrEqual(0.8);
  expect((await oddsAt(4, range!.from - 0.01)).clean).toBeLessThan(0.8);
  // the upper edge is where the search ends: half of the lift-off mass
  expect(range!.to).toBeCloseTo(0.5 * 2.4, 9);
  expect(range!.untriedBeyond).toBe(true);
  expect((await oddsAt(4, range!.to)).holds).toBeGreaterThanOrEqual(0.99);
  expect(range!.checks.map((c) => c.code)).toEqual(
    expect.arrayContaining(["thrust-to-weight", "guide-exit-speed", "margin-at-guide-exit", "margin-at-burnout"]),
  );
});

test("overCutAdvice() tells an edge where the odds fall again within the search from the end of the search", async () => {
  const { inputs } = overCut(2);
  const strict = { ...inputs, limits: { ...inputs.limits, leastClean: 0.97 } };
  const [range] = (await overCutAdvice(strict, await asItIs(2), false, [], options)).ballast;
  expect(range!.to).toBeLessThan(0.5 * 2.4);
  expect(range!.untriedBeyond).toBe(false);
});

test("overCutAdvice() finds with the ballast what decide finds of where and how hard it lands with it", async () => {
  const { inputs } = overCut(4);
  const field = { boundary: { kind: "circle", east: 0, north: 0, radius: 60 }, keepOff: [] } as const;
  const small = { ...inputs, fieldLimits: field };
  const { ballast, doNotFly } = await overCutAdvice(small, await asItIs(4), false, [], options);
  const { checks, best, at } = ballast[0]!;
  const there = await decide({ ...small, ballast: { mass: best.mass, at } }, { draws: options.draws, seed: 1 });
  const verdicts = (found: readonly Check[], code: CheckCode) =>
    found.filter((check) => check.code === code).map(({ verdict }) => verdict);
  for (const code of ["landing-energy", "landing-inside", "landing-inside-unopened"] as const)
    expect(verdicts(checks, code), code).toEqual(verdicts(there.checks, code));
  expect(verdicts(checks, "landing-energy")).toEqual(["look"]);
  expect(verdicts(checks, "landing-inside")).toEqual(["stop"]);
  // what a check stops makes nothing good
  expect(doNotFly).toBe(true);
});

test.each(["aligned", "pitching"] as const)(
  "overCutAdvice() lands by the model that was asked for: %s",
  async (model) => {
    const { inputs, plan } = overCut(4);
    const boundary = { kind: "circle", east: 0, north: 0, radius: 80 } as const;
    const windy = { ...inputs, wind: windFrom(2, 200), fieldLimits: { boundary, keepOff: [] } };
    const asked = { ...options, flight: { model } };
    const setting = (await judgeSettings(windy, [plan], asked)).settings[0]!;
    const { ballast } = await overCutAdvice(windy, setting, false, [], asked);
    const { checks, best, at } = ballast[0]!;
    const { draws, seed } = options;
    const there = await decide({ ...windy, ballast: { mass: best.mass, at } }, { draws, seed, model });
    const outside = (found: readonly Check[]) => found.find(({ code }) => code === "landing-inside")?.value;
    expect(outside(checks)).toBe(outside(there.checks));
    // the two models turn it into the wind by so much that one lands outside twice as often as the other
    expect(outside(checks)! > 0.75).toBe(model === "pitching");
  },
);

test("overCutAdvice(): the best mass of a range has the best odds in it", async () => {
  const { ballast } = await advice(3);
  const [range] = ballast;
  const middle = await oddsAt(3, 0.5 * (range!.from + range!.to));
  expect(range!.best.clean).toBeGreaterThanOrEqual(middle.clean - 0.02);
});

test("overCutAdvice() says do not fly where nothing brings the element back", async () => {
  const { ballast, doNotFly } = await advice(9);
  expect(ballast).toEqual([]);
  expect(doNotFly).toBe(true);
  expect((await advice(9, true)).doNotFly).toBe(false);
});

test("overCutAdvice() names other rockets that the element suits, and only those that the motor fits", async () => {
  const { recovery, rocket } = heavyPlan;
  const loaded = { ...rocket, mass: 2.8 };
  const rockets: OtherRocket[] = [
    { name: "heavier", rocket: loaded, recovery },
    { name: "same", rocket, recovery },
    { name: "narrow mount", rocket: { ...loaded, mount: { ...loaded.mount, diameter: 0.029 } }, recovery },
    { name: "wide mount", rocket: { ...loaded, mount: { ...loaded.mount, diameter: 0.054 } }, recovery },
    { name: "too heavy to lift", rocket: { ...loaded, mass: 60 }, recovery },
  ];
  const { rockets: suited } = await advice(4, false, rockets);
  expect(suited.map((s) => s.name)).toEqual(["heavier"]);
  expect(suited[0]!.clean).toBeGreaterThanOrEqual(0.8);
  expect(suited[0]!.stops).toBe(false);
});
