import { expect, test } from "vitest";
import { followed } from "./followed.js";

const at = (near: boolean, now: number, calm: number) => ({ near, now, calm });

test("in view every change is followed", () => {
  const first = followed({ shown: 0, calm: 0 }, at(true, 1, 0));
  expect(first.shown).toBe(1);
  expect(followed(first, at(true, 2, 0)).shown).toBe(2);
});

test("out of view only what came to rest is followed", () => {
  const first = followed({ shown: 0, calm: 0 }, at(false, 1, 0));
  expect(first.shown).toBe(0);
  expect(followed(first, at(false, 2, 2)).shown).toBe(2);
});

test("what leaves the view keeps what it showed, though what is at rest is older, until something newer is", () => {
  const seen = followed({ shown: 0, calm: 0 }, at(true, 4, 0));
  const left = followed(seen, at(false, 4, 0));
  expect(left.shown).toBe(4);
  expect(followed(left, at(false, 5, 0)).shown).toBe(4);
  expect(followed(left, at(false, 5, 5)).shown).toBe(5);
});

test("the same stays the same object: nothing is drawn again", () => {
  const last = { shown: 3, calm: 2 };
  expect(followed(last, at(false, 9, 2))).toBe(last);
  expect(followed(last, at(true, 3, 2))).toBe(last);
});
