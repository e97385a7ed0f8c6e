import { describe, expect, test } from "vitest";
import { Aside } from "./aside.js";
import type { SourceDocument } from "./desk-copy.js";

const kept: SourceDocument[] = [{ path: "a.plan.json", kind: "plan", raw: { kind: "plan" }, text: null, drafts: {} }];

function watched() {
  let calls = 0;
  let tell = (): void => undefined;
  const aside = new Aside({
    entries: () => kept,
    subscribe: (listener) => {
      tell = listener;
      return () => {
        tell = () => undefined;
      };
    },
  });
  const end = aside.subscribe(() => {
    calls += 1;
  });
  return { aside, end, told: () => calls, change: () => tell() };
}

describe("Aside", () => {
  test("lays documents beside those of the store, which stay as they are", () => {
    const { aside, told } = watched();
    const path = aside.path();
    aside.lay(path, { kind: "plan", version: 1, name: "Card" });
    expect(aside.entries().map((entry) => entry.path)).toEqual(["a.plan.json", path]);
    expect(aside.entries()[1]).toMatchObject({ kind: "plan", text: null });
    expect(kept).toHaveLength(1);
    aside.lay(path, null);
    expect(aside.entries()).toEqual(kept);
    expect(told()).toBe(2);
  });

  test("gives paths that no store has, each once", () => {
    const { aside } = watched();
    const paths = [aside.path(), aside.path()];
    expect(new Set(paths).size).toBe(2);
    for (const path of paths) expect(path).toContain("/");
  });

  test("tells of changes of the store too, until nobody listens", () => {
    const { aside, end, told, change } = watched();
    change();
    expect(told()).toBe(1);
    end();
    change();
    aside.lay(aside.path(), { kind: "plan" });
    expect(told()).toBe(1);
  });
});
