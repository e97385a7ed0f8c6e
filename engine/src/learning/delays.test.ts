import { expect, test } from "vitest";
import { normalCdf, normalQuantile } from "../math/normal.js";
import { predictive, updatedBy } from "../math/normal-inverse-gamma.js";
import { studentCdf } from "../math/student.js";
import { sobolInteger } from "../spread/sobol.js";
import { boundedBy } from "./bounded.js";
import { learn } from "./learn.js";
import type { TaughtFlight } from "./learned.js";
import { learnedDelayAt, ofAnotherLot } from "./learned-delay.js";
import { delaySharesAt } from "./priors.js";

const tolerance = { seconds: 0.75, fraction: 0.1 };
const of = (lot: string | null) => ({ rocket: "a", motor: "h", lot });

function flown(set: number, told: TaughtFlight["flown"] | number, lot: string | null = null): TaughtFlight {
  const seen = typeof told === "number" ? { kind: "seen" as const, delay: told, error: 0 } : told;
  return { rocket: "a", motor: "h", lot, climb: null, set, flown: seen };
}

const learnedOf = (flights: readonly TaughtFlight[], lot: string | null = null, delay = tolerance) =>
  learn(flights, of(lot), { dragScale: 0.15, totalImpulse: 0.03, delay }).delay;

test("the shares of a delay's variance add up to the prior's at every setting", () => {
  for (const set of [0, 3, 7.5, 10, 18]) {
    const { offset, rate, lot, motor } = delaySharesAt(tolerance, set);
    const whole = Math.max(0.75, 0.1 * set) ** 2;
    expect(offset ** 2 + (rate * set) ** 2 + lot ** 2 + motor).toBeCloseTo(whole, 13);
    expect(lot).toBeGreaterThan(0);
  }
});

test("delays of one setting and unknown lots are the normal-inverse-gamma update of check values 13", () => {
  // with no fraction an eighth of the variance is shared: the mean is worth (7/8)/(1/8) = 7 observations
  const seconds = 0.8;
  const set = 9;
  const observed = [9.2, 10.4, 9.8, 10.9, 9.5];
  const delay = learnedOf(
    observed.map((each) => flown(set, each)),
    null,
    { seconds, fraction: 0 },
  )!;
  const noise = (7 / 8) * seconds ** 2;
  const posterior = updatedBy({ mean: set, kappa: 7, alpha: 5, beta: 4 * noise }, observed);
  const next = predictive(posterior);
  const outlook = learnedDelayAt(delay, set);
  expect(outlook.degrees).toBe(next.degrees);
  expect(outlook.mean).toBeCloseTo(next.mean, 12);
  expect(outlook.sd).toBeCloseTo(next.scale * Math.sqrt(next.degrees / (next.degrees - 2)), 12);
  expect(delay).toMatchObject({ seen: 5, bounds: 0, prior: { seconds, fraction: 0 } });
});

test("a lot's own share is learned for that lot alone", () => {
  const flights = [flown(10, 11.2, "x"), flown(10, 11.3, "x"), flown(10, 11.1, "x"), flown(10, 10.1, "y")];
  const at = (lot: string | null) => learnedDelayAt(learnedOf(flights, lot)!, 10);
  expect(at("x").mean).toBeGreaterThan(at(null).mean + 0.2);
  expect(at("y").mean).toBeLessThan(at(null).mean);
  expect(at("x").sd).toBeLessThan(at(null).sd);
  expect(learnedDelayAt(ofAnotherLot(learnedOf(flights, "x")!), 10)).toEqual(at(null));
});

test("rate and offset are told apart by delays of different settings", () => {
  const sets = [4, 6, 8, 10, 12, 14, 16, 18];
  const many = [...sets, ...sets, ...sets, ...sets];
  const delay = learnedOf(many.map((set) => flown(set, 0.3 + 1.04 * set, `lot ${set}`)))!;
  expect(learnedDelayAt(delay, 5).mean).toBeCloseTo(5.5, 0);
  expect(learnedDelayAt(delay, 18).mean - 18).toBeGreaterThan(learnedDelayAt(delay, 4).mean - 4 + 0.2);
});

