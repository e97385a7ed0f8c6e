import { describe, expect, test } from "vitest";
import { tool as cutter, motor as demo, type Loose, motorInHand } from "../../../test/fixtures.js";
import { readValue } from "../../read.js";
import type { MotorDocument } from "../motor/schema.js";
import type { ToolDocument } from "../tool/schema.js";
import { readingMeans, withReading } from "./readings.js";

const motor = demo as unknown as MotorDocument;
const tool = cutter as unknown as ToolDocument;
const { readings: _, ...fresh } = motorInHand;
const when = "2026-05-02T10:12";
const fifthSecond = { when, before: "22.2 mm", after: "26.16875 mm" };

describe("readingMeans()", () => {
  // 5 s of a grain that burns 1/32 in a second are 3.96875 mm: by the definition of the inch, 25.4 mm
  test("tells the delay that a reading leaves", () => {
    const means = readingMeans({ inHand: fresh, motor, reading: fifthSecond, planned: 0.00396875 });
    expect(means.issues).toEqual([]);
    expect(means.removed).toBeCloseTo(0.00396875, 9);
    expect(means.removedSeconds).toBeCloseTo(5, 6);
    expect(means.delay).toBeCloseTo(9, 6);
    // two readings of 0.1 mm each, over 0.79375 mm a second
    expect(means.sd).toBeCloseTo((Math.SQRT2 * 0.1) / 0.79375, 9);
    expect(means.beyondPlan).toBeCloseTo(0, 9);
    expect(means.deeperThanPlanned).toBe(false);
  });

  test("counts from the depth that was read before the first cut", () => {
    const inHand = withReading(fresh, { when, before: "22.2 mm", after: "24.6 mm" });
    const means = readingMeans({ inHand, motor, reading: { when, before: "24.6 mm", after: "26.16875 mm" } });
    expect(means.delay).toBeCloseTo(9, 6);
    expect(means.beyondPlan).toBeNull();
  });

  test("tells what went deeper than planned, beyond what two readings can be wrong by", () => {
    const planned = 0.00396875;
    const at = (after: string) => readingMeans({ inHand: fresh, motor, reading: { ...fifthSecond, after }, planned });
    expect(at("26.4 mm").deeperThanPlanned).toBe(false);
    expect(at("26.5 mm").deeperThanPlanned).toBe(true);
  });

  test("tells of a shallower reading without a note, and takes it with one", () => {
    const reading = { when, after: "23.8 mm" };
    const first = readingMeans({ inHand: motorInHand, motor, reading });
    expect(first.issues.map(({ path, code }) => `${path} ${code}`)).toEqual(["readings[1].after cut-shallower"]);
    const noted = { ...reading, note: "caliper was held aslant" };
    expect(readingMeans({ inHand: motorInHand, motor, reading: noted }).issues).toEqual([]);
  });

  test("tells of what cannot be: no depth before, no quantity, deeper than the element", () => {
    const codes = (reading: Loose) =>
      readingMeans({ inHand: fresh, motor, reading: { when, ...reading } }).issues.map((issue) => issue.code);
    expect(codes({ after: "24.6 mm" })).toEqual(["missing"]);
    expect(codes({ before: "22.2 mm", after: "24,6oo mm" })).not.toEqual([]);
    expect(codes({ before: "22.2 mm", after: "40 mm" })).toEqual(["cut-beyond-longest"]);
    expect(codes({ before: "22.2 mm", after: "21 mm" })).toEqual(["after-above-before"]);
  });

  test("takes the tool's depth per second where the motor names none, and is silent without", () => {
    const { depthPerSecond: _gone, ...delay } = demo.delay;
    const other = { ...demo, delay } as unknown as MotorDocument;
    expect(readingMeans({ inHand: fresh, motor: other, tool, reading: fifthSecond }).delay).toBeCloseTo(9, 6);
    const alone = readingMeans({ inHand: fresh, motor: other, reading: fifthSecond });
    expect(alone.delay).toBeNull();
    expect(alone.removed).toBeCloseTo(0.00396875, 9);
  });
});

describe("withReading()", () => {
  test("only ever adds", () => {
    const before = structuredClone(motorInHand);
    const after = withReading(motorInHand, fifthSecond);
    expect(motorInHand).toEqual(before);
    expect(after["readings"]).toEqual([...before.readings, fifthSecond]);
    expect(readValue(after, { file: "bag.json" }).state).toBe("ready");
    expect(() => withReading({ ...fresh, readings: "none" }, fifthSecond)).toThrow(RangeError);
  });
});
