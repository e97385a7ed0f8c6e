import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { rankedWith, refusedWith } from "../../../test/shortlist.js";
import { refusalGroups } from "./groups.js";
import { type Aim, orderedBy } from "./order.js";

const ids = (motors: Parameters<typeof orderedBy>[0], aim: Aim) => orderedBy(motors, aim).map(({ id }) => id);

describe("orderedBy()", () => {
  // the distance to 800 m: 10, 20, 150
  test("puts the median nearest to a height first, above or below it", () => {
    const motors = [rankedWith("far", { height: 650 }), rankedWith("above", { height: 820 })];
    expect(ids([...motors, rankedWith("below", { height: 790 })], { by: "nearest-height", height: 800 })).toEqual([
      "below",
      "above",
      "far",
    ]);
  });

  test("puts the highest median first", () => {
    const motors = [500, 900, 700].map((height) => rankedWith(String(height), { height }));
    expect(ids(motors, { by: "highest" })).toEqual(["900", "700", "500"]);
  });

  test("puts the best odds of a clean opening first, a motor without delay last", () => {
    const motors = [
      rankedWith("plugged", { odds: null }),
      rankedWith("worse", { odds: { lateFast: 0.2 } }),
      rankedWith("better", { odds: { lateFast: 0.1 } }),
    ];
    expect(ids(motors, { by: "best-odds" })).toEqual(["better", "worse", "plugged"]);
  });

  test("puts the gentlest opening first, by the speed that nine in ten stay below; what never opens last", () => {
    const motors = [rankedWith("never"), rankedWith("hard", { opens: 19 }), rankedWith("gentle", { opens: 12 })];
    expect(ids(motors, { by: "gentlest" })).toEqual(["gentle", "hard", "never"]);
  });

  test("puts the cheapest first and those without a price last, by their odds", () => {
    const motors = [
      rankedWith("unknown, worse", { odds: { low: 0.2 } }),
      rankedWith("unknown, better"),
      rankedWith("dear", { price: 60 }),
      rankedWith("free", { price: 0 }),
    ];
    expect(ids(motors, { by: "cheapest" })).toEqual(["free", "dear", "unknown, better", "unknown, worse"]);
  });

  test("breaks ties by clean odds, then by holding, then by the identifier", () => {
    const motors = [
      rankedWith("b"),
      rankedWith("a"),
      rankedWith("weak", { odds: { holds: 0.991 } }),
      rankedWith("first", { odds: { clean: 1, holds: 0.99 } }),
      rankedWith("last", { odds: { lateFast: 0.1 } }),
    ];
    const expected = ["a", "b", "weak", "first", "last"];
    for (const aim of [{ by: "highest" }, { by: "cheapest" }] as const) expect(ids(motors, aim)).toEqual(expected);
  });

  test("hangs on nothing but the motors: any order in gives the same order out", () => {
    const motor = fc.record({
      height: fc.constantFrom(300, 500, 700),
      price: fc.constantFrom(10, 20),
      lateFast: fc.constantFrom(0, 0.1),
      opens: fc.constantFrom(10, 15),
    });
    const aims: readonly Aim[] = [
      { by: "nearest-height", height: 600 },
      { by: "highest" },
      { by: "best-odds" },
      { by: "gentlest" },
      { by: "cheapest" },
    ];
    fc.assert(
      fc.property(
        fc.array(motor, { maxLength: 12 }),
        fc.constantFrom(...aims),
        fc.infiniteStream(fc.nat()),
        (made, aim, keys) => {
          const motors = made.map(({ lateFast, ...each }, i) => rankedWith(`m${i}`, { ...each, odds: { lateFast } }));
          const shuffled = motors
            .map((each) => ({ each, key: keys.next().value as number }))
            .sort((a, b) => a.key - b.key);
          expect(
            ids(
              shuffled.map(({ each }) => each),
              aim,
            ),
          ).toEqual(ids(motors, aim));
        },
      ),
    );
  });
});

test("refusalGroups() puts every motor under its first reason only, reasons and motors in their order", () => {
  const groups = refusalGroups([
    refusedWith("c", "ceiling"),
    refusedWith("b", "too-wide-for-mount", "thrust-to-weight"),
    refusedWith("d", "thrust-to-weight"),
    refusedWith("a", "too-wide-for-mount"),
  ]);
  expect(groups.map(({ code, motors }) => [code, motors.map(({ id }) => id)])).toEqual([
    ["too-wide-for-mount", ["a", "b"]],
    ["thrust-to-weight", ["d"]],
    ["ceiling", ["c"]],
  ]);
});
