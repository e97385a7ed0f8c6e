import "fake-indexeddb/auto";
import { type Raw, recordPath } from "@delaywright/documents";
import { afterEach, expect, test, vi } from "vitest";
import { closeStores, freshName, freshStore, nextTurn } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "./bench-store.js";
import { gunzipped, gzipped } from "./gzip.js";

afterEach(() => {
  vi.restoreAllMocks();
  closeStores();
});

const bytesOf = (text: string) => new TextEncoder().encode(text);
const textOf = (bytes: Uint8Array | null) => (bytes === null ? null : new TextDecoder().decode(bytes));
const csv = `Time (s),Height (m)\n${Array.from({ length: 5000 }, (_, i) => `${i / 20},${(i * i) % 977}`).join("\n")}\n`;
const log = (source: string): Raw => ({ kind: "log", version: 1, name: "Third flight", source, columns: {} });

async function kept(store: BenchStore): Promise<unknown[] | undefined> {
  await store.keeper.idle();
  return store.keeper.with((database) => database.records.toCollection().primaryKeys());
}

/** Keeps a file as the app does. */
async function keep(store: BenchStore, name: string, text = csv) {
  const path = recordPath(name, bytesOf(text));
  return { path, kept: await store.records.put(path, await gzipped(bytesOf(text))) };
}

/** What is kept under a path, as it came. */
async function readText(store: BenchStore, path: string): Promise<string | null> {
  const gzip = await store.records.read(path);
  return gzip === null ? null : textOf(await gunzipped(gzip));
}

/** A store with a log and its file. */
async function withLog(name = freshName()) {
  const store = await freshStore({ name });
  const { path, kept: is } = await keep(store, "Third flight.csv");
  expect(is).toBe(true);
  const document = store.add("log", log(path));
  await nextTurn();
  return { store, path, document, name };
}

test("a record survives the page, smaller than it came, and is kept once however often it comes", async () => {
  const { store, path, name } = await withLog();
  expect(await keep(store, "Third flight.csv")).toEqual({ path, kept: true });
  expect(await kept(store)).toEqual([path]);
  const [record] = await store.records.compressed([path]);
  expect(record?.size).toBeLessThan(csv.length / 2);
  store.close();
  const again = await freshStore({ name });
  expect(await readText(again, path)).toBe(csv);
  expect(await again.records.read("nowhere.csv")).toBeNull();
});

test("a record goes with its log, and comes back when that is undone", async () => {
  const { store, path, document } = await withLog();
  store.change("delete", [{ path: document, remove: true }]);
  expect(await kept(store)).toEqual([]);
  expect(store.undo().ok).toBe(true);
  expect(await kept(store)).toEqual([path]);
  expect(await readText(store, path)).toBe(csv);
});

test("a record stays as long as one log, or a flight with its log inside, names it", async () => {
  const { store, path, document } = await withLog();
  store.add("flight", { kind: "flight", version: 1, name: "Third", plan: "p.json", log: log(path) });
  await nextTurn();
  store.change("delete", [{ path: document, remove: true }]);
  expect(await kept(store)).toEqual([path]);
});

test("a record stays with a log that can no longer be read, until that is taken away", async () => {
  const { store, path, document, name } = await withLog();
  const text = store.rawFile(document) ?? "";
  store.change("mistyped", [{ path: document, text: text.slice(0, -3) }]);
  expect(store.memory.get(document)?.unreadable).toBe("not-a-document");
  expect(await kept(store)).toEqual([path]);
  store.close();
  const again = await freshStore({ name, now: () => Date.now() + 2 * 86_400_000 });
  expect(await kept(again)).toEqual([path]);
  again.change("mended", [{ path: document, text }]);
  expect(await readText(again, path)).toBe(csv);
  again.change("mistyped", [{ path: document, text: text.slice(0, -3) }]);
  again.change("delete", [{ path: document, remove: true }]);
  expect(await kept(again)).toEqual([]);
});

