import { expect, test } from "vitest";
import { drawNormals, drawSize, flightInputsDrawn } from "./draws.js";
import { varianceShares } from "./sensitivity.js";

/** Draws of standard normal inputs, row-major. */
function normalsOf(draws: number, inputs: number): Float64Array {
  const row = new Float64Array(drawSize);
  const out = new Float64Array(draws * inputs);
  for (let d = 0; d < draws; d++) out.set(drawNormals(1, d, row).subarray(0, inputs), d * inputs);
  return out;
}

function figure(normals: Float64Array, inputs: number, f: (z: Float64Array) => number): Float64Array {
  return Float64Array.from({ length: normals.length / inputs }, (_, d) =>
    f(normals.subarray(d * inputs, (d + 1) * inputs)),
  );
}

const close = (value: number, expected: number, within: number, what = "") =>
  expect(Math.abs(value - expected), `${what}: ${value}`).toBeLessThan(within);

test("varianceShares() of a sum are the squares of its factors", () => {
  const inputs = flightInputsDrawn.length;
  const normals = normalsOf(2000, inputs);
  const factors = [5, -3, 2, 1, 0.5, ...new Array<number>(inputs - 5).fill(0)];
  const y = figure(normals, inputs, (z) => 100 + factors.reduce((sum, c, i) => sum + c * z[i]!, 0));
  const whole = factors.reduce((sum, c) => sum + c * c, 0);
  const groups = factors.map((_, i) => i);
  const [shares] = varianceShares(normals, inputs, groups, inputs, [y]);
  // exact but for the sampled variance of 2000 quasi-random draws
  factors.forEach((c, i) => {
    close(shares!.first[i]!, (c * c) / whole, 0.005, `first ${i}`);
    close(shares!.total[i]!, (c * c) / whole, 0.005, `total ${i}`);
  });
  expect(shares!.unexplained).toBeLessThan(0.005);
});

test("varianceShares() counts a product towards both inputs' totals and to none alone, and a square to one", () => {
  const normals = normalsOf(2000, 4);
  const product = figure(normals, 4, (z) => z[0]! * z[1]!);
  const square = figure(normals, 4, (z) => z[2]! ** 2 + 2 * z[3]!);
  const [ofProduct, ofSquare] = varianceShares(normals, 4, [0, 1, 2, 3], 4, [product, square]);
  [0, 0, 0, 0].forEach((share, i) => {
    close(ofProduct!.first[i]!, share, 0.01, `product, first ${i}`);
  });
  [1, 1, 0, 0].forEach((share, i) => {
    close(ofProduct!.total[i]!, share, 0.03, `product, total ${i}`);
  });
  // variances 2 and 4
  [0, 0, 1 / 3, 2 / 3].forEach((share, i) => {
    close(ofSquare!.first[i]!, share, 0.03, `square, first ${i}`);
    close(ofSquare!.total[i]!, share, 0.03, `square, total ${i}`);
  });
});

test("varianceShares() counts grouped inputs as one", () => {
  const normals = normalsOf(2000, 4);
  const y = figure(normals, 4, (z) => 3 * z[0]! + 4 * z[1]! + 2 * z[0]! * z[1]! + 5 * z[2]!);
  const [shares] = varianceShares(normals, 4, [0, 0, 1, 2], 3, [y]);
  // 9 + 16 + 4 inside the first group, 25 in the second
  [29 / 54, 25 / 54, 0].forEach((share, i) => {
    close(shares!.first[i]!, share, 0.03, `first ${i}`);
    close(shares!.total[i]!, share, 0.03, `total ${i}`);
  });
});

test("varianceShares() says what it cannot explain, and leaves out draws without a value", () => {
  const normals = normalsOf(2000, 2);
  const [rough] = varianceShares(normals, 2, [0, 1], 2, [figure(normals, 2, (z) => Math.sin(9 * z[0]!))]);
  expect(rough!.unexplained).toBeGreaterThan(0.9);
  const holed = figure(normals, 2, (z) => 2 * z[0]! + z[1]!);
  for (let i = 0; i < 2000; i += 7) holed[i] = Number.NaN;
  const [shares] = varianceShares(normals, 2, [0, 1], 2, [holed]);
  close(shares!.first[0]!, 0.8, 0.02);
  const [flat] = varianceShares(normals, 2, [0, 1], 2, [new Float64Array(2000).fill(3)]);
  expect(flat).toEqual({ first: [0, 0], total: [0, 0], unexplained: 0 });
});

test("varianceShares() still names the weightiest input from few draws", () => {
  const inputs = flightInputsDrawn.length;
  for (const draws of [40, 100, 256]) {
    const normals = normalsOf(draws, inputs);
    const y = figure(normals, inputs, (z) => 3 * z[0]! + z[1]!);
    const [shares] = varianceShares(
      normals,
      inputs,
      flightInputsDrawn.map((_, i) => i),
      inputs,
      [y],
    );
    close(shares!.first[0]!, 0.9, 0.15, `${draws} draws`);
    expect(Math.max(...shares!.total)).toBe(shares!.total[0]);
  }
});
