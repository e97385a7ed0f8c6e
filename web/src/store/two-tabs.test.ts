import "fake-indexeddb/auto";
import type { Raw } from "@delaywright/documents";
import { afterEach, expect, test, vi } from "vitest";
import { closeStores, freshName, freshStore, nextTurn } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "./bench-store.js";
import type { Entry } from "./entry.js";
import { makeEntry } from "./make-entry.js";
import { rebased } from "./merge.js";

afterEach(closeStores);

const rocket: Raw = { kind: "rocket", version: 1, name: "Demo", diameter: "76 mm", length: "1.5 m" };
const bag: Raw = { kind: "motor-in-hand", version: 1, name: "Bag 3", type: "demo-h150.motor.json" };

async function twoTabs(raw: Raw): Promise<{ one: BenchStore; other: BenchStore; path: string }> {
  const name = freshName();
  const one = await freshStore({ name });
  const other = await freshStore({ name });
  const path = one.add(raw["kind"] as "rocket", raw);
  await nextTurn();
  await inStep(other, path, raw);
  return { one, other, path };
}

function inStep(store: BenchStore, path: string, raw: Raw | undefined): Promise<void> {
  return vi.waitFor(() => expect(store.memory.get(path)?.raw).toEqual(raw));
}

test("a change in one tab is there in the other, and so are a new document, a deletion and a setting", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "diameter", "75 mm", "Diameter");
  await inStep(other, path, { ...rocket, diameter: "75 mm" });
  const added = other.add("tool", { kind: "tool", version: 1, name: "Cutter" });
  await inStep(one, added, { kind: "tool", version: 1, name: "Cutter" });
  one.change("delete", [{ path: added, remove: true }]);
  await vi.waitFor(() => expect(other.memory.get(added)).toBeUndefined());
  await one.settings.change({ units: "imperial" });
  await vi.waitFor(() => expect(other.settings.watched.get().units).toBe("imperial"));
});

test("two fields changed at once in two tabs are both kept", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "diameter", "75 mm", "Diameter");
  other.setField(path, "length", "1.6 m", "Length");
  const both = { ...rocket, diameter: "75 mm", length: "1.6 m" };
  await inStep(one, path, both);
  await inStep(other, path, both);
});

test("one field changed at once in two tabs is the same in both: what was written last", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "diameter", "75 mm", "Diameter");
  other.setField(path, "diameter", "74 mm", "Diameter");
  await vi.waitFor(async () => {
    await Promise.all([one.keeper.idle(), other.keeper.idle()]);
    expect(one.memory.get(path)?.raw).toEqual(other.memory.get(path)?.raw);
    expect(one.memory.get(path)?.revision).toBe(other.memory.get(path)?.revision);
  });
  expect(["75 mm", "74 mm"]).toContain(one.memory.get(path)?.raw?.["diameter"]);
});

test("a field that gets another value here is not shown half typed as it was elsewhere", () => {
  const entry = (raw: Raw, drafts = {}): Entry => makeEntry("a.rocket.json", { raw, text: null, drafts }, 0, 1);
  const base = entry({ kind: "rocket", length: "1 m" });
  const ours = entry({ kind: "rocket", length: "1.5 m" });
  const theirs = entry({ kind: "rocket", length: "1 m" }, { length: "1.", diameter: "7" });
  expect(rebased(base, ours, theirs)).toMatchObject({ raw: { length: "1.5 m" }, drafts: { diameter: "7" } });
});

test("what is typed while another tab's change comes in is not lost", async () => {
  const { one, other, path } = await twoTabs(rocket);
  for (const text of ["1", "1.", "1.7", "1.7 ", "1.7 m"]) {
    one.setField(path, "length", text, "Length");
    other.setField(path, "diameter", `7${text.length} mm`, "Diameter");
    await nextTurn();
  }
  const both = { ...rocket, length: "1.7 m", diameter: "75 mm" };
  await inStep(one, path, both);
  await inStep(other, path, both);
  expect(one.memory.get(path)?.drafts).toEqual({});
});

test("readings added at once in two tabs are both kept", async () => {
  const { one, other, path } = await twoTabs(bag);
  const reading = (after: string) => ({ when: "2026-05-02T10:12", after });
  one.change("reading", [{ path, raw: { ...bag, readings: [reading("22.2 mm")] } }]);
  other.change("reading", [{ path, raw: { ...bag, readings: [reading("23.1 mm")] } }]);
  await vi.waitFor(() => {
    for (const store of [one, other]) {
      const readings = store.memory.get(path)?.raw?.["readings"] as { after: string }[];
      expect(readings.map(({ after }) => after).sort()).toEqual(["22.2 mm", "23.1 mm"]);
    }
  });
  expect(one.memory.get(path)?.raw).toEqual(other.memory.get(path)?.raw);
});

test("undo takes back one's own field and leaves what the other tab changed", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "diameter", "75 mm", "Diameter");
  await inStep(other, path, { ...rocket, diameter: "75 mm" });
  other.setField(path, "length", "1.6 m", "Length");
  await inStep(one, path, { ...rocket, diameter: "75 mm", length: "1.6 m" });
  expect(one.undo().ok).toBe(true);
  await inStep(other, path, { ...rocket, length: "1.6 m" });
});

