import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { formatQuantity, fractionOfInch } from "./format.js";
import { parseQuantity } from "./parse.js";
import { bounds, type Dimension, units } from "./units.js";

const good: readonly (readonly [string, Dimension, number])[] = [
  ["75 mm", "length", 0.075],
  ["54mm", "length", 0.054],
  ["2 1/8 in", "length", 2.125 * 0.0254],
  ["1/32 in", "length", 0.0254 / 32],
  ["2½ in", "length", 2.5 * 0.0254],
  ['3"', "length", 3 * 0.0254],
  ["5 ft 3 in", "length", 63 * 0.0254],
  ["5' 3 1/2\"", "length", 63.5 * 0.0254],
  ["1,5 m", "length", 1.5],
  ["12,5 mm", "length", 0.0125],
  ["0,125 in", "length", 0.125 * 0.0254],
  ["1.500 m", "length", 1.5],
  ["20 um", "length", 20e-6],
  ["20 µm", "length", 20e-6],
  ["20 μm", "length", 20e-6],
  ["1.5e3 m", "length", 1500],
  [" .5 m ", "length", 0.5],
  ["−40 m", "length", -40],
  ["4.1 lb", "mass", 4.1 * 0.45359237],
  ["3 lb 4 oz", "mass", 3.25 * 0.45359237],
  ["330 g", "mass", 0.33],
  ["9 s", "time", 9],
  ["1.2 min", "time", 72],
  ["12 mph", "speed", 12 * 0.44704],
  ["35 ft/s", "speed", 35 * 0.3048],
  ["20 km/h", "speed", 20 / 3.6],
  ["10 kt", "speed", 18520 / 3600],
  ["55 degF", "temperature", 514.67 / 1.8],
  ["−5 degC", "temperature", 268.15],
  ["-5 °C", "temperature", 268.15],
  ["21°C", "temperature", 294.15],
  ["2 degC", "temperatureDifference", 2],
  ["9 degF", "temperatureDifference", 5],
  ["8 deg", "angle", (8 * Math.PI) / 180],
  ["8°", "angle", (8 * Math.PI) / 180],
  ["0.36 kg m2", "inertia", 0.36],
  ["0.36 kg·m²", "inertia", 0.36],
  ["0.36 kg m^2", "inertia", 0.36],
  ["3600 kg cm2", "inertia", 0.36],
  ["987 hPa", "pressure", 98_700],
  ["29.92 inHg", "pressure", 29.92 * 3386.389],
  ["15 psi", "pressure", 103_421.3593975],
  ["1.1 kN", "force", 1100],
  ["25 lbf", "force", 111.2055403815],
];

const bad: readonly (readonly [string, Dimension, string])[] = [
  ["75", "length", "unit-missing"],
  ["1 1/2", "length", "unit-missing"],
  ["1,500 ft", "length", "ambiguous-comma"],
  ["12,500 m", "length", "ambiguous-comma"],
  ["1,500,000 m", "length", "ambiguous-thousands"],
  ["1 500 m", "length", "ambiguous-thousands"],
  ["1.234,5 m", "length", "ambiguous-thousands"],
  ["1,234.5 m", "length", "ambiguous-thousands"],
  ["1/0 in", "length", "not-a-number"],
  ["1 3/2 in", "length", "not-a-number"],
  ["1..2 m", "length", "not-a-number"],
  ["m", "length", "number-missing"],
  ["", "length", "number-missing"],
  ["seven mm", "length", "number-missing"],
  ["NaN m", "length", "number-missing"],
  ["Infinity m", "length", "number-missing"],
  ["5 ft 14 in", "length", "not-a-number"],
  ["5 furlong", "length", "unit-unknown"],
  ["5 MM", "length", "unit-unknown"],
  ["5 kg", "length", "wrong-dimension"],
  ["5 degF", "angle", "wrong-dimension"],
  ["1e300 m", "length", "beyond-bounds"],
  ["0 K", "temperature", "beyond-bounds"],
  [`${"9".repeat(200)} m`, "length", "too-long"],
];

