import { describe, expect, test } from "vitest";
import { delaysOf, factorsOf, grouped, inOrder, type PastFlight } from "./trends.js";

const flight = (more: Partial<PastFlight>): PastFlight => ({
  file: more.name ?? "a",
  name: "A",
  flown: null,
  rocket: "Demo 76",
  motor: "Demo H150",
  lot: null,
  excluded: null,
  untaught: [],
  drag: null,
  impulse: null,
  set: null,
  delay: { kind: "unknown" },
  odds: null,
  outcome: null,
  top: null,
  topBand: null,
  ...more,
});
const factor = { factor: 1.1, low: 1, high: 1.2, sd: 0.05 };

test("inOrder() puts the oldest first, and those without a day last, as they stood", () => {
  const all = [
    flight({ name: "x" }),
    flight({ name: "b", flown: "2026-06-01T10:00" }),
    flight({ name: "a", flown: "2026-05-02T09:00" }),
    flight({ name: "y" }),
  ];
  expect(inOrder(all).map(({ name }) => name)).toEqual(["a", "b", "x", "y"]);
});

test("grouped() keeps each rocket's and each motor type's flights together", () => {
  const all = [
    flight({ name: "1", rocket: "Demo 9" }),
    flight({ name: "2", rocket: "Demo 10" }),
    flight({ name: "3", rocket: "Demo 9" }),
    flight({ name: "4", rocket: null }),
  ];
  const names = grouped(all, "rocket").map(([rocket, flights]) => [rocket, flights.map(({ name }) => name)]);
  expect(names).toEqual([
    ["Demo 9", ["1", "3"]],
    ["Demo 10", ["2"]],
  ]);
});

describe("trends", () => {
  test("factors are those that were told, with their day or their number, excluded ones marked", () => {
    const all = [
      flight({ name: "a", drag: factor }),
      flight({ name: "b" }),
      flight({ name: "c", drag: factor, flown: "2026-05-02T09:00", excluded: "two fins gone" }),
    ];
    expect(factorsOf(all, "drag")).toEqual([
      { key: "a", label: "1", name: "a", ...factor, excluded: false },
      { key: "c", label: "2026-05-02", name: "c", ...factor, excluded: true },
    ]);
    expect(factorsOf(all, "impulse")).toEqual([]);
  });

  test("delays that were seen have an interval of 9 in 10, bounds run on", () => {
    const all = [
      flight({ name: "seen", set: 9, delay: { kind: "seen", delay: 9.5, error: 0.1 } }),
      flight({ name: "least", set: 9, delay: { kind: "at-least", delay: 12 } }),
      flight({ name: "most", set: 9, delay: { kind: "at-most", delay: 7 } }),
      flight({ name: "unset", delay: { kind: "seen", delay: 9.5, error: 0.1 } }),
      flight({ name: "unknown", set: 9 }),
    ];
    const told = delaysOf(all);
    expect(told.map(({ name }) => name)).toEqual(["seen", "least", "most"]);
    // 1.645 sigmas to each side: memory, the 95 % point of the normal distribution
    expect(told[0]?.low).toBeCloseTo(9.3355, 9);
    expect(told[0]?.high).toBeCloseTo(9.6645, 9);
    expect([told[1]?.low, told[1]?.high]).toEqual([12, Number.POSITIVE_INFINITY]);
    expect([told[2]?.low, told[2]?.high]).toEqual([Number.NEGATIVE_INFINITY, 7]);
  });
});
