import "fake-indexeddb/auto";
import { afterEach, expect, test, vi } from "vitest";
import { closeStores, freshName, freshStore } from "../../stories/data/databases/fresh-store.js";
import type { Entry } from "./entry.js";
import { Journal, type JournalStorage, type OpenTabs } from "./journal.js";
import { recordOf } from "./record.js";

afterEach(() => {
  vi.restoreAllMocks();
  closeStores();
});

const rocket = { kind: "rocket", version: 1, name: "Demo" };

/** The browser's small storage, in memory. */
function smallStorage(): JournalStorage & { readonly texts: Map<string, string> } {
  const texts = new Map<string, string>();
  return {
    texts,
    getItem: (name) => texts.get(name) ?? null,
    setItem: (name, text) => void texts.set(name, text),
    removeItem: (name) => void texts.delete(name),
    key: (index) => [...texts.keys()][index] ?? null,
    get length() {
      return texts.size;
    },
  };
}

/** Tabs that hold their names until they end. */
function openTabs(): OpenTabs {
  const names = new Set<string>();
  return {
    hold(name, until) {
      names.add(name);
      until.addEventListener("abort", () => names.delete(name));
    },
    held: () => Promise.resolve(new Set(names)),
  };
}

/** A database that takes nothing, as if the page were ended before it answers. */
function refuseWrites(): void {
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(() => {
    throw new DOMException("broken off", "AbortError");
  });
}

/** A bench with a rocket that is written, and then a page that is ended while its length is typed. */
async function endedWhileTyping() {
  const name = freshName();
  const storage = smallStorage();
  const tabs = openTabs();
  const fresh = () => freshStore({ name, journal: new Journal(name, storage, tabs) });
  const ended = await fresh();
  const path = ended.add("rocket", { ...rocket, diameter: "76 mm" });
  await ended.keeper.idle();
  expect(storage.texts.size).toBe(0);
  refuseWrites();
  for (const typed of ["1", "1.", "1.5", "1.5 ", "1.5 m"]) ended.setField(path, "length", typed, "Length");
  await ended.keeper.idle();
  return { ended, path, storage, fresh };
}

test("a page that is ended while somebody types: the next one has every key, and writes it", async () => {
  const { ended, path, storage, fresh } = await endedWhileTyping();
  ended.close();
  vi.restoreAllMocks();
  const next = await fresh();
  expect(next.memory.get(path)?.raw).toMatchObject({ diameter: "76 mm", length: "1.5 m" });
  await next.keeper.idle();
  expect(next.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(storage.texts.size).toBe(0);
  const rows = await next.keeper.with((database) => database.documents.toArray());
  expect(rows).toMatchObject([{ path, raw: { length: "1.5 m" } }]);
});

test("a draft that cannot be read yet comes back as it was typed", async () => {
  const { ended, path, fresh } = await endedWhileTyping();
  ended.setField(path, "length", "1.5 fur", "Length");
  ended.close();
  vi.restoreAllMocks();
  expect((await fresh()).memory.get(path)?.drafts).toEqual({ length: "1.5 fur" });
});

test("a page that is ended before the database answers what was half typed: the rest goes on from there", async () => {
  const name = freshName();
  const storage = smallStorage();
  const ended = await freshStore({ name, journal: null });
  const path = ended.add("rocket", { ...rocket, length: "1 m" });
  const states: Entry[] = [];
  for (const typed of ["1 m", "15", "1 m"]) {
    ended.setField(path, "length", typed, "Length");
    await ended.keeper.idle();
    states.push(ended.memory.get(path)!);
  }
  const [base, sent, ours] = states;
  expect(sent?.drafts).toEqual({ length: "15" });
  await ended.keeper.with((database) => database.documents.put(recordOf(sent!)));
  ended.close();
  const tabs = openTabs();
  const journal = new Journal(name, storage, tabs);
  journal.keep([{ path, base, sent, ours }]);
  journal.close();
  const next = await freshStore({ name, journal: new Journal(name, storage, tabs) });
  expect(next.memory.get(path)?.raw).toMatchObject({ length: "1 m" });
  expect(next.memory.get(path)?.drafts).toEqual({});
});

test("a new document and a deleted one", async () => {
  const { ended, path, fresh } = await endedWhileTyping();
  const other = ended.add("rocket", { ...rocket, name: "Other" });
  ended.change("delete", [{ path, remove: true }]);
  ended.close();
  vi.restoreAllMocks();
  const next = await fresh();
  expect(next.memory.paths()).toEqual([other]);
});

test("what another tab wrote meanwhile in another field stays", async () => {
  const { ended, path, fresh } = await endedWhileTyping();
  vi.restoreAllMocks();
  const other = await fresh();
  expect(other.memory.get(path)?.raw).not.toHaveProperty("length");
  other.setField(path, "diameter", "75 mm", "Diameter");
  await other.keeper.idle();
  refuseWrites();
  ended.close();
  other.close();
  vi.restoreAllMocks();
  const next = await fresh();
  expect(next.memory.get(path)?.raw).toMatchObject({ diameter: "75 mm", length: "1.5 m" });
});

test("the journal of a tab that is open is its own", async () => {
  const { ended, path, storage, fresh } = await endedWhileTyping();
  const other = await fresh();
  expect(other.memory.get(path)?.raw).not.toHaveProperty("length");
  expect(storage.texts.size).toBe(1);
  ended.close();
});

test("a journal that is broken, or full, changes nothing", async () => {
  const name = freshName();
  const storage = smallStorage();
  for (const [i, text] of ["{", "7", "[7]", '[{"path":"a"}]', '[{"path":"a","base":null,"ours":{}}]'].entries())
    storage.setItem(`${name}-unwritten-${i}`, text);
  const store = await freshStore({ name, journal: new Journal(name, storage, openTabs()) });
  expect(store.memory.paths()).toEqual([]);
  storage.setItem = () => {
    throw new DOMException("no room", "QuotaExceededError");
  };
  const path = store.add("rocket", rocket);
  await store.keeper.idle();
  expect(store.memory.get(path)?.name).toBe("Demo");
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
});
