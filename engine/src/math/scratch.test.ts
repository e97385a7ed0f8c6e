import { expect, test } from "vitest";
import { doublesScratch, Scratch } from "./scratch.js";

test("Scratch gives the same memory again, as long as was asked for, and grows", () => {
  const scratch = doublesScratch();
  const first = scratch.take(3);
  first.set([1, 2, 3]);
  expect(scratch.take(2)).toEqual(Float64Array.of(1, 2));
  expect(scratch.take(3)).toBe(first);
  const longer = scratch.take(5);
  expect(longer).toHaveLength(5);
  expect(scratch.take(3).buffer).toBe(longer.buffer);
  expect(first).toEqual(Float64Array.of(1, 2, 3));
});

test("Scratch keeps rows of the kind that it was told", () => {
  expect(new Scratch((count) => new Uint16Array(count)).take(2)).toBeInstanceOf(Uint16Array);
});
