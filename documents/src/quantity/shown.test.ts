import { describe, expect, test } from "vitest";
import { parseQuantity } from "./parse.js";
import { shownQuantity, systemOf } from "./shown.js";
import { amountIn, amountParts } from "./systems.js";
import { type Dimension, units } from "./units.js";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

describe("shownQuantity()", () => {
  test.each([
    ["180 mm", "length", "imperial", "7.087 in"],
    ["1.52 m", "length", "imperial", "4.987 ft"],
    ["2 1/4 in", "length", "metric", "57.15 mm"],
    ["330 g", "mass", "imperial", "11.64 oz"],
    ["3 lb 4 oz", "mass", "metric", "1.474 kg"],
    ["12 degC", "temperature", "imperial", "53.6 degF"],
    ["2 degC", "temperatureDifference", "imperial", "3.6 degF"],
    ["987 hPa", "pressure", "imperial", "29.15 inHg"],
    ["15 psi", "pressure", "metric", "103.4 kPa"],
    ["1.1 kN", "force", "imperial", "247.3 lbf"],
    ["20 m/s", "speed", "imperial", "65.62 ft/s"],
  ] as const)("shows %s, a %s, in %s units", (text, dimension, system, expected) => {
    expect(shownQuantity(text, dimension, system)).toBe(expected);
  });

  test("leaves what is of that system, of both, or no quantity", () => {
    expect(shownQuantity(" 2 1/8in", "length", "imperial")).toBe(" 2 1/8in");
    expect(shownQuantity("1,5 m", "length", "metric")).toBe("1,5 m");
    expect(shownQuantity("9 s", "time", "imperial")).toBe("9 s");
    expect(shownQuantity("8 kt", "speed", "imperial")).toBe("8 kt");
    expect(shownQuantity("18o mm", "length", "imperial")).toBe("18o mm");
  });

  test("shows the wind in mph, and lengths in fractions where asked", () => {
    expect(shownQuantity("2 m/s", "speed", "imperial", { wind: true })).toBe("4.474 mph");
    expect(shownQuantity("4 mm", "length", "imperial", { fractions: true })).toBe("5/32 in");
    expect(shownQuantity("180 mm", "length", "imperial", { digits: 2 })).toBe("7.1 in");
  });

  test("shows lengths of parts in inches as far as a tape goes, also those typed in metres", () => {
    expect(shownQuantity("1.52 m", "length", "imperial", { parts: true })).toBe("59.84 in");
    expect(shownQuantity("4.5 m", "length", "imperial", { parts: true })).toBe("14.76 ft");
    expect(shownQuantity("1.5 m", "length", "metric", { parts: true })).toBe("1.5 m");
  });

  test("has a counterpart of the other system for every unit but those of both", () => {
    for (const dimension of Object.keys(units) as Dimension[]) {
      for (const { symbol } of units[dimension]) {
        const own = systemOf(symbol);
        if (own === undefined) {
          expect(["nmi", "kt", "s", "ms", "min", "h", "rad", "mrad", "deg"], symbol).toContain(symbol);
          continue;
        }
        const number = dimension === "temperature" ? 300 : 3;
        const other = shownQuantity(`${number} ${symbol}`, dimension, own === "metric" ? "imperial" : "metric", {
          digits: 12,
        });
        const [before, after] = [`${number} ${symbol}`, other].map((text) => parseQuantity(text, dimension));
        if (!before?.ok || !after?.ok) throw new Error(`${symbol}: ${other}`);
        expect(after.value, `${symbol} as ${other}`).toBeCloseTo(before.value, 6);
        expect(systemOf(after.unit), other).not.toBe(own);
      }
    }
  });
});

describe("amountIn()", () => {
  test.each([
    [614.2, "distance", "614 m", "2015 ft"],
    [0.076, "length", "76 mm", "2.99 in"],
    [0.00396875, "depth", "4.0 mm", "5/32 in"],
    [15.52, "speed", "15.5 m/s", "51 ft/s"],
    [2, "wind", "2.0 m/s", "4 mph"],
    [1.95, "mass", "1.95 kg", "4.30 lb"],
    [0.05, "smallMass", "50 g", "1.8 oz"],
    [285.15, "temperature", "12 °C", "54 °F"],
    [98_700, "pressure", "987 hPa", "29.15 inHg"],
    [1100, "force", "1100 N", "247 lbf"],
    [60, "energy", "60 J", "44 ft lbf"],
    [9.4, "time", "9.4 s", "9.4 s"],
  ] as const)("writes %d as a %s", (value, measure, metric, imperial) => {
    expect(plain(amountIn(value, measure, "metric"))).toBe(metric);
    expect(plain(amountIn(value, measure, "imperial"))).toBe(imperial);
  });

  test("never breaks a line, never says -0, and shows a dash for what is no number", () => {
    expect(amountIn(60, "energy", "imperial")).not.toContain(" ");
    expect(plain(amountIn(-0.2, "distance", "metric"))).toBe("0 m");
    expect(plain(amountIn(Number.NaN, "mass", "imperial"))).toBe("– lb");
  });

  test("amountParts() keeps the decimals of a column", () => {
    expect([1, 12.345].map((value) => amountParts(value, "mass", "metric").figure)).toEqual(["1.00", "12.35"]);
    expect(amountParts(12.345, "mass", "metric", 0)).toEqual({ figure: "12", unit: "kg" });
  });
});
