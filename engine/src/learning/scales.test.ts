import fc from "fast-check";
import { expect, test } from "vitest";
import { cholesky, solveLower, solveUpper } from "../math/cholesky.js";
import { learn } from "./learn.js";
import type { TaughtFlight } from "./learned.js";

const priors = { dragScale: 0.15, totalImpulse: 0.03, delay: { seconds: 0.75, fraction: 0.1 } };

function flown(rocket: string, motor: string, lnDrag: number, lnImpulse: number, sd = 0.02, both = 0.5): TaughtFlight {
  const shared = both * sd * sd;
  return {
    rocket,
    motor,
    lot: null,
    climb: {
      lnDrag,
      lnImpulse,
      covariance: [
        [sd * sd, shared],
        [shared, sd * sd],
      ],
    },
    set: null,
    flown: { kind: "unknown" },
  };
}

const of = { rocket: "a", motor: "h", lot: null };

test("learn() from no flight says what the priors say", () => {
  const learned = learn([], of, priors);
  expect(learned.drag.mean).toBe(0);
  expect(learned.drag.sd).toBeCloseTo(0.15, 14);
  expect(learned.impulse.sd).toBeCloseTo(0.03, 14);
  expect(learned.correlation).toBe(0);
  expect(learned).not.toHaveProperty("delay");
  expect(learned.flights).toEqual({ rocket: 0, motor: 0, both: 0 });
});

test("learn() from one climb that tells drag alone is the mean weighted by precision (closed form)", () => {
  const climb = flown("a", "h", 0.2, 0).climb!;
  const covariance = [[0.02 ** 2, 0] as const, [0, Number.POSITIVE_INFINITY] as const] as const;
  const { drag, impulse } = learn([{ ...flown("a", "h", 0, 0), climb: { ...climb, covariance } }], of, priors);
  const [own, rocket] = [0.04 * 0.15 ** 2, 0.96 * 0.15 ** 2];
  const noise = 0.02 ** 2 + own;
  expect(drag.mean).toBeCloseTo((0.2 * rocket) / (rocket + noise), 12);
  expect(drag.sd).toBeCloseTo(Math.sqrt((rocket * noise) / (rocket + noise) + own), 12);
  expect(impulse).toEqual({ mean: 0, sd: expect.closeTo(0.03, 12) as number });
});

/** The same posterior by inverting the whole precision matrix of all unknowns at once. */
function byPrecision(flights: readonly TaughtFlight[], names: readonly string[]) {
  const n = names.length;
  const precision = new Float64Array(n * n);
  const right = new Float64Array(n);
  names.forEach((name, i) => {
    precision[i * n + i] = 1 / (name.startsWith("d") ? 0.96 * 0.15 ** 2 : 0.5 * 0.03 ** 2);
  });
  for (const { rocket, motor, climb } of flights) {
    const [[a, b], [, d]] = climb!.covariance;
    const [va, vd] = [a + 0.04 * 0.15 ** 2, d + 0.5 * 0.03 ** 2];
    const determinant = va * vd - b * b;
    const inverse = [
      [vd / determinant, -b / determinant],
      [-b / determinant, va / determinant],
    ];
    const at = [names.indexOf(`d ${rocket}`), names.indexOf(`i ${motor}`)];
    const seen = [climb!.lnDrag, climb!.lnImpulse];
    for (let i = 0; i < 2; i++)
      for (let j = 0; j < 2; j++) {
        precision[at[i]! * n + at[j]!]! += inverse[i]![j]!;
        right[at[i]!]! += inverse[i]![j]! * seen[j]!;
      }
  }
  const factor = cholesky(precision, n)!;
  const solve = (b: Float64Array) => solveUpper(factor, solveLower(factor, b));
  const column = (k: number) => solve(Float64Array.from({ length: n }, (_, i) => (i === k ? 1 : 0)));
  return { mean: solve(right), column };
}

