import "fake-indexeddb/auto";
import { forceCloseDatabase } from "fake-indexeddb";
import { afterEach, expect, test, vi } from "vitest";
import { closeStores, freshName, freshStore, nextTurn } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "./bench-store.js";
import { Database, LATEST } from "./database.js";

afterEach(() => {
  vi.restoreAllMocks();
  closeStores();
});

const rocket = { kind: "rocket", version: 1, name: "Demo" };

function refusePut(when: (row: { path?: string }) => boolean = () => true): void {
  const { put } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, row, key) {
    if (when(row as { path?: string })) throw new DOMException("no room", "QuotaExceededError");
    return key === undefined ? put.call(this, row) : put.call(this, row, key);
  });
}

async function rows(store: BenchStore): Promise<unknown[] | undefined> {
  return store.keeper.with((database) => database.documents.toCollection().primaryKeys());
}

test("a full disk: says so, keeps everything in memory, and writes it with the next change once there is room", async () => {
  const store = await freshStore();
  refusePut();
  const path = store.add("rocket", rocket);
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "quota", unsaved: [path] });
  expect((await store.exportInParts()).join("")).toContain('"Demo"');
  vi.restoreAllMocks();
  store.setField(path, "length", "1.5 m", "Length");
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(await rows(store)).toEqual([path]);
});

test("a document that does not fit keeps no other from being written", async () => {
  const store = await freshStore();
  refusePut((row) => row.path === "large.rocket.json");
  store.add("rocket", { ...rocket, name: "large" });
  store.add("rocket", { ...rocket, name: "small" });
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "quota", unsaved: ["large.rocket.json"] });
  expect(await rows(store)).toEqual(["small.rocket.json"]);
});

test("a transaction that the browser aborts: nothing of it is written, and trying again writes it", async () => {
  const store = await freshStore();
  const { put } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, row) {
    const request = put.call(this, row);
    this.transaction.abort();
    return request;
  });
  const path = store.add("rocket", rocket);
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "aborted", unsaved: [path] });
  expect(await rows(store)).toEqual([]);
  vi.restoreAllMocks();
  await store.keeper.write();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(await rows(store)).toEqual([path]);
});

test("a database that the browser closes is opened again with the next change", async () => {
  const store = await freshStore();
  store.add("rocket", rocket);
  await store.keeper.idle();
  await store.keeper.with(async (database) => forceCloseDatabase(database.backendDB() as never));
  await nextTurn();
  const path = store.add("rocket", { ...rocket, name: "Later" });
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(await rows(store)).toContain(path);
});

test("no database at all: the bench works in memory and says that nothing is kept; it is kept as soon as it can be", async () => {
  vi.spyOn(IDBFactory.prototype, "open").mockImplementation(() => {
    throw new DOMException("not here", "SecurityError");
  });
  const store = await freshStore({ mirror: { getItem: () => null, setItem: () => undefined } });
  await store.keeper.idle();
  expect(store.memory.list()).toHaveLength(11);
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "unavailable", unsaved: [] });
  const path = store.add("rocket", rocket);
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", unsaved: [path] });
  vi.restoreAllMocks();
  await store.keeper.write();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(await rows(store)).toHaveLength(12);
});

test("an old tab that holds the database: the bench works in memory, and both are joined once it lets go", async () => {
  const name = freshName();
  const old = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open(name, 10);
    request.onupgradeneeded = () => {
      const documents = request.result.createObjectStore("documents", { keyPath: "path" });
      documents.put({
        path: "old.rocket.json",
        kind: "rocket",
        name: "Old",
        raw: { ...rocket, name: "Old" },
        savedAt: 1,
      });
    };
    request.onsuccess = () => resolve(request.result);
  });
  const store = await freshStore({ name, patience: 20 });
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "blocked" });
  store.add("rocket", rocket);
  old.close();
  await vi.waitFor(() => expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] }));
  expect(store.memory.list().map((entry) => entry.name)).toEqual(["Demo", "Old"]);
  expect(await rows(store)).toEqual(["demo.rocket.json", "old.rocket.json"]);
});

