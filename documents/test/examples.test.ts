import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { gunzipSync, gzipSync } from "node:zlib";
import { expect, test } from "vitest";
import type { GivenFile } from "../src/exchange/exchange.js";
import { exportLibraries } from "../src/exchange/export-library.js";
import { importFiles } from "../src/exchange/import-files.js";
import { memoryFiles, utf8 } from "../src/file-source.js";
import { loadPlan } from "../src/load-plan.js";
import { planToEngine } from "../src/to-engine.js";

/** Every document, thrust curve and log of a flight of the command line's examples, with its folder. */
function exampleFiles(): GivenFile[] {
  const root = fileURLToPath(new URL("../../cli/examples/", import.meta.url));
  return (
    readdirSync(root, { recursive: true, encoding: "utf8" })
      .filter((name) => /\.(json|csv)$/.test(name) && !name.includes("monte-carlo"))
      // belongs to no document yet: it is there to be debriefed
      .filter((name) => name !== "debrief/third-flight.csv")
      .sort()
      .map((name) => ({ name, bytes: new Uint8Array(readFileSync(`${root}${name}`)) }))
  );
}

test("importFiles() takes all examples at once, and every plan is as ready as in its folder", async () => {
  const files = exampleFiles();
  const { entries, curves, issues } = await importFiles(files);
  expect(issues).toEqual([]);
  expect(curves).toEqual([]);
  expect(entries.flatMap((entry) => entry.issues)).toEqual([]);
  const folders = memoryFiles(Object.fromEntries(files.map(({ name, bytes }) => [name, bytes])));
  const flat = memoryFiles(Object.fromEntries(entries.map(({ path, raw }) => [path, JSON.stringify(raw)])));
  const plans = files.filter(({ name }) => name.endsWith("/plan.json"));
  const flatPlans = entries.filter((entry) => entry.kind === "plan");
  expect(plans.length).toBeGreaterThanOrEqual(7);
  expect(flatPlans.length).toBe(plans.length);
  for (const [i, { name }] of plans.entries()) {
    const [before, after] = [await loadPlan(name, folders), await loadPlan(flatPlans[i]?.path ?? "", flat)];
    if (before.parts === undefined || after.parts === undefined) throw new Error(name);
    const [one, other] = [planToEngine(before.parts), planToEngine(after.parts)];
    expect(one.ok && other.ok && other.inputs, name).toEqual(one.ok && one.inputs);
  }
});

test("exportLibraries() and importFiles() give every example back as it was", async () => {
  const { entries, records } = await importFiles(exampleFiles());
  expect(records.length).toBe(2);
  const packed = records.map(({ path, bytes }) => {
    const gzip = gzipSync(bytes);
    return { path, size: gzip.length, read: async (from: number, to: number) => gzip.subarray(from, to) };
  });
  const [text = "", ...others] = await exportLibraries(entries, "Examples", packed);
  expect(others).toEqual([]);
  const back = await importFiles([{ name: "backup.json", bytes: utf8(text) }]);
  const unzipped = back.records.map(({ path, bytes, gzip }) => ({ path, bytes: gzip ? gunzipSync(bytes) : bytes }));
  expect(unzipped.map(({ path, bytes }) => [path, [...bytes]])).toEqual(
    records.map(({ path, bytes }) => [path, [...bytes]]),
  );
  expect(back).toEqual({ entries, curves: [], records: back.records, issues: [] });
});
