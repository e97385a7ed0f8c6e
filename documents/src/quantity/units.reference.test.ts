import { expect, test } from "vitest";
import { parseQuantity } from "./parse.js";
import { type Dimension, findUnit, units } from "./units.js";

// NIST SP 811 (2008), Appendix B, and the international yard and pound agreement (1959): exact definitions, so 1e-12;
// psi, inHg are printed rounded, so 1e-7.
const exact: readonly (readonly [Dimension, string, number])[] = [
  ["length", "in", 0.0254],
  ["length", "ft", 0.3048],
  ["length", "yd", 0.9144],
  ["length", "mi", 1609.344],
  ["length", "nmi", 1852],
  ["mass", "lb", 0.45359237],
  ["mass", "oz", 0.028349523125],
  ["force", "lbf", 4.4482216152605],
  ["speed", "mph", 0.44704],
  ["speed", "kt", 0.5144444444444445],
  ["speed", "ft/s", 0.3048],
];
const rounded: readonly (readonly [Dimension, string, number])[] = [
  ["pressure", "psi", 6894.757293168],
  ["pressure", "inHg", 3386.389],
];

test("units have the factors of NIST SP 811 and the 1959 agreement", () => {
  expect(exact).toHaveLength(11);
  for (const [dimension, symbol, factor] of exact) {
    const found = findUnit(symbol, dimension)?.factor ?? Number.NaN;
    expect(Math.abs(found / factor - 1), symbol).toBeLessThanOrEqual(1e-12);
  }
  expect(rounded).toHaveLength(2);
  for (const [dimension, symbol, factor] of rounded) {
    const found = findUnit(symbol, dimension)?.factor ?? Number.NaN;
    expect(Math.abs(found / factor - 1), symbol).toBeLessThanOrEqual(1e-7);
  }
});

// Worked checks beside the same factors: K = (degF + 459.67)/1.8; 50 ft/s; 15 psi.
const worked: readonly (readonly [string, Dimension, number, number])[] = [
  ["50 ft/s", "speed", 15.24, 1e-12],
  ["15 psi", "pressure", 103_421.359, 1e-7],
  ["59 degF", "temperature", 288.15, 1e-12],
  ["20 mph", "speed", 8.9408, 1e-12],
  ["1/32 in", "length", 0.00079375, 1e-12],
];

test("parseQuantity() gives the worked values", () => {
  expect(worked).toHaveLength(5);
  for (const [text, dimension, value, tolerance] of worked) {
    const parsed = parseQuantity(text, dimension);
    expect(parsed.ok && Math.abs(parsed.value / value - 1), text).toBeLessThanOrEqual(tolerance);
  }
});

test("units of one dimension follow from each other by multiplication", () => {
  const factor = (symbol: string, dimension: Dimension) => findUnit(symbol, dimension)?.factor ?? Number.NaN;
  const inch = factor("in", "length");
  const pairs: readonly (readonly [number, number])[] = [
    [factor("ft", "length"), 12 * inch],
    [factor("yd", "length"), 36 * inch],
    [factor("mi", "length"), 63_360 * inch],
    [factor("lb", "mass"), 16 * factor("oz", "mass")],
    [factor("mph", "speed"), factor("mi", "length") / factor("h", "time")],
    [factor("kt", "speed"), factor("nmi", "length") / factor("h", "time")],
    [factor("ft/s", "speed"), factor("ft", "length")],
    [factor("oz in2", "inertia"), factor("oz", "mass") * inch ** 2],
    [factor("lb in2", "inertia"), factor("lb", "mass") * inch ** 2],
    [factor("lb ft2", "inertia"), 144 * factor("lb in2", "inertia")],
    [factor("g cm2", "inertia"), factor("g", "mass") * factor("cm", "length") ** 2],
    [factor("lbf", "force"), factor("lb", "mass") * factor("kgf", "force")],
    [factor("psi", "pressure"), factor("lbf", "force") / inch ** 2],
    [factor("deg", "angle"), Math.PI / 180],
  ];
  for (const [a, b] of pairs) expect(Math.abs(a / b - 1)).toBeLessThanOrEqual(1e-12);
});

test("units have one meaning for each way of writing within a dimension", () => {
  for (const [dimension, list] of Object.entries(units)) {
    const names = list.flatMap((unit) => [unit.symbol, ...unit.also]);
    expect(new Set(names).size, dimension).toBe(names.length);
  }
});
