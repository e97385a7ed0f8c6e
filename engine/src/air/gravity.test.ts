import { expect, test } from "vitest";
import { fieldGravity, normalGravity } from "./gravity.js";

test("normalGravity() is the same north and south and falls with height", () => {
  expect(normalGravity(-0.6, 100)).toBe(normalGravity(0.6, 100));
  expect(normalGravity(0.6, 101)).toBeLessThan(normalGravity(0.6, 100));
});

test("fieldGravity() is the normal gravity over the pad", () => {
  const gravity = fieldGravity({ latitude: 0.913, elevation: 210 });
  expect(gravity.surface).toBe(gravity.at(0));
  for (const z of [-5, 0, 900, 5_000, 30_000]) {
    expect(Math.abs(gravity.at(z) / normalGravity(0.913, 210 + z) - 1)).toBeLessThan(1e-15);
  }
});
