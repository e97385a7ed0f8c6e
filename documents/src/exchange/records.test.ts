import { describe, expect, test } from "vitest";
import { file } from "../../test/files.js";
import { LARGEST_FILE } from "../decode.js";
import { utf8 } from "../file-source.js";
import { readDocument } from "../read.js";
import { exportLibraries } from "./export-library.js";
import { importFiles } from "./import-files.js";
import { recordPath } from "./records.js";

const log = (source: string) => ({
  kind: "log",
  version: 1,
  name: "Third flight",
  source,
  columns: { time: { column: "Time (s)", unit: "s" }, height: { column: "Height (m)", unit: "m" } },
});
/** Bytes that no text holds, the same in every run. */
const bytesOf = (length: number) => Uint8Array.from({ length }, (_, i) => (i * i * 31 + (i >> 8)) % 256);

/** A record to be exported, which notes how much of it is read at once. */
function exported({ path, gzip }: { readonly path: string; readonly gzip: Uint8Array }, stretches: number[] = []) {
  const read = async (from: number, to: number) => {
    stretches.push(to - from);
    return gzip.subarray(from, to);
  };
  return { path, size: gzip.length, read };
}

describe("records", () => {
  test("come back as they were, in as many libraries as it takes, with the logs that name them", async () => {
    const large = { path: recordPath("large.csv", utf8("large")), gzip: bytesOf(7_000_001) };
    const small = { path: recordPath("small.csv", utf8("small")), gzip: bytesOf(1) };
    const entries = [large, small].map(({ path }, i) => ({ path: `log-${i}.log.json`, raw: log(path) }));
    const stretches: number[] = [];
    const texts = await exportLibraries(entries, "Bench", [exported(large, stretches), exported(small)]);
    // as much at once as takes a few milliseconds to turn into text
    expect(Math.max(...stretches)).toBeLessThanOrEqual(200_000);
    expect(stretches.reduce((sum, each) => sum + each)).toBe(7_000_001);
    expect(texts.length).toBe(3);
    for (const text of texts) {
      expect(utf8(text).length).toBeLessThanOrEqual(LARGEST_FILE);
      expect(readDocument(text, { file: "backup.json" }).issues).toEqual([]);
    }
    const back = await importFiles(texts.map((text, i) => file(`backup-${i}.json`, text)));
    expect(back.issues).toEqual([]);
    expect(back.entries.map(({ path, state, issues }) => ({ path, state, issues }))).toEqual(
      entries.map(({ path }) => ({ path, state: "ready", issues: [] })),
    );
    const found = new Map(back.records.map((record) => [record.path, record]));
    for (const { path, gzip } of [large, small]) {
      expect(found.get(path)?.gzip).toBe(true);
      expect(Buffer.from(found.get(path)?.bytes ?? []).equals(Buffer.from(gzip))).toBe(true);
    }
  });

  test("of which a part is missing, or is no bytes, are told and stop nothing else", async () => {
    const record = { path: recordPath("large.csv", utf8("large")), gzip: bytesOf(4_000_000) };
    const entries = [{ path: "a.log.json", raw: log(record.path) }];
    const [first = ""] = await exportLibraries(entries, "Bench", [exported(record)]);
    const half = await importFiles([file("backup.json", first)]);
    expect(half.records).toEqual([]);
    expect(half.issues).toMatchObject([{ file: record.path, code: "record-incomplete", found: "1 of 2 parts" }]);
    expect(half.entries).toMatchObject([{ path: "a.log.json", issues: [{ code: "file-missing" }] }]);
    const broken = { kind: "library", version: 1, name: "B", documents: [], records: [{ file: "a.csv", gzip: "%" }] };
    expect((await importFiles([file("b.json", broken)])).issues).toMatchObject([{ code: "record-broken" }]);
    const bomb = { ...broken, records: [{ file: "a.csv", gzip: "MQ==", part: 1, of: 1e9 }] };
    const told = await importFiles([file("b.json", bomb)]);
    expect([told.records, told.issues.map(({ path }) => path)]).toEqual([[], ["records[0].of"]]);
  });

  test("come with a log from beside it, under a path that says what is in them", async () => {
    const text = "Time (s),Height (m)\n0,0\n1,10\n";
    const back = await importFiles([
      file("f/third.log.json", log("raw/Third Flight.csv")),
      file("f/raw/Third Flight.csv", text),
    ]);
    const path = recordPath("Third Flight.csv", utf8(text));
    expect(back.records).toEqual([{ path, bytes: utf8(text), gzip: false }]);
    expect(back.entries[0]?.raw).toEqual(log(path));
    expect([back.curves, back.issues]).toEqual([[], []]);
  });
});

describe("recordPath()", () => {
  test("tells files apart by what is in them, and keeps their name readable", () => {
    expect(recordPath("Third flight.CSV", utf8("1"))).toMatch(/^third-flight-[0-9a-f]{16}\.csv$/);
    expect(recordPath("a.csv", utf8("1"))).not.toBe(recordPath("a.csv", utf8("2")));
    expect(recordPath("x/a.csv", utf8("1"))).toBe(recordPath("a.csv", utf8("1")));
    expect(recordPath("?.csv", utf8("1"))).toMatch(/^log-/);
  });
});
