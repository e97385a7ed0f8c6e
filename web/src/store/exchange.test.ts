import "fake-indexeddb/auto";
import { LARGEST_FILE, type Raw } from "@delaywright/documents";
import { afterEach, expect, test } from "vitest";
import { closeStores, freshStore } from "../../stories/data/databases/fresh-store.js";
import type { BenchStore } from "./bench-store.js";

afterEach(closeStores);

function file(name: string, content: unknown): { name: string; bytes: Uint8Array } {
  return { name, bytes: new TextEncoder().encode(typeof content === "string" ? content : JSON.stringify(content)) };
}

function contents(store: BenchStore): unknown {
  return store.memory.list().map(({ path, raw, text, drafts }) => ({ path, raw, text, drafts }));
}

const rocket: Raw = { kind: "rocket", version: 1, name: "Demo", diameter: "76 mm" };
const plan: Raw = { kind: "plan", version: 1, name: "First", rocket: "demo.rocket.json", motor: "m.motor.json" };

test("exportInParts, wipe, importInto: everything is there again, drafts and unreadable texts too", async () => {
  const store = await freshStore();
  store.installExample();
  store.setField("demo-76.rocket.json", "fins[0].root", "18o mm", "Root");
  store.change("torn", [{ path: "torn.json", text: '{ "kind": "field", ' }]);
  const before = contents(store);
  const text = (await store.exportInParts()).join("");
  await store.wipe();
  expect(store.memory.list()).toEqual([]);
  const report = await store.importInto([file("bench.json", text)]);
  expect(contents(store)).toEqual(before);
  expect(report.added).toHaveLength(12);
  expect(report.same).toEqual([]);
  const again = await store.importInto([file("bench.json", text)]);
  expect(contents(store)).toEqual(before);
  expect(again.added).toEqual([]);
  expect(again.same).toHaveLength(12);
});

test("importInto is one step of undo", async () => {
  const store = await freshStore();
  await store.importInto([file("a/demo.rocket.json", rocket), file("a/first.plan.json", plan)]);
  expect(store.memory.list()).toHaveLength(2);
  expect(store.steps.get().undo).toMatchObject({ label: "import of 2 documents", asks: false });
  expect(store.undo().ok).toBe(true);
  expect(store.memory.list()).toEqual([]);
});

test("importInto gives another path where one is in use by another document, and references follow", async () => {
  const store = await freshStore();
  await store.importInto([file("demo.rocket.json", { ...rocket, diameter: "54 mm" }), file("first.plan.json", plan)]);
  const report = await store.importInto([file("x/first.plan.json", plan), file("x/demo.rocket.json", rocket)]);
  expect(report.added.map(({ wanted, path }) => [wanted, path])).toEqual([
    ["demo.rocket.json", "demo-2.rocket.json"],
    ["first.plan.json", "first-2.plan.json"],
  ]);
  expect(store.memory.get("first-2.plan.json")?.raw?.["rocket"]).toBe("demo-2.rocket.json");
  expect(store.memory.get("first.plan.json")?.raw?.["rocket"]).toBe("demo.rocket.json");
  const again = await store.importInto([file("x/first.plan.json", plan), file("x/demo.rocket.json", rocket)]);
  expect(again.added).toEqual([]);
  expect(again.same.map(({ path }) => path)).toEqual(["demo-2.rocket.json", "first-2.plan.json"]);
  expect(store.memory.list()).toHaveLength(4);
});

test("importInto keeps two equal documents of one export apart", async () => {
  const store = await freshStore();
  store.add("rocket", rocket, "Demo");
  store.add("rocket", rocket, "Demo");
  const text = (await store.exportInParts()).join("");
  await store.wipe();
  const report = await store.importInto([file("bench.json", text)]);
  expect(report.added.map(({ path }) => path).sort()).toEqual(["demo-2.rocket.json", "demo.rocket.json"]);
});

test("importInto tells what is wrong, what was not taken, and which curves have no motor", async () => {
  const store = await freshStore();
  const report = await store.importInto([
    file("wrong.rocket.json", { ...rocket, diameter: "76 mmm" }),
    file("torn.json", "{ torn"),
    file("lone.csv", "time (s),thrust (N)\n0,0\n1,10\n2,0\n"),
    { name: "huge.json", bytes: new Uint8Array(LARGEST_FILE + 1) },
    new File([JSON.stringify(rocket)], "given.rocket.json"),
  ]);
  expect(report.added.map(({ path }) => path).sort()).toEqual(["given.rocket.json", "torn.json", "wrong.rocket.json"]);
  expect(report.issues.some(({ file: at, path }) => at === "wrong.rocket.json" && path === "diameter")).toBe(true);
  expect(report.issues.some(({ file: at, code }) => at === "huge.json" && code === "file-too-large")).toBe(true);
  expect(report.curves).toMatchObject([{ name: "lone" }]);
  expect(store.memory.get("torn.json")).toMatchObject({ kind: null, text: "{ torn" });
});

test("importInto of a hostile file does no harm", async () => {
  const store = await freshStore();
  const deep = `${'{"kind":"rocket","nose":'.repeat(2000)}1${"}".repeat(2000)}`;
  const keys =
    '{"kind":"rocket","version":1,"name":"<img src=x onerror=alert(1)>","__proto__":{"polluted":true},"constructor":1}';
  await store.importInto([file("../../deep.json", deep), file("__proto__.json", keys)]);
  expect(({} as Record<string, unknown>)["polluted"]).toBeUndefined();
  for (const { path } of store.memory.list()) expect(path).not.toMatch(/[/\\]/);
  const text = (await store.exportInParts()).join("");
  const documents = () => store.memory.list().map(({ path, raw, text: kept }) => [path, raw ?? kept]);
  const before = documents();
  await store.wipe();
  await store.importInto([file("bench.json", text)]);
  expect(documents()).toEqual(before);
});

test("exportDocuments takes along what a document refers to, and nothing else", async () => {
  const store = await freshStore();
  const example = store.installExample();
  store.add("rocket", rocket);
  const library = JSON.parse((await store.exportDocuments([example])).join("")) as { files: string[] };
  expect(library.files.sort()).toEqual([
    "demo-76.rocket.json",
    "demo-h150.motor.json",
    "larkmoor.field.json",
    "two-collar.tool.json",
    "worked-example.plan.json",
  ]);
});

test("rawFile gives a document as a file, and the text of one that cannot be read", async () => {
  const store = await freshStore();
  const path = store.add("rocket", rocket);
  store.change("torn", [{ path: "torn.json", text: "{ torn" }]);
  expect(JSON.parse(store.rawFile(path) ?? "")).toEqual(rocket);
  expect(store.rawFile("torn.json")).toBe("{ torn");
  expect(store.rawFile("nowhere.json")).toBeUndefined();
});

test("keepBrief drops what was kept for plans that are gone", async () => {
  const store = await freshStore();
  const path = store.add("plan", plan);
  await store.keepBrief(path, { told: 1 });
  expect(await store.readBrief(path)).toEqual({ told: 1 });
  store.change("delete", [{ path, remove: true }]);
  await store.keepBrief(store.add("plan", { ...plan, name: "Second" }), { told: 2 });
  expect(await store.readBrief(path)).toBeNull();
});
