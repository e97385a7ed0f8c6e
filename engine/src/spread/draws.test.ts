import { expect, test } from "vitest";
import { scrambled } from "../../test/scrambled.js";
import { drawNormals, drawSize, flightInputsDrawn, scrambleCount } from "./draws.js";
import { mixSeed } from "./scramble.js";
import { sobolDimensions, sobolInteger } from "./sobol.js";

// check-values section 13, Sobol' points, dimensions 1-6, Gray-code order; recomputed, equal to a scientific library
const published = [
  [0, 0, 0, 0, 0, 0],
  [0.5, 0.5, 0.5, 0.5, 0.5, 0.5],
  [0.75, 0.25, 0.25, 0.25, 0.75, 0.75],
  [0.25, 0.75, 0.75, 0.75, 0.25, 0.25],
  [0.375, 0.375, 0.625, 0.875, 0.375, 0.125],
  [0.875, 0.875, 0.125, 0.375, 0.875, 0.625],
  [0.625, 0.125, 0.875, 0.625, 0.625, 0.875],
  [0.125, 0.625, 0.375, 0.125, 0.125, 0.375],
];

test("sobolInteger() gives the published points", () => {
  expect(published).toHaveLength(8);
  published.forEach((point, n) => {
    point.forEach((x, d) => {
      expect(sobolInteger(n, d) / 2 ** 32).toBe(x);
    });
  });
});

test("sobolInteger(): every coordinate of the first 1024 points sums to 511.5", () => {
  for (let d = 0; d < sobolDimensions; d++) {
    let sum = 0;
    for (let n = 0; n < 1024; n++) sum += sobolInteger(n, d) / 2 ** 32;
    expect(sum).toBe(511.5);
  }
});

test("scrambleIn() keeps one point in each dyadic interval, in every dimension and for any seed", () => {
  for (const seed of [0, 1, 12345, 4294967295])
    for (let d = 0; d < sobolDimensions; d++) {
      const cells = new Set<number>();
      for (let n = 0; n < 256; n++) cells.add(scrambled(sobolInteger(n, d), mixSeed(seed, d)) >>> 24);
      expect(cells.size).toBe(256);
    }
});

test("scrambleIn() keeps the balance of the first two dimensions in every elementary box of area 1/64", () => {
  for (let bits = 0; bits <= 6; bits++) {
    const boxes = new Set<string>();
    for (let n = 0; n < 64; n++) {
      const x = scrambled(sobolInteger(n, 0), 77);
      const y = scrambled(sobolInteger(n, 1), 78);
      boxes.add(`${bits === 0 ? 0 : x >>> (32 - bits)},${bits === 6 ? 0 : y >>> (26 + bits)}`);
    }
    expect(boxes.size).toBe(64);
  }
});

test("scrambleIn(): the same point lands anywhere, evenly, over seeds", () => {
  const counts = new Array<number>(16).fill(0);
  for (let seed = 0; seed < 16000; seed++) counts[scrambled(0x12345678, mixSeed(seed)) >>> 28]! += 1;
  const chiSquare = counts.reduce((s, c) => s + (c - 1000) ** 2 / 1000, 0);
  expect(chiSquare).toBeLessThan(37.7); // 99.9 % point of chi-square with 15 degrees of freedom, handbook table
});

test("drawNormals() has mean 0, variance 1 and no correlation in every dimension", () => {
  const out = new Float64Array(drawSize);
  const n = 4096;
  const sums = new Float64Array(drawSize);
  const squares = new Float64Array(drawSize);
  let cross = 0;
  for (let i = 0; i < n; i++) {
    drawNormals(1, i, out);
    for (let d = 0; d < flightInputsDrawn.length; d++) {
      sums[d]! += out[d]!;
      squares[d]! += out[d]! ** 2;
    }
    cross += out[0]! * out[1]!;
  }
  for (let d = 0; d < flightInputsDrawn.length; d++) {
    expect(Math.abs(sums[d]! / n)).toBeLessThan(0.01);
    expect(Math.abs(squares[d]! / n - 1)).toBeLessThan(0.02);
  }
  expect(Math.abs(cross / n)).toBeLessThan(0.02);
});

test("drawNormals() depends on seed and number alone", () => {
  const a = Float64Array.from(drawNormals(3, 1000, new Float64Array(drawSize)));
  drawNormals(3, 5, new Float64Array(drawSize));
  expect(drawNormals(3, 1000, new Float64Array(drawSize))).toEqual(a);
  expect(drawNormals(4, 1000, new Float64Array(drawSize))).not.toEqual(a);
  expect(drawNormals(3, 1000 + scrambleCount, new Float64Array(drawSize))).not.toEqual(a);
});