describe("parseQuantity()", () => {
  test.each(good)("reads %j as %s", (text, dimension, value) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed.ok, JSON.stringify(parsed)).toBe(true);
    if (parsed.ok) expect(Math.abs(parsed.value - value)).toBeLessThanOrEqual(1e-12 * Math.abs(value));
  });

  test.each(bad)("refuses %j as %s: %s", (text, dimension, code) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed.ok ? parsed.value : parsed.issue.code).toBe(code);
  });

  test("says how a comma could be written", () => {
    const parsed = parseQuantity("1,500 ft", "length");
    expect(parsed.ok ? "" : parsed.issue.accepted).toContain('"1500 ft" or "1.500 ft"');
  });

  test.each([
    ["-300 degC", "temperature", "a temperature with its unit, from -173.15 degC to 726.85 degC"],
    ["1e300 ms", "time", "a time with its unit, from -1000000000 ms to 1000000000 ms"],
  ] as const)("says what range is accepted where %j is beyond it", (text, dimension, accepted) => {
    const parsed = parseQuantity(text, dimension);
    expect(parsed.ok ? "" : parsed.issue.accepted).toBe(accepted);
  });

  test("gives the same SI value in every unit of a dimension, to 1e-12", () => {
    const dimensions = (Object.keys(units) as Dimension[]).filter((each) => each !== "temperature");
    fc.assert(
      fc.property(
        fc.constantFrom(...dimensions),
        fc.double({ min: 1e-2, max: 50, noNaN: true }),
        (dimension, value) => {
          for (const unit of units[dimension]) {
            const parsed = parseQuantity(formatQuantity(value, dimension, unit.symbol, { digits: 17 }), dimension);
            expect(parsed.ok && Math.abs(parsed.value / value - 1), unit.symbol).toBeLessThanOrEqual(1e-12);
          }
        },
      ),
    );
  });

  test("gives the same temperature in every unit, to 1e-12", () => {
    fc.assert(
      fc.property(fc.double({ min: 200, max: 350, noNaN: true }), (value) => {
        for (const unit of units.temperature) {
          const parsed = parseQuantity(
            formatQuantity(value, "temperature", unit.symbol, { digits: 17 }),
            "temperature",
          );
          expect(parsed.ok && Math.abs(parsed.value / value - 1), unit.symbol).toBeLessThanOrEqual(1e-12);
        }
      }),
    );
  });

  test("of what formatQuantity() writes gives the digits shown", () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 9e4, noNaN: true }), fc.integer({ min: 1, max: 9 }), (value, digits) => {
        const text = formatQuantity(value, "length", "mm", { digits });
        const parsed = parseQuantity(text, "length");
        expect(parsed.ok && Math.abs(parsed.value / value - 1), text).toBeLessThanOrEqual(
          0.5 * 10 ** (1 - digits) + 1e-12,
        );
      }),
    );
  });

  test("never throws, never gives what is not finite, and keeps within bounds", () => {
    const dimension = fc.constantFrom(...(Object.keys(units) as Dimension[]));
    const near = fc.string({ unit: fc.constantFrom(..."0123456789.,/ -eE½−mk'\"°²"), maxLength: 30 });
    fc.assert(
      fc.property(fc.oneof(fc.string({ maxLength: 90 }), near), dimension, (text, each) => {
        const parsed = parseQuantity(text, each);
        if (!parsed.ok) return;
        expect(parsed.value).toBeGreaterThanOrEqual(bounds[each][0]);
        expect(parsed.value).toBeLessThanOrEqual(bounds[each][1]);
      }),
      { numRuns: 3000 },
    );
  });

  test("refuses a very long text at once", () => {
    const start = performance.now();
    expect(parseQuantity("1 ".repeat(2_000_000), "length").ok).toBe(false);
    expect(performance.now() - start).toBeLessThan(50);
  });
});

describe("formatQuantity()", () => {
  test("writes the digits that matter", () => {
    expect(formatQuantity(0.075, "length", "mm")).toBe("75 mm");
    expect(formatQuantity(0.053975, "length", "mm")).toBe("53.98 mm");
    expect(formatQuantity(288.15, "temperature", "degC")).toBe("15 degC");
    expect(formatQuantity(0, "length", "m")).toBe("0 m");
    expect(formatQuantity(123456, "length", "m")).toBe("123500 m");
  });

  test("refuses what is not finite and units of another dimension", () => {
    expect(() => formatQuantity(Number.NaN, "length", "m")).toThrow(RangeError);
    expect(() => formatQuantity(1, "length", "kg")).toThrow(RangeError);
  });
});

test("fractionOfInch() gives the nearest 64th, reduced", () => {
  expect(fractionOfInch((11 / 64) * 0.0254)).toBe("11/64 in");
  expect(fractionOfInch(0.0047625)).toBe("3/16 in");
  expect(fractionOfInch(2.125 * 0.0254)).toBe("2 1/8 in");
  expect(fractionOfInch(0.0254)).toBe("1 in");
  expect(fractionOfInch(0)).toBe("0 in");
  expect(fractionOfInch(-0.003175)).toBe("-1/8 in");
});
