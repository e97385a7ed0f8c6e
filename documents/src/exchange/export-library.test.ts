import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { file, folders, stored } from "../../test/files.js";
import { field, motor, motorInHand, plan, rocket, tool } from "../../test/fixtures.js";
import { LARGEST_FILE } from "../decode.js";
import { utf8 } from "../file-source.js";
import { readDocument } from "../read.js";
import type { ExportEntry } from "./exchange.js";
import { exportLibraries, exportLibrary } from "./export-library.js";
import { importFiles } from "./import-files.js";

const again = (entries: readonly ExportEntry[]) => importFiles([file("backup.json", exportLibrary(entries, "Bench"))]);

describe("exportLibrary()", () => {
  test("comes back as it was: the documents of the design", async () => {
    const entries = stored(await importFiles(folders));
    const text = exportLibrary(entries, "Bench");
    expect(readDocument(text, { file: "backup.json" }).state).toBe("ready");
    expect(stored(await again(entries))).toEqual(entries);
  });

  test("brings back what is newer, torn, without a kind, deep, a library, and what was typed but not read", async () => {
    let deep: unknown = "end";
    for (let i = 0; i < 62; i += 1) deep = { a: deep };
    const entries: ExportEntry[] = [
      { path: "r.rocket.json", raw: rocket, drafts: { "fins[0].root": "18o mm" } },
      { path: "newer.json", raw: { ...rocket, version: 9 } },
      { path: "torn.json", raw: undefined, text: '{ "kind": "rocket", \u0007 \ud800 <b>' },
      { path: "no-kind.json", raw: { name: "?", list: [1, null, { a: true }] } },
      { path: "deep.json", raw: { kind: "flyer", deep } },
      { path: "inner.json", raw: { kind: "library", version: 1, name: "Inner", documents: [tool] } },
      { path: "torn-too.json", raw: undefined, text: "[", drafts: { name: "x" } },
    ];
    const text = exportLibrary(entries, "Bench");
    expect(readDocument(text, { file: "backup.json" }).issues).toEqual([]);
    const back = stored(await again(entries));
    const byPath = new Map(back.map((entry) => [entry.path, entry]));
    for (const { path, raw, text: was, drafts } of entries)
      expect(byPath.get(path), path).toEqual({ path, raw, ...(raw === undefined ? { text: was } : {}), drafts });
    expect(back.length).toBe(entries.length);
  });

  test("comes back as it was, whatever the documents hold", async () => {
    const paths = fc.uniqueArray(fc.stringMatching(/^[a-z][a-z0-9 .-]{0,20}[a-z]\.json$/), { maxLength: 6 });
    const value = fc.jsonValue({ maxDepth: 4 }).map((each) => JSON.parse(JSON.stringify(each)) as unknown);
    const key = fc.string({ maxLength: 8 }).filter((each) => each !== "__proto__");
    const raw = fc.oneof(
      fc.constantFrom<unknown>(rocket, motor, tool, field, motorInHand, plan),
      fc.dictionary(key, value, { maxKeys: 4, noNullPrototype: true }),
      fc.record({ kind: fc.constantFrom("rocket", "flyer", "library"), other: value }),
    );
    await fc.assert(
      fc.asyncProperty(paths, fc.array(raw, { minLength: 6, maxLength: 6 }), async (names, raws) => {
        const clean = (each: unknown) => !JSON.stringify(each).includes('"__proto__"');
        const entries = names
          .map((path, i) => ({ path, raw: raws[i] as ExportEntry["raw"], drafts: undefined }))
          .filter((entry) => clean(entry.raw));
        const back = stored(await again(entries));
        const sorted = (list: readonly ExportEntry[]) => [...list].sort((a, b) => (a.path < b.path ? -1 : 1));
        expect(sorted(back)).toEqual(sorted(entries));
      }),
      { numRuns: 60 },
    );
  });
});

describe("exportLibraries()", () => {
  test("is one library, and as many as it takes where one would be too large to read again", async () => {
    expect(await exportLibraries([{ path: "t.json", raw: tool }], "Bench")).toHaveLength(1);
    expect(await exportLibraries([], "Bench")).toHaveLength(1);
    const note = "n".repeat(9_000);
    const entries = Array.from({ length: 700 }, (_, i) => ({ path: `m-${i}.motor.json`, raw: { ...motor, note } }));
    const texts = await exportLibraries(entries, "Bench");
    expect(texts.length).toBe(2);
    for (const text of texts) expect(utf8(text).length).toBeLessThanOrEqual(LARGEST_FILE);
    const back = await importFiles(texts.map((text, i) => file(`backup-${i}.json`, text)));
    expect(stored(back).map(({ path, raw }) => ({ path, raw }))).toEqual(entries);
  });
});
