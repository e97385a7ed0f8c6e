import { expect, test } from "vitest";
import { BriefBox, type SavedBrief } from "./brief-box.js";
import type { SourceDocument } from "./desk-copy.js";
import type { Told } from "./told.js";

const plan = "one.plan.json";
const told = { draws: 10_000, of: 10_000 } as Told;

function box(version: string | null, saved: Map<string, SavedBrief>, documents: SourceDocument[]) {
  const memory = {
    read: (path: string) => Promise.resolve(saved.get(path) ?? null),
    save: (path: string, brief: SavedBrief) => Promise.resolve(void saved.set(path, brief)),
  };
  return new BriefBox(memory, { entries: () => documents, subscribe: () => () => undefined }, version);
}

const document = (raw: Record<string, unknown>): SourceDocument => {
  return { path: plan, kind: "plan", raw, text: null, drafts: {} };
};

test("BriefBox finds an answer by what its documents say, not by which object they are", async () => {
  const saved = new Map<string, SavedBrief>();
  box("1", saved, [document({ wind: 1 })]).save(plan, new Set([plan]), told);
  expect((await box("1", saved, [document({ wind: 1 })]).read(plan))?.files).toEqual(new Set([plan]));
  expect((await box("1", saved, [document({ wind: 2 })]).read(plan))?.files).toBeNull();
});

test("BriefBox tells a document that was missing from one that is there", async () => {
  const saved = new Map<string, SavedBrief>();
  box("1", saved, [document({})]).save(plan, new Set([plan, "lost.tool.json"]), told);
  expect((await box("1", saved, [document({})]).read(plan))?.files).not.toBeNull();
  const found = { ...document({}), path: "lost.tool.json" };
  expect((await box("1", saved, [document({}), found]).read(plan))?.files).toBeNull();
});

test("BriefBox gives nothing where the build is another one or cannot be told", async () => {
  const saved = new Map<string, SavedBrief>();
  box("1", saved, [document({})]).save(plan, new Set([plan]), told);
  expect(await box("2", saved, [document({})]).read(plan)).toBeNull();
  expect(await box(null, saved, [document({})]).read(plan)).toBeNull();
});

test("BriefBox gives nothing where the database fails", async () => {
  const failing = { read: () => Promise.reject(new Error("closed")), save: () => Promise.reject(new Error("full")) };
  const tried = new BriefBox(failing, { entries: () => [], subscribe: () => () => undefined }, "1");
  tried.save(plan, new Set(), told);
  expect(await tried.read(plan)).toBeNull();
});
