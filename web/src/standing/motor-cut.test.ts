import { describe, expect, test } from "vitest";
import { inventedDocuments, inventedPart } from "./invented.js";
import { lastMeaning, motorCutOf, timeOf } from "./motor-cut.js";
import { windDoubt } from "./wind-doubt.js";

const motor = inventedPart("demo.motor.json", {
  kind: "motor",
  version: 1,
  name: "Demo H150",
  diameter: "38 mm",
  length: "205 mm",
  loadedMass: "330 g",
  propellantMass: "160 g",
  delay: { kind: "adjustable", longest: "14 s", depthPerSecond: "0.8 mm" },
  thrust: { time: [0, 0.1, 2], newtons: [0, 150, 0] },
});
const hand = (readings: readonly object[]) =>
  inventedPart("bag-3.json", { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo.motor.json", readings });
const cutOf = (readings: readonly object[]) => motorCutOf(inventedDocuments({ motor, inHand: hand(readings) }));

describe("motorCutOf()", () => {
  const first = { when: "2026-05-02T10:00", before: "14 mm" };
  const second = { when: "2026-05-02T11:04", after: "18 mm" };

  test("counts from the first depth, to the last", () => {
    expect(cutOf([first])).toMatchObject({ before: "14 mm", after: undefined });
    expect(cutOf([first, second])).toMatchObject({ before: "14 mm", after: "18 mm", readAt: "2026-05-02T11:04" });
  });

  test("is null without a motor in hand, or where its document is wrong", () => {
    expect(motorCutOf(inventedDocuments({ motor }))).toBeNull();
    expect(cutOf([{ when: "2026-05-02T10:00", after: "deep" }])).toBeNull();
  });

  test("lastMeaning() is the delay that is left: 14 s less 4 mm of 0.8 mm a second", () => {
    const cut = cutOf([first, second]);
    expect(cut && lastMeaning(cut)?.delay).toBeCloseTo(9, 9);
    const whole = cutOf([first]);
    expect(whole && lastMeaning(whole)).toBeNull();
  });
});

test("timeOf() is the time of day of a moment", () => {
  expect(timeOf("2026-05-02T11:04")).toBe("11:04");
  expect(timeOf("whenever")).toBe("whenever");
});

test("windDoubt() joins the share of the wind and the gusts of a calm", () => {
  expect(windDoubt({}, 0)).toBeCloseTo(0.7, 9);
  // defaults 0.2 and 0.7 m/s: the root of 1² + 0.7²
  expect(windDoubt({}, 5)).toBeCloseTo(1.2207, 4);
  expect(windDoubt({ spread: { windSpeed: 0, windFloor: "0.3 m/s" } }, 5)).toBeCloseTo(0.3, 9);
  expect(windDoubt({ spread: "none" }, 5)).toBe(0);
});