/** Posterior of everything by weighting prior draws: independent of the closed forms. */
function byWeights(flights: readonly TaughtFlight[], set: number) {
  const count = 2 ** 17;
  const u = (i: number, d: number): number => (sobolInteger(i + 1, d) + 0.5) / 4294967296;
  let [sum, mean, square, late] = [0, 0, 0, 0];
  for (let i = 0; i < count; i++) {
    let precision = 0;
    // gamma of shape 5 as a sum of five exponentials
    for (let d = 3; d < 8; d++) precision -= Math.log(u(i, d)) / 4;
    const s = 1 / Math.sqrt(precision);
    const shared = delaySharesAt(tolerance, set);
    const offset = s * shared.offset * normalQuantile(u(i, 0));
    const rate = s * shared.rate * normalQuantile(u(i, 1));
    let weight = 1;
    for (const flight of flights) {
      const shares = delaySharesAt(tolerance, flight.set!);
      const sd = s * Math.sqrt(shares.motor + shares.lot ** 2);
      const middle = flight.set! + offset + rate * flight.set!;
      if (flight.flown.kind === "unknown") continue;
      const z = (flight.flown.delay - middle) / sd;
      if (flight.flown.kind === "seen") weight *= Math.exp(-0.5 * z * z) / sd;
      else weight *= flight.flown.kind === "at-least" ? normalCdf(-z) : normalCdf(z);
    }
    const middle = set + offset + rate * set;
    const own = s * s * (shared.motor + shared.lot ** 2);
    sum += weight;
    mean += weight * middle;
    square += weight * (middle * middle + own);
    late += weight * normalCdf((middle - set - 1) / Math.sqrt(own));
  }
  return { mean: mean / sum, sd: Math.sqrt(square / sum - (mean / sum) ** 2), late: late / sum };
}

test.each<[string, TaughtFlight[]]>([
  ["delays that were seen", [flown(10, 11.1), flown(8, 8.2), flown(14, 15.9)]],
  ["a bound that says much", [flown(10, { kind: "at-least", delay: 11.5 })]],
  ["a bound that says little", [flown(10, { kind: "at-least", delay: 7 })]],
  [
    "seen and bounds",
    [
      flown(10, 11.1),
      flown(8, { kind: "at-least", delay: 9 }),
      flown(12, { kind: "at-most", delay: 14 }),
      flown(10, { kind: "at-least", delay: 10.5 }),
    ],
  ],
])("the predictive delay is that of weighted draws: %s", (_, flights) => {
  const brute = byWeights(flights, 10);
  const outlook = learnedDelayAt(learnedOf(flights)!, 10);
  // the weighted draws are good to about 0.3 %; the bounds' shape is an approximation
  expect(Math.abs(outlook.mean - brute.mean)).toBeLessThan(0.02);
  expect(Math.abs(outlook.sd / brute.sd - 1)).toBeLessThan(0.02);
  const scale = outlook.sd * Math.sqrt((outlook.degrees - 2) / outlook.degrees);
  const late = 1 - studentCdf((11 - outlook.mean) / scale, outlook.degrees);
  expect(Math.abs(late - brute.late)).toBeLessThan(0.015);
});

test("boundedBy() a bound far on the safe side changes nothing, and one that contradicts moves far", () => {
  const figure = { mean: 0, variance: 0.3, alpha: 7, beta: 6 };
  const unmoved = boundedBy(figure, 0.5, -50, 1);
  expect(unmoved.mean).toBeCloseTo(0, 6);
  expect(unmoved.variance).toBeCloseTo(0.3, 4);
  expect(unmoved.alpha).toBeCloseTo(7, 2);
  const moved = boundedBy(figure, 0.5, 6, 1);
  expect(moved.mean).toBeGreaterThan(1.5);
  expect(moved.beta / (moved.alpha - 1)).toBeGreaterThan(1.5);
  const mirrored = boundedBy(figure, 0.5, -6, -1);
  expect(mirrored.mean).toBeCloseTo(-moved.mean, 12);
  expect(mirrored.variance).toBeCloseTo(moved.variance, 12);
});

test("a flight without a set delay, or with one that is no number, teaches nothing of the delay", () => {
  const nothing = [
    { ...flown(10, 11), set: null },
    flown(Number.NaN, 11),
    flown(10, Number.NaN),
    flown(10, { kind: "unknown" }),
    { ...flown(10, 11), motor: "other" },
  ];
  expect(learnedOf(nothing)).toBeUndefined();
  expect(learnedOf([flown(10, 11)], null, { seconds: 0, fraction: 0 })).toBeUndefined();
});