test("learn() from linked flights is the joint normal posterior of all rockets and types", () => {
  const flights = [
    flown("a", "h", 0.1, 0.02),
    flown("a", "i", 0.14, -0.03, 0.05, -0.3),
    flown("b", "h", -0.2, 0.01),
    flown("b", "j", -0.22, 0.05, 0.01, 0.9),
    flown("c", "k", 0.3, 0.02),
  ];
  const names = ["d a", "d b", "d c", "i h", "i i", "i j", "i k"];
  const { mean, column } = byPrecision(flights, names);
  const learned = learn(flights, of, priors);
  const [ofDrag, ofImpulse] = [column(0), column(3)];
  expect(learned.drag.mean).toBeCloseTo(mean[0]!, 12);
  expect(learned.impulse.mean).toBeCloseTo(mean[3]!, 12);
  expect(learned.drag.sd).toBeCloseTo(Math.sqrt(ofDrag[0]! + 0.04 * 0.15 ** 2), 12);
  expect(learned.impulse.sd).toBeCloseTo(Math.sqrt(ofImpulse[3]! + 0.5 * 0.03 ** 2), 12);
  expect(learned.correlation).toBeCloseTo(ofDrag[3]! / (learned.drag.sd * learned.impulse.sd), 10);
  expect(learned.flights).toEqual({ rocket: 2, motor: 2, both: 1 });
});

test("learn() forgets order, and what is not linked; a noisy flight cannot swing it", () => {
  const figure = fc.double({ min: -0.4, max: 0.4, noNaN: true });
  const sd = fc.double({ min: 0.003, max: 0.5, noNaN: true });
  const one = fc.record({ a: figure, b: figure, sd, both: fc.double({ min: -0.95, max: 0.95, noNaN: true }) });
  fc.assert(
    fc.property(fc.array(one, { minLength: 1, maxLength: 6 }), one, (all, other) => {
      const flights = all.map(({ a, b, sd, both }) => flown("a", "h", a, b, sd, both));
      const learned = learn(flights, of, priors);
      const turned = learn([flown("x", "y", other.a, other.b), ...flights.toReversed()], of, priors);
      expect(turned.drag.mean).toBeCloseTo(learned.drag.mean, 10);
      expect(turned.impulse.sd).toBeCloseTo(learned.impulse.sd, 10);
      expect(learned.drag.sd).toBeLessThanOrEqual(0.15 + 1e-12);
      expect(learned.drag.sd).toBeGreaterThan(0.2 * 0.15 - 1e-12);
      expect(Math.abs(learned.correlation)).toBeLessThanOrEqual(1);
      const noisy = learn([...flights, flown("a", "h", other.a, other.b, 20, other.both)], of, priors);
      expect(Math.abs(noisy.drag.mean - learned.drag.mean)).toBeLessThan(1e-3);
    }),
    { numRuns: 200 },
  );
});

test("learn() passes over a climb that tells nothing or whose covariance is none", () => {
  const good = flown("a", "h", 0.1, 0.02);
  const with_ = (covariance: NonNullable<TaughtFlight["climb"]>["covariance"], lnDrag = 0.5): TaughtFlight => ({
    ...good,
    climb: { lnDrag, lnImpulse: 0.5, covariance },
  });
  const bad = [
    with_([
      [Number.POSITIVE_INFINITY, 0],
      [0, Number.POSITIVE_INFINITY],
    ]),
    with_([
      [-1, 0],
      [0, 1],
    ]),
    with_([
      [1e-4, 1e-3],
      [1e-3, 1e-4],
    ]),
    with_([
      [Number.NaN, 0],
      [0, 1],
    ]),
    with_(
      [
        [1e-4, 0],
        [0, 1e-4],
      ],
      Number.NaN,
    ),
    { ...good, climb: null },
  ];
  expect(learn([...bad, good], of, priors)).toEqual(learn([good], of, priors));
});