test("a record whose log a newer app kept stays, also when it has lain for days", async () => {
  const { store, path, document, name } = await withLog();
  await store.keeper.idle();
  await store.keeper.with(async ({ documents }) => {
    const row = (await documents.get(document)) as object;
    await documents.put({ ...row, record: 99 });
  });
  store.close();
  const again = await freshStore({ name, now: () => Date.now() + 2 * 86_400_000 });
  expect(again.memory.get(document)?.unreadable).toBe("newer-record");
  expect(await kept(again)).toEqual([path]);
});

test("wipe takes the records from the device, undo brings them back", async () => {
  const { store, path } = await withLog();
  await store.wipe();
  expect(await kept(store)).toEqual([]);
  store.undo();
  expect(await kept(store)).toEqual([path]);
});

test("exportInParts, wipe, importInto on another bench: the record is there again", async () => {
  const { store, path } = await withLog();
  const texts = await store.exportInParts();
  const other = await freshStore();
  const files = texts.map((text, i) => ({ name: `bench-${i}.json`, bytes: bytesOf(text) }));
  const report = await other.importInto(files);
  expect(report.issues).toMatchObject([{ file: "third-flight.log.json" }, { file: "third-flight.log.json" }]);
  expect(report.issues.map(({ code }) => code)).toEqual(["missing", "missing"]);
  expect(await kept(other)).toEqual([path]);
  expect(await readText(other, path)).toBe(csv);
});

test("importInto takes a log's file from beside it", async () => {
  const store = await freshStore();
  const report = await store.importInto([
    { name: "a/third.log.json", bytes: bytesOf(JSON.stringify({ ...log("third.csv") })) },
    { name: "a/third.csv", bytes: bytesOf(csv) },
  ]);
  expect(report.issues.map(({ code }) => code)).not.toContain("file-missing");
  const source = String(store.memory.get("third.log.json")?.raw?.["source"]);
  expect(await readText(store, source)).toBe(csv);
});

test("without room on the device a record stays on the page, and says that it is not kept", async () => {
  const store = await freshStore();
  const { put } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, ...given) {
    if (this.name === "records") throw new DOMException("the device is full", "QuotaExceededError");
    return put.apply(this, given);
  });
  const { path, kept: is } = await keep(store, "a.csv");
  expect(is).toBe(false);
  expect(await kept(store)).toEqual([]);
  expect(await readText(store, path)).toBe(csv);
  vi.restoreAllMocks();
  expect(await keep(store, "a.csv")).toEqual({ path, kept: true });
});

test("a browser that keeps no blobs keeps the bytes, and gives them back alike", async () => {
  const { put } = IDBObjectStore.prototype;
  vi.spyOn(IDBObjectStore.prototype, "put").mockImplementation(function (this: IDBObjectStore, ...given) {
    const [row] = given as [{ readonly gzip?: unknown }];
    if (row.gzip instanceof Blob) throw new DOMException("no blobs in a private window", "DataCloneError");
    return put.apply(this, given);
  });
  const { store, path } = await withLog();
  const row = await store.keeper.with((database) => database.records.get(path));
  expect(row).toMatchObject({ path, gzip: expect.any(Uint8Array) });
  expect(await readText(store, path)).toBe(csv);
  const [text = ""] = await store.exportInParts();
  const other = await freshStore();
  await other.importInto([{ name: "bench.json", bytes: bytesOf(text) }]);
  expect(await readText(other, path)).toBe(csv);
});

test("a record that no log names is swept a day later, not while another tab may be about to name it", async () => {
  const name = freshName();
  let now = 1_000_000_000;
  const store = await freshStore({ name, now: () => now });
  const { path } = await keep(store, "a.csv");
  store.close();
  now += 3_600_000;
  const soon = await freshStore({ name, now: () => now });
  expect(await kept(soon)).toEqual([path]);
  soon.close();
  now += 90_000_000;
  expect(await kept(await freshStore({ name, now: () => now }))).toEqual([]);
});

test("gunzipped() gives nothing where bytes are broken, or grow beyond all bounds", async () => {
  const gzip = await gzipped(bytesOf(csv));
  expect(textOf(await gunzipped(gzip))).toBe(csv);
  expect(await gunzipped(gzip.slice(0, 100))).toBeNull();
  expect(await gunzipped(new Blob(["no gzip at all"]))).toBeNull();
  expect(await gunzipped(gzip, 1000)).toBeNull();
});
