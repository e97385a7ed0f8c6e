import { expect, test } from "vitest";
import { headingsKey } from "./headings-key.js";

test("headingsKey() is equal for equal headings, whatever their capitals and blanks, and for no others", () => {
  const key = headingsKey(["Time (s)", "Height (m)"]);
  expect(key).toBe("time (s) | height (m)");
  expect(headingsKey([" TIME  (s)", "height (M) "])).toBe(key);
  expect(headingsKey(["Height (m)", "Time (s)"])).not.toBe(key);
  expect(headingsKey(["Time (s)", "Height (ft)"])).not.toBe(key);
  expect(headingsKey([])).toBe("");
  expect(headingsKey(["", " "])).toBe("");
});

test("headingsKey() is short for many columns, and still tells them apart", () => {
  const many = (last: string) => headingsKey([...Array.from({ length: 500 }, (_, k) => `column ${k}`), last]);
  expect(many("a").length).toBeLessThanOrEqual(1000);
  expect(many("a")).not.toBe(many("b"));
});