test("undo of what was typed while the other tab changed another field leaves that field", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "length", "1.6 m", "Length");
  await inStep(other, path, { ...rocket, length: "1.6 m" });
  other.setField(path, "diameter", "74 mm", "Diameter");
  await inStep(one, path, { ...rocket, length: "1.6 m", diameter: "74 mm" });
  one.setField(path, "length", "1.65 m", "Length");
  await nextTurn();
  while (one.steps.get().undo?.label === "Length") expect(one.undo().ok).toBe(true);
  await inStep(other, path, { ...rocket, diameter: "74 mm" });
});

test("undo is refused where the other tab changed the same field since, and the step before can still be undone", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "length", "1.6 m", "Length");
  await nextTurn();
  one.setField(path, "diameter", "75 mm", "Diameter");
  await inStep(other, path, { ...rocket, diameter: "75 mm", length: "1.6 m" });
  other.setField(path, "diameter", "74 mm", "Diameter");
  await inStep(one, path, { ...rocket, diameter: "74 mm", length: "1.6 m" });
  expect(one.undo()).toMatchObject({ ok: false, reason: "changed-elsewhere", paths: [path] });
  expect(one.undo().ok).toBe(true);
  await inStep(other, path, { ...rocket, diameter: "74 mm" });
});

test("undo of a new document is refused once the other tab changed it", async () => {
  const { one, other, path } = await twoTabs(rocket);
  other.setField(path, "diameter", "74 mm", "Diameter");
  await inStep(one, path, { ...rocket, diameter: "74 mm" });
  expect(one.undo()).toMatchObject({ ok: false, reason: "changed-elsewhere" });
});

test("undo of a reading is refused, however new, once the other tab changed the motor", async () => {
  const { one, other, path } = await twoTabs(bag);
  const read = { ...bag, readings: [{ when: "2026-05-02T10:12", after: "22.2 mm" }] };
  one.change("reading", [{ path, raw: read }]);
  await inStep(other, path, read);
  other.setField(path, "label", "3", "Label");
  await inStep(one, path, { ...read, label: "3" });
  expect(one.undo({ confirmed: true })).toMatchObject({ ok: false, reason: "reading-stays" });
});

test("a document deleted in one tab while the other changes it is kept with the change", async () => {
  const { one, other, path } = await twoTabs(rocket);
  one.setField(path, "diameter", "75 mm", "Diameter");
  other.change("delete", [{ path, remove: true }]);
  await vi.waitFor(async () => {
    await Promise.all([one.keeper.idle(), other.keeper.idle()]);
    const raw = one.memory.get(path)?.raw;
    expect(raw).toEqual({ ...rocket, diameter: "75 mm" });
    expect(other.memory.get(path)?.raw).toEqual(raw);
  });
});

test("two documents made under one path in two tabs are both kept, and what refers to the moved one follows", async () => {
  const name = freshName();
  const one = await freshStore({ name });
  const other = await freshStore({ name });
  const make = (store: BenchStore, diameter: string) => {
    const path = store.add("rocket", { ...rocket, diameter });
    store.add("plan", { kind: "plan", version: 1, name: `Plan ${diameter}`, rocket: path });
  };
  make(one, "75 mm");
  make(other, "74 mm");
  await vi.waitFor(async () => {
    await Promise.all([one.keeper.idle(), other.keeper.idle()]);
    for (const store of [one, other]) {
      expect(store.memory.list()).toHaveLength(4);
      for (const plan of store.memory.list("plan")) {
        const used = store.memory.get(String(plan.raw?.["rocket"]));
        expect(plan.name).toBe(`Plan ${used?.raw?.["diameter"]}`);
      }
    }
  });
});

test("a plan that was changed before the document it is then given goes on naming that one where its path was taken", async () => {
  const { one, other, path } = await twoTabs({ kind: "plan", version: 1, name: "Third flight" });
  const theirs = other.add("rocket", { ...rocket, note: "theirs" });
  one.setField(path, "note", "the small one", "note");
  const ours = one.add("rocket", { ...rocket, note: "ours" });
  one.setField(path, "rocket", ours, "rocket");
  expect(ours).toBe(theirs);
  await vi.waitFor(async () => {
    await Promise.all([one.keeper.idle(), other.keeper.idle()]);
    for (const store of [one, other]) {
      expect(store.memory.list("rocket")).toHaveLength(2);
      const used = store.memory.get(String(store.memory.get(path)?.raw?.["rocket"]));
      expect(used?.raw?.["note"]).toBe("ours");
    }
  });
});

test("a tab that heard nothing catches up when it is looked at again", async () => {
  const name = freshName();
  const one = await freshStore({ name });
  vi.stubGlobal("BroadcastChannel", undefined);
  const deaf = await freshStore({ name });
  vi.unstubAllGlobals();
  const path = one.add("rocket", rocket);
  await one.keeper.idle();
  await deaf.keeper.lookAgain();
  expect(deaf.memory.get(path)?.raw).toEqual(rocket);
  one.change("delete", [{ path, remove: true }]);
  await one.keeper.idle();
  await deaf.keeper.lookAgain();
  expect(deaf.memory.get(path)).toBeUndefined();
});
