import { expect, test } from "vitest";
import { oneCosineGust } from "./gust.js";

test("oneCosineGust() is zero before the gust and whole beyond its length", () => {
  expect(oneCosineGust({ speed: 3, length: 40, distance: -1 })).toBe(0);
  expect(oneCosineGust({ speed: 3, length: 40, distance: 40 })).toBe(3);
  expect(oneCosineGust({ speed: 3, length: 40, distance: 400 })).toBe(3);
});
