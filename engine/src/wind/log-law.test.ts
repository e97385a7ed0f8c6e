import { expect, test } from "vitest";
import { logLawRatio } from "./log-law.js";

test("logLawRatio() is 1 at the reference height and 0 down in the roughness", () => {
  expect(logLawRatio(10, 10, 0.03)).toBe(1);
  expect(logLawRatio(0.03, 10, 0.03)).toBe(0);
  expect(logLawRatio(-1, 10, 0.03)).toBe(0);
});
