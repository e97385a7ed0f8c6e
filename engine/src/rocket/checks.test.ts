import { expect, test } from "vitest";
import { rocketIssues } from "./checks.js";
import { exampleRocket } from "./example-rocket.js";
import type { FinSet, Rocket } from "./rocket.js";

const [fins] = exampleRocket.finSets as readonly [FinSet];
const codes = (change: Partial<Rocket>) =>
  rocketIssues({ ...exampleRocket, ...change }).map(({ code, path }) => `${code} ${path}`);
const withFins = (change: Partial<FinSet>) => codes({ finSets: [{ ...fins, ...change }] });

test("rocketIssues() finds nothing wrong with the example", () => {
  expect(rocketIssues(exampleRocket)).toEqual([]);
});

test("rocketIssues() reports every impossibility at once", () => {
  expect(codes({ mass: 0, balance: 2, diameter: Number.NaN, roughness: -1 })).toEqual([
    "not-positive rocket.diameter",
    "not-positive rocket.mass",
    "negative rocket.roughness",
    "off-body rocket.balance",
  ]);
});

test("rocketIssues() says what was found and what is accepted", () => {
  expect(rocketIssues({ ...exampleRocket, balance: 2 })).toEqual([
    { code: "off-body", path: "rocket.balance", found: 2, accepted: "0 … 1.5 m" },
  ]);
});

test.each([
  [
    "a nose as long as the rocket",
    { nose: { shape: { kind: "ogive" }, length: 1.5 } },
    "nose-too-long rocket.nose.length",
  ],
  [
    "an ogive blunter than a hemisphere",
    { nose: { shape: { kind: "ogive" }, length: 0.02 } },
    "ogive-too-blunt rocket.nose.length",
  ],
  [
    "a Haack parameter out of range",
    { nose: { shape: { kind: "haack", c: 1 }, length: 0.3 } },
    "haack-out-of-range rocket.nose.shape.c",
  ],
  [
    "a power out of range",
    { nose: { shape: { kind: "power", exponent: 2 }, length: 0.3 } },
    "power-out-of-range rocket.nose.shape.exponent",
  ],
  [
    "a transition behind the tail",
    { transitions: [{ at: 1.45, length: 0.1, aftDiameter: 0.05 }] },
    "transition-beyond-tail rocket.transitions[0]",
  ],
  [
    "a transition inside the nose",
    { transitions: [{ at: 0.2, length: 0.1, aftDiameter: 0.05 }] },
    "transition-overlaps rocket.transitions[0].at",
  ],
  ["no fins", { finSets: [] }, "no-fins rocket.finSets"],
  ["two fins", { finSets: [{ ...fins, count: 2 }] }, "too-few-fins rocket.finSets"],
  ["a fitting off the body", { fittings: [{ kind: "rail button", at: 1.6 }] }, "off-body rocket.fittings[0].at"],
  [
    "a mount wider than the body",
    { mount: { diameter: 0.075, motorAftAt: 1.5 } },
    "mount-wider-than-body rocket.mount.diameter",
  ],
  [
    "a mount longer than where it ends",
    { mount: { diameter: 0.038, motorAftAt: 1.5, length: 2 } },
    "mount-too-long rocket.mount.length",
  ],
  ["a stated centre of pressure off the body", { statedCp: 3 }, "off-body rocket.statedCp"],
  ["a drag coefficient of nothing", { drag: { from: "constant", cd: 0, scale: 1 } }, "not-positive rocket.drag.cd"],
] as const satisfies readonly (readonly [string, Partial<Rocket>, string])[])(
  "rocketIssues() reports %s",
  (_, change, found) => {
    expect(codes(change)).toEqual([found]);
  },
);

test("rocketIssues() needs no fins where the centre of pressure is stated", () => {
  expect(codes({ finSets: [], statedCp: 1.1 })).toEqual([]);
});

test("rocketIssues() reports fins that cannot be", () => {
  expect(withFins({ count: 3.5 })).toEqual(["fin-count rocket.finSets[0].count"]);
  expect(withFins({ at: 1.4 })).toEqual(["fins-off-body rocket.finSets[0].at"]);
  expect(withFins({ thickness: 0 })).toEqual(["not-positive rocket.finSets[0].thickness"]);
  expect(withFins({ shape: { kind: "trapezoid", root: 0.2, tip: -0.1, span: 0.1, sweep: 0 } })).toEqual([
    "negative rocket.finSets[0].shape.tip",
  ]);
});

test("rocketIssues() reports polygons that cannot be", () => {
  const polygon = (...points: (readonly [number, number])[]) => withFins({ shape: { kind: "polygon", points } });
  expect(polygon([0, 0], [0.05, 0.06], [0.14, 0.09], [0.18, 0])).toEqual([]);
  expect(polygon([0, 0], [0.1, 0])).toEqual(["polygon-too-few-points rocket.finSets[0].shape.points"]);
  expect(polygon([0, 0], [0.05, 0.06], [0.1, 0.01])).toEqual(["polygon-off-root rocket.finSets[0].shape.points"]);
  expect(polygon([0, 0], [0.05, 0.06], [0.06, -0.01], [0.1, 0])).toContain(
    "polygon-inside-tube rocket.finSets[0].shape.points",
  );
  expect(polygon([0, 0], [0.1, 0.1], [0, 0.1], [0.1, 0])).toEqual([
    "polygon-crosses-itself rocket.finSets[0].shape.points",
  ]);
});

test("rocketIssues() reports drag tables that cannot be", () => {
  const table = (mach: number[], coasting: number[], thrusting: number[]) =>
    codes({ drag: { from: "table", mach, coasting, thrusting, scale: 1 } });
  expect(table([0, 1], [0.5, 0.6], [0.4, 0.5])).toEqual([]);
  expect(table([], [], [])).toEqual(["table-empty rocket.drag.mach"]);
  expect(table([0, 0], [0.5, 0.6], [0.4, 0.5])).toEqual(["mach-not-rising rocket.drag.mach[1]"]);
  expect(table([0, 1], [0.5], [0.4, -1])).toEqual([
    "table-lengths-differ rocket.drag.coasting",
    "not-positive rocket.drag.thrusting[1]",
  ]);
});
