import { describe, expect, test } from "vitest";
import { candidate, openPlan } from "../../../test/shortlist.js";
import { burnOf } from "../../motor/burn.js";
import { decide } from "../decide.js";
import { roughFlight } from "../odds.js";
import { flightFacts } from "../rule-facts.js";
import { stabilityOf } from "../stability.js";
import { type Candidate, type OpenPlan, planWith } from "./candidate.js";
import { judgeMotor } from "./judge-motor.js";
import type { RankedMotor } from "./judged-motor.js";
import { judgeUnflown } from "./unflown.js";

const draws = 128;
/** Nothing lands outside it. */
const wideField: OpenPlan = {
  ...openPlan,
  fieldLimits: { boundary: { kind: "circle", east: 0, north: 0, radius: 5000 }, keepOff: [] },
};
const judged = (plan: OpenPlan, motor: Candidate) => judgeMotor({ plan, draws, seed: 3, model: "pitching" }, motor);
const codes = async (plan: OpenPlan, motor: Candidate = candidate("it")) => {
  const found = await judged(plan, motor);
  return found.outcome === "refused" ? found.refusals.map(({ code }) => code) : [found.outcome];
};
const ranked = async (plan: OpenPlan, motor: Candidate): Promise<RankedMotor> => {
  const found = await judged(plan, motor);
  if (found.outcome !== "ranked") throw new Error(JSON.stringify(found));
  return found;
};

