import { expect, test } from "vitest";
import { staticMargin } from "./margin.js";

test("staticMargin() is in calibres and in lengths, negative where the rocket would turn over", () => {
  expect(staticMargin({ cp: 1.25, balance: 1, diameter: 0.125, length: 2 })).toEqual({ calibres: 2, ofLength: 0.125 });
  expect(staticMargin({ cp: 0.75, balance: 1, diameter: 0.125, length: 2 }).calibres).toBe(-2);
});
