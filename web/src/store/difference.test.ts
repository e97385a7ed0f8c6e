import fc from "fast-check";
import { expect, test } from "vitest";
import { differences, fits, inverse, same, withDifferences } from "./difference.js";

const value = fc.letrec<{ any: unknown }>((tie) => ({
  any: fc.oneof(
    { maxDepth: 3 },
    fc.constantFrom("x", "y", 1, 2, true, null),
    fc.array(tie("any"), { maxLength: 3 }),
    fc.dictionary(fc.constantFrom("a", "b", "c"), tie("any"), { maxKeys: 3 }),
  ),
})).any;

test("differences made in the first give the second, and taken back give the first", () => {
  fc.assert(
    fc.property(value, value, (one, other) => {
      const changes = differences(one, other);
      expect(withDifferences(one, changes)).toEqual(other);
      const back = changes.map(inverse);
      expect(back.every((change) => fits(other, change))).toBe(true);
      expect(withDifferences(other, back)).toEqual(one);
    }),
    { numRuns: 500 },
  );
});

test("differences of equal values are none", () => {
  fc.assert(
    fc.property(value, (each) => {
      expect(differences(each, structuredClone(each))).toEqual([]);
      expect(same(each, structuredClone(each))).toBe(true);
    }),
  );
});

test("differences of rows added by two hands keep both", () => {
  const added = (row: string) => differences({ readings: ["a"] }, { readings: ["a", row] });
  const both = withDifferences(withDifferences({ readings: ["a"] }, added("mine")), added("theirs"));
  expect(both).toEqual({ readings: ["a", "mine", "theirs"] });
  const first = (row: string) => differences({}, { readings: [row] });
  expect(withDifferences(withDifferences({}, first("mine")), first("theirs"))).toEqual({
    readings: ["mine", "theirs"],
  });
});

test("fits refuses a field that has another value, and a row that is not the last any more", () => {
  const [field] = differences({ a: 1 }, { a: 2 }).map(inverse);
  expect(field && fits({ a: 3, b: 1 }, field)).toBe(false);
  expect(field && fits({ a: 2, b: 1 }, field)).toBe(true);
  const [row] = differences({ a: [1] }, { a: [1, 2] }).map(inverse);
  expect(row && fits({ a: [1, 2, 3] }, row)).toBe(false);
});