describe("judgeMotor()", () => {
  test.each([
    ["as it is", openPlan, candidate("it")],
    [
      "in wind",
      { ...openPlan, wind: { ...openPlan.wind, kind: "power", east: 2, north: 1 } as OpenPlan["wind"] },
      candidate("it", 0.7),
    ],
    ["with a fixed delay", openPlan, candidate("it", 1, { delay: { kind: "fixed", seconds: 10, clock: "burnout" } })],
    [
      "that is not confirmed to be cut",
      openPlan,
      candidate("it", 1, {
        delay: {
          kind: "adjustable",
          longest: 14,
          mostRemoved: 8,
          leastLeft: 2,
          clock: "burnout",
          cuttingConfirmed: false,
        },
      }),
    ],
    [
      "without spread of its own",
      { ...openPlan, spread: { ...openPlan.spread, delay: { seconds: 0, fraction: 0 } } },
      candidate("it", 1.1),
    ],
  ] as const)("gives a motor %s the figures that decide gives it", async (_, plan, motor) => {
    const found = await judged(plan, motor);
    const whole = await decide(planWith(plan, motor), { draws, seed: 3 });
    if (found.outcome === "broken" || found.drawn === null || found.launch === null) throw new Error("it was flown");
    expect(found.drawn.height).toEqual(whole.apogeeHeight);
    const best = whole.settings.find(({ delay }) => delay === whole.toCut?.delay);
    expect(found.drawn.toCut).toEqual({
      ...best,
      why: whole.toCut?.why,
      reachesLeast: whole.toCut?.reachesLeast,
      reachesHolds: whole.toCut?.reachesHolds,
    });
    const exit = whole.checks.find(({ code }) => code === "guide-exit-speed")?.value ?? 0;
    expect(Math.abs(found.launch.guideExitSpeed / exit - 1)).toBeLessThan(1e-4);
    expect(found.launch.marginAtGuideExit).toBeCloseTo(whole.stability.guideExit.calibres, 3);
    expect(found.launch.marginAtBurnout).toBeCloseTo(whole.stability.burnout.calibres, 3);
    expect(found.figures.thrustToWeight).toBeCloseTo(
      whole.checks.find(({ code }) => code === "thrust-to-weight")?.value ?? 0,
      12,
    );
    const stops = whole.checks.filter(({ verdict }) => verdict === "stop").map(({ code }) => code);
    if (found.outcome === "ranked") expect(stops).toEqual([]);
    else for (const code of stops) expect(found.refusals.map((each) => each.code)).toContain(code);
  });

  test("refuses by thrust to weight at a mass just above a third of the thrust, and not just below", async () => {
    const { averageThrust } = burnOf(candidate("it").motor.thrust);
    const gravity = (plan: OpenPlan) => roughFlight(planWith(plan, candidate("it")), {}).model.gravityAt(0);
    const heaviest = averageThrust / (3 * gravity(openPlan)) - candidate("it").motor.loadedMass;
    const withMass = (mass: number) => ({ ...openPlan, rocket: { ...openPlan.rocket, mass } });
    expect(
      judgeUnflown({ plan: withMass(heaviest - 1e-6), draws, seed: 1, model: "pitching" }, candidate("it")),
    ).toBeNull();
    expect(await codes(withMass(heaviest + 1e-6))).toContain("thrust-to-weight");
  });

  test("refuses a guide that is too short, and tells the speed against its limit", async () => {
    const found = await judged({ ...openPlan, guide: { ...openPlan.guide, travel: 0.1 } }, candidate("it"));
    expect(found).toMatchObject({
      outcome: "refused",
      drawn: null,
      refusals: [{ code: "guide-exit-speed", limit: 10 }],
    });
    expect(found.outcome === "refused" && found.refusals[0].value).toBeLessThan(10);
  });

  test("refuses a margin just below one calibre as it leaves the guide, before any draw is flown, and not somewhat above", async () => {
    const { launch } = await ranked(openPlan, candidate("it"));
    const { rocket } = openPlan;
    // the loaded balance point moves by the airframe's share of the mass
    const share = rocket.mass / (rocket.mass + candidate("it").motor.loadedMass);
    const atMargin = (calibres: number) => {
      const shift = ((launch.marginAtGuideExit - calibres) * rocket.diameter) / share;
      return { ...openPlan, rocket: { ...rocket, balance: rocket.balance + shift } };
    };
    const fly = () => Promise.reject(new Error("it is to be flown"));
    const spec = (calibres: number) => ({ plan: atMargin(calibres), draws, seed: 1, model: "pitching" as const });
    expect(await judgeMotor(spec(0.98), candidate("it"), fly)).toMatchObject({
      outcome: "refused",
      drawn: null,
      refusals: [{ code: "margin-at-guide-exit", limit: 1 }],
    });
    await expect(judgeMotor(spec(1.05), candidate("it"), fly)).rejects.toThrow("it is to be flown");
  });

  test("refuses above the ceiling by the height that 95 % stay below, each side of it", async () => {
    const { drawn } = await ranked(openPlan, candidate("it"));
    const under = (ceiling: number) => ({ ...openPlan, fieldLimits: { ceiling } });
    expect(await codes(under(drawn.height.p95 + 1e-4))).toEqual(["ranked"]);
    expect(await codes(under(drawn.height.p95 - 1e-4))).toEqual(["ceiling"]);
    expect(drawn.height.p50).toBeLessThan(drawn.height.p95 - 1);
  });

  test("refuses where no delay reaches the least odds, each side of them, and says why", async () => {
    const { odds } = (await ranked(openPlan, candidate("it"))).drawn.toCut!;
    const least = (leastClean: number) => ({ ...openPlan, limits: { ...openPlan.limits, leastClean } });
    expect(await codes(least(odds.clean - 1e-6))).toEqual(["ranked"]);
    expect(await codes(least(odds.clean + 1e-6))).toEqual(["below-least-clean"]);
    // 4 s of delay for a coast of some 10 s: it opens fast and early, and a longer one is out of reach
    const short = await judged(
      openPlan,
      candidate("it", 1, { delay: { kind: "fixed", seconds: 4, clock: "burnout" } }),
    );
    expect(short.outcome === "refused" && short.refusals.at(-1)).toMatchObject({
      code: "below-least-clean",
      details: expect.arrayContaining(["too-fast-early", "out-of-reach-longer"]),
    });
  });

  test("refuses a cut that the instructions do not allow, and one with another tool", async () => {
    const { delay } = candidate("it").motor;
    const changed = (change: object) => candidate("it", 1, { delay: { ...delay, ...change } as typeof delay });
    expect(await codes(openPlan, changed({ cuttingConfirmed: false }))).toEqual(["instructions-not-confirmed"]);
    expect(await codes(openPlan, changed({ toolNamed: "another" }))).toEqual(["tool-not-named"]);
  });

  test("refuses a motor without charge, unless electronics opens the rocket", async () => {
    const plugged = candidate("it", 1, { delay: { kind: "none" } });
    expect(await codes(openPlan, plugged)).toEqual(["no-charge"]);
    const recovery = { ...openPlan.recovery, motorCharge: "backup" as const, electronics: { delay: 0 } };
    const found = await ranked({ ...openPlan, recovery } as OpenPlan, plugged);
    expect(found.drawn.toCut).toBeNull();
    expect(found.drawn.height.p50).toBeGreaterThan(100);
  });

  test("lists a good motor whose certificate is not stated as not checked", async () => {
    const { stated: _, ...silent } = candidate("it");
    expect((await ranked(wideField, silent)).notChecked).toEqual([
      { code: "motor-certified", missing: ["motorCertified"] },
    ]);
    expect((await ranked(wideField, candidate("it"))).notChecked).toEqual([]);
  });

  test("says of a motor that landings were not checked where the field has no outline and no zones", async () => {
    expect((await ranked(openPlan, candidate("it"))).notChecked).toEqual([
      { code: "landing-inside", missing: ["outsideOpened"] },
      { code: "keep-off-zones", missing: ["keepOffOpened"] },
    ]);
  });

  test("refuses a motor whose opened landings the plan made with it would stop at, looks where it would look", async () => {
    const windy: OpenPlan = {
      ...openPlan,
      wind: { ...openPlan.wind, kind: "power", east: 3, north: 0 } as OpenPlan["wind"],
      limits: { ...openPlan.limits, leastClean: 0, leastHolds: 0 },
    };
    const within = (radius: number): OpenPlan => ({
      ...windy,
      fieldLimits: { boundary: { kind: "circle", east: 0, north: 0, radius }, keepOff: [] },
    });
    const verdictOf = async (plan: OpenPlan) => {
      const { checks } = await decide(planWith(plan, candidate("it")), { draws, seed: 3 });
      return checks.find(({ code }) => code === "landing-inside")?.verdict;
    };
    const { packing } = await decide(planWith(windy, candidate("it")), { draws, seed: 3 });
    const { east, north, minor } = packing.landings.opened!.p50!;
    const middle = Math.hypot(east, north);
    expect(await verdictOf(within(middle - 0.7 * minor))).toBe("stop");
    expect(await codes(within(middle - 0.7 * minor))).toEqual(["landing-inside"]);
    expect(await verdictOf(within(middle + 0.7 * minor))).toBe("look");
    const { looks } = await ranked(within(middle + 0.7 * minor), candidate("it"));
    expect(looks.map(({ code }) => code)).toContain("landing-inside");
    const zone = { kind: "circle", east, north, radius: 0.5 * minor } as const;
    const kept = { ...within(5000), fieldLimits: { boundary: wideField.fieldLimits.boundary, keepOff: [zone] } };
    expect(await codes(kept as OpenPlan)).toEqual(["keep-off-zones"]);
  });

  test("refuses a motor that comes down in a keep-off zone if nothing opens, before opened landings are followed", async () => {
    const keepOff = [{ kind: "circle", east: 0, north: 0, radius: 5000 }] as const;
    expect(await codes({ ...openPlan, fieldLimits: { keepOff } })).toEqual(["keep-off-zones-unopened"]);
  });

  test("leaves what is stated of the plan's own motor behind", async () => {
    const stated = { ...openPlan.stated, motorCertified: false, metalSponge: true };
    expect(await codes({ ...openPlan, stated })).toEqual(["ranked"]);
  });

  test("tells every reason that needs no flight at once", async () => {
    const wide = candidate("it", 0.1, { diameter: 0.054, length: 2 });
    expect(await codes(openPlan, wide)).toEqual(["too-wide-for-mount", "too-long-for-mount", "thrust-to-weight"]);
  });

  test("tells a motor that cannot be flown with its issues", async () => {
    const thrust = { times: [0, 1, 1], thrusts: [0, 100, -5] };
    const found = await judged(openPlan, candidate("it", 1, { thrust, loadedMass: Number.NaN, propellantMass: -1 }));
    expect(found.outcome).toBe("broken");
    expect(found.outcome === "broken" && found.issues.map(({ code }) => code)).toEqual(
      expect.arrayContaining(["not-positive", "time-not-rising", "thrust-negative"]),
    );
  });
});

test("judgeUnflown() goes by the facts that decide goes by", () => {
  for (const scale of [0.3, 1, 2]) {
    const motor = candidate("it", scale, { designation: "H300-14" });
    const inputs = planWith(openPlan, motor);
    const flight = roughFlight(inputs, { model: "pitching" });
    const facts = flightFacts(inputs, flight, stabilityOf(flight), 100);
    const plan = { ...openPlan, stated: { certification: 0 } };
    const found = judgeUnflown({ plan, draws, seed: 1, model: "pitching" }, motor);
    expect(found?.outcome === "refused" && found.figures).toMatchObject({
      motorClass: facts.motorClass,
      totalImpulse: facts.totalImpulse,
      thrustToWeight: expect.closeTo(facts.thrustToWeight ?? 0, 12),
    });
    expect(facts.highPower).toBe(true);
  }
});
