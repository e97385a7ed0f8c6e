import { expect, test } from "vitest";
import { alike } from "./alike.js";

test("alike() holds for copies of plain data, in whatever order their keys stand", () => {
  const data = { a: [1, Number.NaN, { deep: "x" }], b: null, c: Float64Array.of(1, 2) };
  expect(alike(data, structuredClone(data))).toBe(true);
  expect(alike({ a: 1, b: 2 }, { b: 2, a: 1 })).toBe(true);
});

test("alike() tells apart what differs anywhere", () => {
  const pairs: [unknown, unknown][] = [
    [1, 2],
    [0, -0],
    [1, "1"],
    [null, {}],
    [[1, 2], [1]],
    [[1], { 0: 1 }],
    [{ a: undefined }, {}],
    [{ a: undefined }, { b: undefined }],
    [{ a: [{ b: 1 }] }, { a: [{ b: 2 }] }],
    [Float64Array.of(1), Float64Array.of(2)],
    [Number.POSITIVE_INFINITY, Number.NaN],
  ];
  for (const [a, b] of pairs) {
    expect(alike(a, b), `${JSON.stringify(a)} and ${JSON.stringify(b)}`).toBe(false);
    expect(alike(b, a)).toBe(false);
  }
});
