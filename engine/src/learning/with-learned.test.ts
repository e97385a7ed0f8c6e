import { expect, test } from "vitest";
import { plan } from "../../test/plan.js";
import { decide } from "../decision/decide.js";
import { oddsOverDelay } from "../decision/odds-over-delay.js";
import { planWith } from "../decision/shortlist/candidate.js";
import { burnOf } from "../motor/burn.js";
import { learn } from "./learn.js";
import type { Learned, TaughtFlight } from "./learned.js";
import { learnedDelayAt } from "./learned-delay.js";
import { withLearned, withoutLearned } from "./with-learned.js";

const of = { rocket: "a", motor: "h", lot: "x" };

const flight = (set: number, delay: number): TaughtFlight => ({
  rocket: "a",
  motor: "h",
  lot: "x",
  climb: {
    lnDrag: 0.12,
    lnImpulse: 0.02,
    covariance: [
      [4e-4, 2e-4],
      [2e-4, 4e-4],
    ],
  },
  set,
  flown: { kind: "seen", delay, error: 0.1 },
});
const learned = learn([flight(10, 11.4), flight(12, 13.6)], of, plan.spread);

test("withLearned() moves drag and thrust, narrows and correlates their spread; withoutLearned() gives the plan back to the bit", () => {
  const inputs = withLearned(plan, learned);
  expect(inputs.rocket.drag.scale).toBeCloseTo(plan.rocket.drag.scale * Math.exp(learned.drag.mean), 14);
  expect(burnOf(inputs.motor.thrust).totalImpulse).toBeCloseTo(
    burnOf(plan.motor.thrust).totalImpulse * Math.exp(learned.impulse.mean),
    9,
  );
  expect(inputs.spread).toMatchObject({ dragScale: learned.drag.sd, dragWithImpulse: learned.correlation });
  expect(learned.correlation).toBeGreaterThan(0);
  expect(withoutLearned(inputs)).toEqual(plan);
  expect(withoutLearned(inputs).motor).toBe(plan.motor);
  const other: Learned = { ...learned, drag: { mean: -0.1, sd: 0.05 } };
  expect(withLearned(inputs, other)).toEqual(withLearned(plan, other));
  expect(structuredClone(inputs)).toEqual(inputs);
});

test("withLearned() of a plan without spread moves the middles alone", () => {
  const { delay, ...flightSpread } = plan.spread;
  const none = Object.fromEntries(Object.keys(flightSpread).map((key) => [key, 0]));
  const still = { ...plan, spread: { ...plan.spread, ...none, delay: { ...delay, seconds: 0, fraction: 0 } } };
  const inputs = withLearned(still, learned);
  expect(inputs.spread).toEqual(still.spread);
  expect(inputs.rocket.drag.scale).not.toBe(plan.rocket.drag.scale);
});

test("decide() with nothing learned but the priors gives the plain odds to the bit", async () => {
  const nothing: Learned = {
    drag: { mean: 0, sd: plan.spread.dragScale },
    impulse: { mean: 0, sd: plan.spread.totalImpulse },
    correlation: 0,
    flights: { rocket: 0, motor: 0, both: 0 },
  };
  const [plain, taught] = [await decide(plan, { draws: 64 }), await decide(withLearned(plan, nothing), { draws: 64 })];
  expect(taught.settings).toEqual(plain.settings);
});

test("decide() reckons with a delay that burns longer than cut: it cuts shorter, and says the mean", async () => {
  const delay = learn([flight(10, 12.5), flight(12, 14.9), flight(8, 10.2), flight(10, 12.4)], of, plan.spread).delay!;
  const only: Learned = { ...learn([], of, plan.spread), delay };
  const [plain, taught] = [await decide(plan, { draws: 256 }), await decide(withLearned(plan, only), { draws: 256 })];
  expect(taught.toCut!.delay).toBeLessThan(plain.toCut!.delay);
  const setting = taught.settings.find((each) => each.delay === 10)!;
  expect(setting.delayMean).toBeCloseTo(learnedDelayAt(delay, 10).mean, 12);
  expect(setting.delayMean).toBeGreaterThan(11);
  expect(setting.delaySd).toBeLessThan(plain.settings.find((each) => each.delay === 10)!.delaySd);
  // the pins of the app's scale stand on the same figures
  const [pin] = await oddsOverDelay(withLearned(plan, only), [10], { draws: 256 });
  expect(pin!.odds.clean).toBeCloseTo(setting.odds.clean, 12);
});

test("classes and safe distances stay those of the certified motor", async () => {
  const strong: Learned = { ...learned, impulse: { mean: 0.5, sd: 0.02 } };
  const told = ({ checks }: Awaited<ReturnType<typeof decide>>) =>
    checks.filter(({ code }) => code.includes("motor") || code.includes("distance"));
  expect(told(await decide(withLearned(plan, strong), { draws: 16 }))).toEqual(told(await decide(plan, { draws: 16 })));
});

test("planWith() keeps what was learned of the rocket on every motor, and of the motor type on that alone", () => {
  const { motor, ...open } = withLearned(plan, learned);
  expect(motor).not.toBe(plan.motor);
  const own = planWith(open, { id: "own", motor: plan.motor });
  expect(own.motor.thrust).toEqual(motor.thrust);
  expect(own.learned?.delay?.mean[2]).toBe(0);
  const other = { ...plan.motor, loadedMass: plan.motor.loadedMass + 0.01 };
  const there = planWith(open, { id: "other", motor: other });
  expect(there.motor.thrust).toEqual(other.thrust);
  expect(there.rocket.drag.scale).toBe(own.rocket.drag.scale);
  expect(there.spread).toMatchObject({ totalImpulse: plan.spread.totalImpulse, dragScale: learned.drag.sd });
  expect(there.learned).not.toHaveProperty("delay");
});
