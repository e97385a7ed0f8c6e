import { expect, test } from "vitest";
import { kindNames, kinds } from "./kinds/kinds.js";
import { migrate, type Raw, type VersionChain } from "./migrate.js";

// An invented kind with three versions: a field renamed, then one split.
const called: number[] = [];
const chain: VersionChain = {
  current: 3,
  steps: [
    ({ title, ...rest }: Raw) => {
      called.push(1);
      return { ...rest, name: title };
    },
    ({ size, ...rest }: Raw) => {
      called.push(2);
      return { ...rest, length: size, width: size };
    },
  ],
};

test("migrate() runs every step from a document's version on", () => {
  const migrated = migrate({ version: 1, title: "one", size: "2 m" }, chain);
  expect(migrated).toEqual({
    kind: "current",
    from: 1,
    document: { version: 3, name: "one", length: "2 m", width: "2 m" },
  });
  expect(migrate({ version: 2, name: "two", size: "1 m" }, chain)).toMatchObject({ from: 2, document: { version: 3 } });
  expect(new Set(called).size).toBe(chain.steps.length);
});

test("migrate() answers that a document is newer, and leaves it", () => {
  expect(migrate({ version: 4 }, chain)).toEqual({ kind: "newer", version: 4, current: 3 });
});

test("migrate() finds no version where there is none", () => {
  for (const version of [undefined, "1", 0, 1.5, null]) expect(migrate({ version }, chain).kind).toBe("no-version");
});

test("every kind has a step for each of its versions", () => {
  expect(kindNames).toHaveLength(11);
  for (const kind of kindNames) expect(kinds[kind].versions.steps).toHaveLength(kinds[kind].versions.current - 1);
});
