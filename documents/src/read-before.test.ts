import { expect, test } from "vitest";
import { memoryFiles, utf8 } from "./file-source.js";
import { loadAny } from "./load.js";
import { ReadBefore } from "./read-before.js";

const text = (elevation: string): string => JSON.stringify({ kind: "field", version: 1, name: "Larkmoor", elevation });

test("ReadBefore gives what it read of the same bytes, and reads others, another name and other kinds anew", () => {
  const before = new ReadBefore();
  const bytes = utf8(text("210 m"));
  const read = before.read(bytes, { file: "larkmoor.json" });
  expect(read.state).toBe("ready");
  expect(before.read(bytes, { file: "larkmoor.json" })).toBe(read);
  expect(before.read(utf8(text("high")), { file: "larkmoor.json" }).state).toBe("invalid");
  expect(before.read(bytes, { file: "larkmoor.json", kinds: ["motor"] }).issues[0]?.code).toBe("wrong-kind");
  const wrong = utf8(text("high"));
  expect(["one.json", "other.json"].map((file) => before.read(wrong, { file }).issues[0]?.file)).toEqual([
    "one.json",
    "other.json",
  ]);
});

test("a source that remembers loads as one that does not, also after a file has changed", async () => {
  const files: Record<string, Uint8Array> = { "larkmoor.json": utf8(text("210 m")) };
  const remembering = { ...memoryFiles(files), before: new ReadBefore() };
  for (const next of ["210 m", "high", "0.3 km"]) {
    files["larkmoor.json"] = utf8(text(next));
    expect(await loadAny("larkmoor.json", remembering)).toEqual(await loadAny("larkmoor.json", memoryFiles(files)));
  }
});
