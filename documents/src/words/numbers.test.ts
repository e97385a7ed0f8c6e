import { describe, expect, test } from "vitest";
import { decimals, delayColumn, delayNumber, holdsCell, percentCell, placeWords, shareWords } from "./numbers.en.js";

describe("percentCell()", () => {
  test.each([
    [0, "<1"],
    [0.004, "<1"],
    [0.0099, "<1"],
    [0.01, "1"],
    [0.914, "91"],
    [0.99, "99"],
    [0.991, ">99"],
    [1, ">99"],
  ])("%f is %s: never nothing, never all", (odds, cell) => expect(percentCell(odds)).toBe(cell));
});

describe("holdsCell()", () => {
  test.each([
    [0.18, "18"],
    [0.952, "95.2"],
    [0.9961, "99.6"],
    [0.9995, ">99.9"],
    [1, ">99.9"],
  ])("%f is %s", (odds, cell) => expect(holdsCell(odds)).toBe(cell));
});

describe("delayNumber()", () => {
  test.each([
    [10, "10"],
    [9.999999999, "10"],
    [9.25, "9.25"],
    [10.976, "11.0"],
  ])("%f is %s", (delay, text) => expect(delayNumber(delay)).toBe(text));

  test("delayColumn() keeps the points under each other", () => {
    expect(delayColumn([14, 10.976, 9])).toEqual(["14.0", "11.0", "9.0"]);
    expect(delayColumn([14, 9])).toEqual(["14", "9"]);
  });
});

describe("decimals()", () => {
  test("has no negative zero", () => expect(decimals(-0.01, 1)).toBe("0.0"));
});

describe("placeWords()", () => {
  test.each([
    [0, 0, "at the pad"],
    [0, 120, "120 m north of the pad (0 deg)"],
    [-50, -50, "71 m south-west of the pad (225 deg)"],
    [80, 0, "80 m east of the pad (90 deg)"],
  ])("%f east, %f north is %s", (east, north, words) => {
    expect(placeWords(east, north).replaceAll("\u00a0", " ")).toBe(words);
  });
});

describe("shareWords()", () => {
  test("says round shares in words", () => {
    expect([0.5, 0.33, 0.25, 0.66, 0.75, 0.98].map(shareWords)).toEqual([
      "half",
      "a third",
      "a quarter",
      "two thirds",
      "three quarters",
      "nearly all",
    ]);
  });
});
