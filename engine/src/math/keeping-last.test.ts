import { expect, test } from "vitest";
import { keepingLast } from "./keeping-last.js";

test("keepingLast() makes anew only what differs from the last", () => {
  let made = 0;
  const twice = keepingLast(({ values }: { readonly values: readonly number[] }) => {
    made += 1;
    return values.map((value) => 2 * value);
  });
  const first = twice({ values: [1, 2] });
  expect(first).toEqual([2, 4]);
  expect(twice({ values: [1, 2] })).toBe(first);
  expect(made).toBe(1);
  expect(twice({ values: [1, 3] })).toEqual([2, 6]);
  expect(twice({ values: [1, 2] })).toEqual([2, 4]);
  expect(made).toBe(3);
});
