import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockIn, isMissing, numberIn } from "./log-number.js";
import { textBytes } from "./log-text.js";

const read = (text: string, decimal = ".") => {
  const bytes = textBytes(text);
  return numberIn(bytes, 0, bytes.length, decimal.charCodeAt(0));
};

describe("numberIn()", () => {
  // the judge is the language's own reading, correctly rounded (ECMA-262, StringToNumber)
  test("is exact up to 15 digits and 22 places", () => {
    const digits = fc.array(fc.integer({ min: 0, max: 9 }), { minLength: 1, maxLength: 15 });
    fc.assert(
      fc.property(digits, fc.nat(15), fc.integer({ min: -7, max: 7 }), fc.boolean(), (figures, point, power, minus) => {
        const text = figures.join("");
        const at = Math.min(point, text.length);
        const number = `${minus ? "-" : ""}${text.slice(0, at)}.${text.slice(at)}${power === 0 ? "" : `e${power}`}`;
        expect(read(number)).toBe(Number(number));
        expect(read(number.replace(".", ","), ",")).toBe(Number(number));
      }),
      { numRuns: 3000 },
    );
  });

  test("is within 4e-15 for any double as it is printed", () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e300, max: 1e300 }), (value) => {
        if (Math.abs(value) < 1e-290) return;
        expect(Math.abs(read(String(value)) - value)).toBeLessThanOrEqual(4e-15 * Math.abs(value));
      }),
      { numRuns: 3000 },
    );
  });

  test("takes what is a number and nothing else", () => {
    const near = fc.string({ unit: fc.constantFrom(..."0123456789.eE+-, x"), maxLength: 8 });
    const plain = /^[-+]?(\d+\.?\d*|\.\d+)([eE][-+]?\d{1,4})?$/;
    fc.assert(
      fc.property(near, (text) => {
        expect(Number.isNaN(read(text)), text).toBe(!plain.test(text));
      }),
      { numRuns: 5000 },
    );
  });

  test("reads the minus sign of print, and what is too large as infinite", () => {
    expect(read("−4.5")).toBe(-4.5);
    expect(read("1e999")).toBe(Number.POSITIVE_INFINITY);
    expect(read("1e308")).toBe(1e308);
    expect(read("5e-324")).toBeCloseTo(0, 300);
  });
});

const clocks: readonly (readonly [string, number])[] = [
  ["12:04:07.25", 43_447.25],
  ["0:00:00", 0],
  ["04:07.5", 247.5],
  ["2026-05-02T11:05:03.125Z", 39_903.125],
  ["2026-05-02 11:05:03", 39_903],
  ["11:05:03+01:00", 39_903],
  ["12:04:x", Number.NaN],
  ["1:2:3:4", Number.NaN],
  ["12.5", Number.NaN],
  [":05", Number.NaN],
];

test.each(clocks)("clockIn() reads %s", (text, seconds) => {
  const bytes = textBytes(text);
  expect(clockIn(bytes, 0, bytes.length, 46)).toBe(seconds);
});

test("isMissing() knows cells that hold nothing from words", () => {
  const missing = (text: string) => isMissing(textBytes(text), 0, textBytes(text).length);
  expect(["", "-", "NaN", "n/a", "null", "None"].map(missing)).toEqual([true, true, true, true, true, true]);
  expect(["0", "inf", "APOGEE", "nano", "--5"].map(missing)).toEqual([false, false, false, false, false]);
});
