import { expect, test } from "vitest";
import { slopeOver } from "./landing.js";
import { lookAt } from "./look.js";

// half of the rows are an odd or an even number
test.each([4, 5, 8, 10, 20, 50, 100])("slopeOver() of a straight fall is its speed at %i samples a second", (rate) => {
  const time = Float64Array.from({ length: 5 * rate }, (_, i) => i / rate);
  const record = {
    time,
    height: time.map((t) => 300 - 17 * t),
    speed: time.map(() => -17),
    heightError: 0.2,
    acceleration: null,
    accelerationError: null,
    rate,
    flaws: [],
    marks: [],
    zero: 0,
  };
  expect(slopeOver(lookAt(record, {}), 2, 3)).toBeCloseTo(17, 9);
});
