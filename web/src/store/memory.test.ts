import type { Kind } from "@delaywright/documents";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { Entry } from "./entry.js";
import { Memory } from "./memory.js";

const kinds: readonly Kind[] = ["rocket", "motor", "flight"];
const entryOf = (path: string, kind: Kind, name: string): Entry => ({ path, kind, name }) as Entry;

/** The plain way: look at all, sort, as names are read. */
function plainly(memory: Memory, kind: Kind | undefined): readonly string[] {
  const { compare } = new Intl.Collator("en", { numeric: true, sensitivity: "base" });
  return memory
    .paths()
    .map((path) => memory.get(path) as Entry)
    .filter((entry) => kind === undefined || entry.kind === kind)
    .sort((one, other) => compare(one.name, other.name) || (one.path < other.path ? -1 : 1))
    .map(({ path, name }) => `${path} ${name}`);
}

test("list() is sorted by name after any change, and the same list where none of its entries changed", () => {
  const change = fc.record({
    path: fc.constantFrom("a", "b", "c", "d", "e"),
    kind: fc.constantFrom(...kinds),
    name: fc.constantFrom("Bag 2", "Bag 10", "bag 2", "Demo"),
    gone: fc.boolean(),
  });
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 30 }), (changes) => {
      const memory = new Memory();
      const all = [undefined, ...kinds];
      for (const { path, kind, name, gone } of changes) {
        const before = all.map((each) => memory.list(each));
        const old = memory.get(path)?.kind;
        memory.set(new Map([[path, gone ? undefined : entryOf(path, kind, name)]]));
        const now = all.map((each) => memory.list(each));
        all.forEach((each, i) => {
          expect(now[i]?.map((entry) => `${entry.path} ${entry.name}`)).toEqual(plainly(memory, each));
          const touched = each === undefined ? old !== undefined || !gone : each === old || (!gone && each === kind);
          if (!touched) expect(now[i]).toBe(before[i]);
          for (const entry of now[i] ?? []) expect(memory.get(entry.path)).toBe(entry);
        });
      }
    }),
  );
});