test("an old tab that lets go while nothing is changed: what it held is there", async () => {
  const name = freshName();
  const old = await new Promise<IDBDatabase>((resolve) => {
    const request = indexedDB.open(name, 10);
    request.onupgradeneeded = () => {
      const documents = request.result.createObjectStore("documents", { keyPath: "path" });
      documents.put({
        path: "old.rocket.json",
        kind: "rocket",
        name: "Old",
        raw: { ...rocket, name: "Old" },
        savedAt: 1,
      });
    };
    request.onsuccess = () => resolve(request.result);
  });
  const store = await freshStore({ name, patience: 20 });
  await new Promise((resolve) => setTimeout(resolve, 60));
  expect(store.keeper.saving.get()).toMatchObject({ state: "failed", reason: "blocked" });
  old.close();
  await vi.waitFor(() => expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] }));
  expect(store.memory.list().map((entry) => entry.name)).toEqual(["Old"]);
});

test("a newer app in another tab: what is not written yet is written, then the database is let go for good", async () => {
  const name = freshName();
  const store = await freshStore({ name });
  store.add("rocket", rocket);
  const found = await new Promise<unknown[]>((resolve, reject) => {
    const request = indexedDB.open(name, (LATEST + 1) * 10);
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      const all = request.result.transaction("documents").objectStore("documents").getAllKeys();
      all.onsuccess = () => {
        request.result.close();
        resolve(all.result);
      };
    };
  });
  expect(found).toEqual(["demo.rocket.json"]);
  expect(store.keeper.saving.get().state).toBe("upgraded-elsewhere");
  const path = store.add("rocket", { ...rocket, name: "Later" });
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "upgraded-elsewhere", unsaved: [path] });
});

test("a database that is taken away is made again from memory", async () => {
  const name = freshName();
  const store = await freshStore({ name });
  store.add("rocket", rocket);
  await store.keeper.idle();
  await new Promise((resolve) => {
    indexedDB.deleteDatabase(name).onsuccess = resolve;
  });
  store.add("rocket", { ...rocket, name: "Later" });
  await store.keeper.idle();
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  expect(await rows(store)).toEqual(["demo.rocket.json", "later.rocket.json"]);
});

test("rows that are no entries stop no other, whatever they hold", async () => {
  const name = freshName();
  const database = new Database(name);
  await database.open();
  const strange = [
    { path: 7 },
    { path: "a", raw: 5n },
    { path: "b", record: 1, kind: "rocket", raw: null },
    { path: "c", drafts: 1 },
  ];
  await database.documents.bulkPut(strange);
  database.close();
  const store = await freshStore({ name });
  const path = store.add("rocket", rocket);
  await store.keeper.idle();
  expect(store.memory.list()).toHaveLength(5);
  expect(store.memory.list().filter((entry) => entry.unreadable === "corrupt-record")).toHaveLength(4);
  expect((await store.exportInParts()).join("")).toContain("cannot be shown");
  await store.wipe();
  expect(await rows(store)).toEqual([]);
  store.undo();
  await store.keeper.idle();
  const kept = await store.keeper.with((opened) => opened.documents.toArray());
  expect(kept).toHaveLength(5);
  expect(kept).toEqual(expect.arrayContaining(strange));
  store.change("mend", [
    { path: "c", text: JSON.stringify(rocket) },
    { path: "7", text: JSON.stringify(rocket) },
  ]);
  await store.keeper.idle();
  expect(store.memory.get("c")).toMatchObject({ kind: "rocket", unreadable: null });
  expect(store.memory.get(path)?.kind).toBe("rocket");
  expect(await rows(store)).toEqual(["7", "a", "b", "c", path]);
  expect(await store.keeper.with((opened) => opened.documents.get("c"))).toMatchObject({ kind: "rocket", record: 1 });
});
