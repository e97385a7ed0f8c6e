import { expect, test } from "vitest";
import { depthOfDelay } from "../motor/delay.js";
import { depthReading } from "./depth-reading.js";

const perSecond = 0.79375e-3;
const reading = { longest: 14, before: 0.0222, depthPerSecond: perSecond };

test("depthReading() gives every cut of whole 1/64 inch back exactly", () => {
  // 1/64 inch is half a second of grain
  for (let i = 0; i <= 27; i++) {
    const depth = depthOfDelay(i / 2, perSecond);
    const read = depthReading({ ...reading, before: 0, after: depth });
    expect(read.delay).toBe(14 - i / 2);
    expect(depthOfDelay(read.removed, perSecond)).toBeCloseTo(depth, 15);
    // from a rim that does not lie at zero, typed in hundredths of a millimetre and less
    expect(depthReading({ ...reading, after: reading.before + depth }).delay).toBeCloseTo(14 - i / 2, 5);
  }
});

test("depthReading() never tells of a longer delay after a deeper reading", () => {
  let last = Number.POSITIVE_INFINITY;
  for (let after = 0.0222; after < 0.032; after += 0.01e-3) {
    const { delay } = depthReading({ ...reading, after });
    expect(delay).toBeLessThanOrEqual(last);
    last = delay;
  }
});

test("depthReading() carries the error of both readings", () => {
  // two readings of 0.1 mm, by default and as given
  expect(depthReading({ ...reading, after: 0.025 }).delaySd).toBeCloseTo((Math.SQRT2 * 1e-4) / perSecond, 12);
  expect(depthReading({ ...reading, after: 0.025, readingError: 0 }).delaySd).toBe(0);
});

test("depthReading() says so where the readings contradict each other", () => {
  const read = depthReading({ ...reading, after: 0.0212 });
  expect(read.removedDepth).toBe(-1e-3);
  expect(read.delay).toBeGreaterThan(14);
});
