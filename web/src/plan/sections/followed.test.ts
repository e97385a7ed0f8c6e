import { expect, test } from "vitest";
import { followed } from "./followed.js";

const values = Array.from({ length: 10 }, (_, order) => ({ order }));
const value = (order: number) => values[order]!;
const at = (near: boolean, now: number, calm: number) => ({ near, now: value(now), calm: value(calm) });

test("in view every change is followed", () => {
  expect(followed(value(0), at(true, 1, 0))).toBe(value(1));
  expect(followed(value(1), at(true, 2, 0))).toBe(value(2));
});

test("out of view only what came to rest is followed", () => {
  expect(followed(value(0), at(false, 1, 0))).toBe(value(0));
  expect(followed(value(0), at(false, 2, 2))).toBe(value(2));
});

test("what leaves the view keeps what it showed until something newer came to rest, whatever older came to rest before", () => {
  expect(followed(value(4), at(false, 4, 0))).toBe(value(4));
  expect(followed(value(4), at(false, 4, 2))).toBe(value(4));
  expect(followed(value(4), at(false, 5, 3))).toBe(value(4));
  expect(followed(value(4), at(false, 5, 5))).toBe(value(5));
});

test("what comes into view again keeps what came to rest, where what is drawn in view has not caught up", () => {
  expect(followed(value(5), at(true, 4, 5))).toBe(value(5));
});
