import { expect, test } from "vitest";
import { drydenScales } from "./dryden.js";

test("drydenScales() of MIL-HDBK-1797 halves the lengths across and vertical, and keeps the rest", () => {
  const older = drydenScales(50, 6, "8785C");
  const newer = drydenScales(50, 6, "1797");
  expect(newer.lengths.along).toBe(older.lengths.along);
  expect(newer.lengths.across).toBe(older.lengths.across / 2);
  expect(newer.lengths.vertical).toBe(older.lengths.vertical / 2);
  expect(newer.intensities).toEqual(older.intensities);
});

test("drydenScales() holds its ends beyond 10 and 1000 ft", () => {
  expect(drydenScales(0, 6, "8785C")).toEqual(drydenScales(3.048, 6, "8785C"));
  expect(drydenScales(2_000, 6, "8785C")).toEqual(drydenScales(304.8, 6, "8785C"));
});
