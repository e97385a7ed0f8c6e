import { describe, expect, test } from "vitest";
import {
  decimals,
  delayColumn,
  delayNumber,
  depthWords,
  figureWords,
  holdsCell,
  percentCell,
  placeWords,
  rangeWords,
  shareWords,
} from "./numbers.en.js";

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

describe("figures in the flyer's units", () => {
  const plain = (text: string): string => text.replaceAll("\u00a0", " ");

  test("figureWords() and rangeWords() have the decimals asked for, else those of their measure", () => {
    expect(plain(figureWords(18.24, "speed", "metric"))).toBe("18.2 m/s");
    expect(plain(figureWords(18.24, "speed", "metric", 0))).toBe("18 m/s");
    // 18.24 m/s is 59.84 ft/s, 2 m is 6.56 ft
    expect(plain(figureWords(18.24, "speed", "imperial", 2))).toBe("60 ft/s");
    expect(plain(figureWords(2, "distance", "imperial", 2, 1))).toBe("6.6 ft");
    expect(plain(rangeWords(278.15, 298.15, "temperature", "imperial"))).toBe("41 to 77 °F");
  });

  test("depthWords() has the flyer's own first, placeWords() feet where they are asked for", () => {
    expect(plain(depthWords(0.00396875))).toBe("4.0 mm (5/32 in)");
    expect(plain(depthWords(0.00396875, "imperial"))).toBe("5/32 in (4.0 mm)");
    // 120 m is 393.7 ft
    expect(plain(placeWords(0, 120, "imperial"))).toBe("394 ft north of the pad (0 deg)");
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
