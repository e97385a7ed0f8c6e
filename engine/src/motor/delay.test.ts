import { expect, test } from "vitest";
import { delayOfDepth, depthOfDelay, remainingDelay } from "./delay.js";

const INCH = 0.0254;

test.each([INCH / 32, INCH / 64, 0.0008, 0.001])(
  "delayOfDepth() undoes depthOfDelay() exactly at %d m/s",
  (perSecond) => {
    for (let hundredths = 0; hundredths <= 3_000; hundredths++) {
      const seconds = hundredths / 100;
      expect(delayOfDepth(depthOfDelay(seconds, perSecond), perSecond)).toBe(seconds);
    }
  },
);

test("delayOfDepth() keeps the quotient of any other depth", () => {
  const depth = 0.003_123_456_789;
  expect(delayOfDepth(depth, INCH / 32)).toBe(depth / (INCH / 32));
});

// Common practice, no source: 1/32 in a second, so 0.79375 mm, and 1/16 in for 2 s.
test.each([
  [1, 0.000_793_75],
  [2, 0.001_587_5],
  [4, 0.003_175],
  [6, 0.004_762_5],
  [8, 0.006_35],
])("depthOfDelay() of %d s at 1/32 in a second", (seconds, depth) => {
  expect(depthOfDelay(seconds, INCH / 32)).toBeCloseTo(depth, 12);
  expect(remainingDelay(14, depth, INCH / 32)).toBeCloseTo(14 - seconds, 9);
});

test("remainingDelay() is negative after more than there was", () => {
  expect(remainingDelay(4, depthOfDelay(5, INCH / 32), INCH / 32)).toBe(-1);
});
