import type { LogColumn, LogMapping, LogPreview, LogQuantity } from "@delaywright/documents";
import { describe, expect, test } from "vitest";
import { isEnough, withColumn, withReversed, withUnit } from "./mapping.js";

const column = (index: number, heading: string, guess: LogQuantity | null): LogColumn => ({
  index,
  heading,
  cells: [],
  guess,
  why: "given",
  unit: null,
  unitWhy: null,
  reversed: false,
  unread: { count: 0, first: [] },
});
const mapping: LogMapping = { time: { column: 1, unit: "s" }, height: { column: 2, unit: "ft" } };
const preview = {
  columns: [column(0, "t", "time"), column(1, "alt", "height"), column(2, "x", null), column(3, "x", null)],
  mapping,
} satisfies Pick<LogPreview, "columns" | "mapping">;

describe("withColumn()", () => {
  test("names a column by its heading where that is its own, else by its number", () => {
    expect(withColumn(preview, 1, "altitude")).toEqual({ time: mapping.time, altitude: { column: "alt" } });
    expect(withColumn(preview, 2, "pressure")).toEqual({ ...mapping, pressure: { column: 3 } });
  });

  test("takes what another column held, or nothing", () => {
    expect(withColumn(preview, 3, "height")).toEqual({ time: mapping.time, height: { column: 4 } });
    expect(withColumn(preview, 1, null)).toEqual({ time: mapping.time });
    expect(mapping).toEqual({ time: { column: 1, unit: "s" }, height: { column: 2, unit: "ft" } });
  });
});

test("withUnit() and withReversed() change what is there, and nothing else", () => {
  expect(withUnit(mapping, "height", "m").height).toEqual({ column: 2, unit: "m" });
  expect(withUnit(mapping, "speed", "m/s")).toBe(mapping);
  const with4: LogMapping = { ...mapping, acceleration: { column: 4, unit: "g" } };
  expect(withReversed(with4, true).acceleration).toEqual({ column: 4, unit: "g", reversed: true });
  expect(withReversed(withReversed(with4, true), false)).toEqual(with4);
  expect(withReversed(mapping, true)).toBe(mapping);
});

test("isEnough() asks for a time and for something that moves with height", () => {
  expect(isEnough(mapping)).toBe(true);
  expect(isEnough({ time: { column: 1 }, acceleration: { column: 2 } })).toBe(true);
  expect(isEnough({ time: { column: 1 }, speed: { column: 2 } })).toBe(false);
  expect(isEnough({ height: { column: 2 } })).toBe(false);
});
