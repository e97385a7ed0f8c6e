import "fake-indexeddb/auto";
import { readdirSync, readFileSync } from "node:fs";
import { afterEach, expect, test } from "vitest";
import { closeStores, freshName, freshStore } from "../../stories/data/databases/fresh-store.js";
import { restoreDatabase, type SavedDatabase } from "../../stories/data/databases/restore.js";
import { Database, LATEST } from "./database.js";
import { gunzipped } from "./gzip.js";

const folder = new URL("../../stories/data/databases/", import.meta.url);
const versions = Array.from({ length: LATEST }, (_, index) => index + 1);

function saved(version: number): SavedDatabase {
  return JSON.parse(readFileSync(new URL(`v${version}.json`, folder), "utf8")) as SavedDatabase;
}

afterEach(closeStores);

test("Database: there is one saved database of every version, as that version was", () => {
  const files = readdirSync(folder).filter((name) => name.endsWith(".json"));
  expect(files.sort()).toEqual(versions.map((version) => `v${version}.json`));
  expect(versions.map((version) => saved(version).version)).toEqual(versions.map((version) => version * 10));
});

test("Database declares every version up to the latest, so that none is skipped by an upgrade", () => {
  const database = new Database(freshName());
  expect(database.verno).toBe(LATEST);
  database.close();
});

test.each(versions)("Database of version %i opens with every document it held", async (version) => {
  const name = freshName();
  await restoreDatabase({ saved: saved(version), name });
  const store = await freshStore({ name });
  expect(store.keeper.saving.get().state).toBe("saved");
  const names = store.memory
    .list()
    .filter(({ kind }) => kind !== null)
    .map((entry) => entry.path);
  expect(names.sort()).toEqual([
    "bag-3.motor-in-hand.json",
    "demo-76.rocket.json",
    "demo-h150.motor.json",
    "larkmoor.field.json",
    ...(version < 4 ? [] : ["third-flight.flight.json", "third-flight.log.json"]),
    "third-flight.plan.json",
    "two-collar.tool.json",
  ]);
  const bag = store.memory.get("bag-3.motor-in-hand.json");
  expect(bag?.raw?.["readings"]).toHaveLength(1);
  expect(bag?.savedAt).toBe(1_777_716_722_000);
  store.setField("larkmoor.field.json", "elevation", "211 m", "Elevation");
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "saved", unsaved: [] });
  store.close();
  const again = await freshStore({ name });
  expect(again.memory.get("larkmoor.field.json")?.raw?.["elevation"]).toBe("211 m");
});

test.each(versions)(
  "Database of version %i: a row that is no entry stops no other and stays as it was",
  async (version) => {
    const name = freshName();
    await restoreDatabase({ saved: saved(version), name });
    const store = await freshStore({ name });
    const entry = store.memory.get("half-written.rocket.json");
    expect(entry).toMatchObject({ kind: null, name: "Half written", unreadable: "corrupt-record" });
    expect(entry?.text).toContain("half-written.rocket.json");
    const rows = await store.keeper.with((database) => database.documents.get("half-written.rocket.json"));
    const [first] = saved(version).stores;
    expect(rows).toEqual(first?.rows.find((row) => (row as { path: string }).path === "half-written.rocket.json"));
  },
);

test("Database of version 2 keeps drafts and unreadable texts", async () => {
  const name = freshName();
  await restoreDatabase({ saved: saved(2), name });
  const store = await freshStore({ name });
  expect(store.memory.get("demo-76.rocket.json")?.drafts).toEqual({ "fins[0].root": "18o mm" });
  expect(store.memory.get("torn.json")).toMatchObject({ kind: null, unreadable: "not-a-document", revision: 3 });
});

test("Database of version 3 keeps settings and answers", async () => {
  const name = freshName();
  await restoreDatabase({ saved: saved(3), name });
  const store = await freshStore({ name });
  expect(store.settings.watched.get()).toMatchObject({ units: "imperial", theme: "sun" });
  expect(await store.readBrief("third-flight.plan.json")).toMatchObject({ version: "0" });
});

test("Database of version 4 keeps the files that logs were read from", async () => {
  const name = freshName();
  await restoreDatabase({ saved: saved(4), name });
  const store = await freshStore({ name });
  const source = store.memory.get("third-flight.log.json")?.raw?.["source"];
  const bytes = await gunzipped((await store.records.read(String(source))) ?? new Blob());
  expect(new TextDecoder().decode(bytes ?? new Uint8Array())).toMatch(/^Time \(s\),Height \(m\)\n0\.0,0\n/);
});

test("Database made by a newer app is left alone, and the bench works in memory", async () => {
  const name = freshName();
  await restoreDatabase({ saved: { ...saved(3), version: (LATEST + 1) * 10 }, name });
  const store = await freshStore({ name });
  expect(store.keeper.saving.get().state).toBe("upgraded-elsewhere");
  store.add("rocket", { kind: "rocket", version: 1, name: "Here" });
  await store.keeper.idle();
  expect(store.keeper.saving.get()).toMatchObject({ state: "upgraded-elsewhere", unsaved: ["here.rocket.json"] });
});

test("Database row of a newer app is shown, not changed, and comes back as it was when its deletion is undone", async () => {
  const name = freshName();
  await restoreDatabase({ saved: saved(3), name });
  const store = await freshStore({ name });
  const path = "from-later.plan.json";
  const row = () => store.keeper.with((database) => database.documents.get(path));
  const before = await row();
  expect(store.memory.get(path)).toMatchObject({
    kind: null,
    unreadable: "newer-record",
    name: "From a later version",
  });
  store.change("mend", [{ path, text: "{}" }]);
  await store.keeper.idle();
  expect(await row()).toEqual(before);
  store.change("delete", [{ path, remove: true }]);
  await store.keeper.idle();
  expect(await row()).toBeUndefined();
  expect(store.undo().ok).toBe(true);
  await store.keeper.idle();
  expect(await row()).toEqual(before);
});
