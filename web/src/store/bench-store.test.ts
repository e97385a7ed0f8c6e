import "fake-indexeddb/auto";
import { loadPlan, type Raw } from "@delaywright/documents";
import fc from "fast-check";
import { afterEach, expect, test } from "vitest";
import { closeStores, freshName, freshStore, nextTurn } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "./bench-store.js";
import { EXAMPLE_PLAN } from "./worked-example.js";

afterEach(closeStores);

const rocket: Raw = { kind: "rocket", version: 1, name: "Demo", diameter: "76 mm", fins: [{ root: "180 mm" }] };
const bag: Raw = { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json" };
const noMirror = { getItem: () => null, setItem: () => undefined };

async function withRocket(): Promise<{ store: BenchStore; path: string }> {
  const store = await freshStore();
  const path = store.add("rocket", rocket);
  await nextTurn();
  return { store, path };
}

function contents(store: BenchStore): unknown {
  return store.memory.list().map(({ path, raw, text, drafts }) => ({ path, raw, text, drafts }));
}

test("change that takes a document away and sets it anew keeps nothing of the old one", async () => {
  const { store, path } = await withRocket();
  store.change("drafted", [{ path, drafts: { diameter: "7x" } }]);
  store.change("anew", [
    { path, remove: true },
    { path, text: "no document" },
  ]);
  const { text, drafts } = store.memory.get(path) ?? {};
  expect({ text, drafts }).toEqual({ text: "no document", drafts: {} });
  store.undo();
  expect(store.memory.get(path)?.raw).toEqual(rocket);
});

test("open puts the worked example on an empty bench, once, and its plan loads without an issue", async () => {
  const name = freshName();
  const store = await freshStore({ name, mirror: noMirror });
  const loaded = await loadPlan(EXAMPLE_PLAN, store.files());
  expect(loaded.issues).toEqual([]);
  expect(loaded.parts).toBeDefined();
  expect(store.memory.list()).toHaveLength(11);
  expect(store.memory.list().every(({ raw }) => String(raw?.["note"]).startsWith("Invented"))).toBe(true);
  expect(store.memory.get("demo-i250.motor.json")?.raw?.["thrust"]).toHaveProperty("newtons");
  expect(store.steps.get().undo).toBeNull();
  await store.wipe();
  store.close();
  const again = await freshStore({ name, mirror: noMirror });
  expect(again.memory.list()).toEqual([]);
  expect(again.installExample()).toBe(EXAMPLE_PLAN);
  expect(again.installExample()).toBe(EXAMPLE_PLAN);
  expect(again.memory.list()).toHaveLength(11);
});

test("setField keeps the last right value while a text cannot be read", async () => {
  const { store, path } = await withRocket();
  store.setField(path, "fins[0].root", "18o mm", "Root");
  expect(store.memory.get(path)).toMatchObject({ raw: rocket, drafts: { "fins[0].root": "18o mm" } });
  store.setField(path, "fins[0].root", "180.5 mm", "Root");
  expect(store.memory.get(path)?.raw?.["fins"]).toEqual([{ root: "180.5 mm" }]);
  expect(store.memory.get(path)?.drafts).toEqual({});
});

test("setField keeps a club's last right limit while the next one is half typed, beside that of another rule", async () => {
  const name = freshName();
  const store = await freshStore({ name, mirror: noMirror });
  const limits = { "wind-limit": { look: "4 m/s", stop: "6 m/s" }, "landing-inside": {} };
  const raw = { kind: "rule-set", version: 1, name: "Club", limits };
  const path = store.add("rule-set", raw);
  store.setField(path, "limits.wind-limit.stop", "7 m", "Stop");
  store.setField(path, "limits.landing-inside.stop", 30, "Stop");
  expect(store.memory.get(path)).toMatchObject({
    raw,
    drafts: { "limits.wind-limit.stop": "7 m", "limits.landing-inside.stop": "30" },
  });
  await store.keeper.idle();
  store.close();
  const again = await freshStore({ name, mirror: noMirror });
  expect(again.memory.get(path)).toMatchObject({ raw, drafts: { "limits.wind-limit.stop": "7 m" } });
  again.setField(path, "limits.wind-limit.stop", "7 m/s", "Stop");
  again.setField(path, "limits.landing-inside.stop", 0.3, "Stop");
  expect(again.memory.get(path)).toMatchObject({
    raw: { limits: { "wind-limit": { look: "4 m/s", stop: "7 m/s" }, "landing-inside": { stop: 0.3 } } },
    drafts: {},
  });
  again.setField(path, "limits.wind-limit.look", "4 m", "Look");
  again.setField(path, "limits.wind-limit", "off", "Wind: turned off");
  expect(again.memory.get(path)?.raw).toMatchObject({ limits: { "wind-limit": "off" } });
  expect(again.memory.get(path)?.drafts).toEqual({});
});

test("setField of what is there already changes nothing, and of what is not there does no harm", async () => {
  const { store, path } = await withRocket();
  const before = store.memory.get(path);
  store.setField(path, "diameter", "76 mm", "Diameter");
  store.setField("nowhere.json", "diameter", "76 mm", "Diameter");
  expect(store.memory.get(path)).toBe(before);
});

test("setField: typing in one field is one step, until the field is left or another is touched", async () => {
  const { store, path } = await withRocket();
  for (const text of ["7", "75", "75 ", "75 mm"]) {
    store.setField(path, "diameter", text, "Diameter");
    await nextTurn();
  }
  store.endMerge();
  store.setField(path, "diameter", "74 mm", "Diameter");
  await nextTurn();
  store.setField(path, "length", "1.5 m", "Length");
  await nextTurn();
  store.undo();
  expect(store.memory.get(path)?.raw?.["length"]).toBeUndefined();
  store.undo();
  expect(store.memory.get(path)?.raw?.["diameter"]).toBe("75 mm");
  store.undo();
  expect(store.memory.get(path)?.raw?.["diameter"]).toBe("76 mm");
});

test("change: everything of one turn is one step, under its first label", async () => {
  const { store, path } = await withRocket();
  store.change("Fins: fin removed", [{ path, raw: { ...rocket, fins: [] } }]);
  store.setField(path, "length", "1.5 m", "Length");
  expect(store.steps.get().undo?.label).toBe("Fins: fin removed");
  store.undo();
  expect(store.memory.get(path)?.raw).toEqual(rocket);
});

test("change: a text is read if it can be, and kept if it cannot", async () => {
  const store = await freshStore();
  store.change("paste", [{ path: "a.json", text: '{ "kind": "rocket", ' }]);
  expect(store.memory.get("a.json")).toMatchObject({ kind: null, raw: null, text: '{ "kind": "rocket", ' });
  store.change("mend", [{ path: "a.json", text: JSON.stringify(rocket) }]);
  expect(store.memory.get("a.json")).toMatchObject({ kind: "rocket", raw: rocket, text: null, unreadable: null });
});

test("add numbers a name that another has, but not one that was asked for", async () => {
  const { store } = await withRocket();
  expect(store.memory.get(store.add("rocket", rocket))).toMatchObject({ path: "demo-2.rocket.json", name: "Demo 2" });
  expect(store.memory.get(store.add("rocket", rocket, "Demo"))).toMatchObject({
    path: "demo-3.rocket.json",
    name: "Demo",
  });
});

test("list is the same list until one of its entries changes", async () => {
  const { store, path } = await withRocket();
  const [tools, rockets] = [store.memory.list("tool"), store.memory.list("rocket")];
  store.setField(path, "length", "1.5 m", "Length");
  expect(store.memory.list("tool")).toBe(tools);
  expect(store.memory.list("rocket")).not.toBe(rockets);
});

test("undo brings a deleted document back", async () => {
  const { store, path } = await withRocket();
  store.change("delete", [{ path, remove: true }]);
  await nextTurn();
  expect(store.memory.get(path)).toBeUndefined();
  expect(store.undo()).toMatchObject({ ok: true, paths: [path] });
  expect(store.memory.get(path)?.raw).toEqual(rocket);
  expect(store.redo().ok).toBe(true);
  expect(store.memory.get(path)).toBeUndefined();
});

test("undo of a recorded reading asks, and is refused once it is ten minutes old", async () => {
  let now = 1_000_000;
  const store = await freshStore({ now: () => now });
  const path = store.add("motor-in-hand", bag);
  await nextTurn();
  const record = (after: string) => {
    const { raw } = store.memory.get(path) ?? {};
    const readings = [...((raw?.["readings"] as unknown[]) ?? []), { when: "2026-05-02T10:12", after }];
    store.change("reading", [{ path, raw: { ...raw, readings } as Raw }]);
    return nextTurn();
  };
  await record("22.2 mm");
  expect(store.steps.get().undo).toMatchObject({ asks: true });
  expect(store.undo()).toMatchObject({ ok: false, reason: "asks" });
  expect(store.undo({ confirmed: true }).ok).toBe(true);
  expect(store.memory.get(path)?.raw).toEqual(bag);
  await record("22.3 mm");
  now += 600_000;
  expect(store.undo({ confirmed: true })).toMatchObject({ ok: false, reason: "reading-stays" });
  expect(store.memory.get(path)?.raw?.["readings"]).toHaveLength(1);
  expect(store.undo()).toMatchObject({ ok: false, reason: "changed-elsewhere" });
  expect(store.memory.get(path)?.raw?.["readings"]).toHaveLength(1);
});

type Act =
  | { readonly set: string; readonly value: string | undefined }
  | { readonly add: string }
  | { readonly remove: number }
  | { readonly row: true };
const act: fc.Arbitrary<Act> = fc.oneof(
  fc.record({
    set: fc.constantFrom("diameter", "length", "nose.length", "fins[0].root", "name"),
    value: fc.constantFrom("76 mm", "1.5 m", "12", "x", "", undefined),
  }),
  fc.record({ add: fc.constantFrom("One", "Two") }),
  fc.record({ remove: fc.nat(5) }),
  fc.constant({ row: true } as const),
);

function perform(store: BenchStore, each: Act): void {
  const entries = store.memory.list();
  const [first] = entries;
  if ("add" in each) store.add("rocket", rocket, each.add);
  else if (first === undefined) return;
  else if ("remove" in each)
    store.change("delete", [{ path: entries[each.remove % entries.length]?.path ?? "", remove: true }]);
  else if ("row" in each)
    store.change("row", [
      { path: first.path, raw: { ...first.raw, fins: [...((first.raw?.["fins"] as unknown[]) ?? []), {}] } as Raw },
    ]);
  else store.setField(first.path, each.set, each.value, each.set);
}

test("undo of everything gives the original, and redo of everything what was made of it", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(act, { maxLength: 15 }), async (acts) => {
      const { store } = await withRocket();
      store.endMerge();
      const original = JSON.stringify(contents(store));
      const steps = () => (store.steps.get().undo === null ? 0 : 1);
      for (const each of acts) {
        perform(store, each);
        await nextTurn();
      }
      const made = JSON.stringify(contents(store));
      let count = 0;
      while (steps() > 0 && store.steps.get().undo?.label !== "New rocket: Demo") {
        expect(store.undo().ok).toBe(true);
        count += 1;
      }
      expect(JSON.stringify(contents(store))).toBe(original);
      for (; count > 0; count -= 1) expect(store.redo().ok).toBe(true);
      expect(JSON.stringify(contents(store))).toBe(made);
      await store.keeper.idle();
      closeStores();
    }),
    { numRuns: 40 },
  );
});

test("a killed page: whatever was said to be kept is there again, with its drafts", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(act, { minLength: 1, maxLength: 8 }), async (acts) => {
      const name = freshName();
      const store = await freshStore({ name });
      store.add("rocket", rocket);
      for (const each of acts) {
        perform(store, each);
        await store.keeper.write();
      }
      await store.keeper.idle();
      expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
      const kept = contents(store);
      store.setField(store.memory.list()[0]?.path ?? "", "length", "9 m", "never written");
      const after = await freshStore({ name });
      const found = contents(after);
      const last = contents(store);
      expect([JSON.stringify(kept), JSON.stringify(last)]).toContain(JSON.stringify(found));
      closeStores();
    }),
    { numRuns: 20 },
  );
});
