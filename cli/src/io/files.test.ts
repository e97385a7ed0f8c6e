import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { diskFiles, writeWhole } from "./files.js";

const folder = mkdtempSync(join(tmpdir(), "delaywright-files-"));
afterAll(() => rmSync(folder, { recursive: true }));
writeFileSync(join(folder, "small.json"), "{}");
writeFileSync(join(folder, "huge.json"), "");
truncateSync(join(folder, "huge.json"), 100_000_000);
mkdirSync(join(folder, "inner"));

describe("diskFiles", () => {
  test("reads a file", async () => {
    expect(await diskFiles.read(join(folder, "small.json"))).toMatchObject({ ok: true });
  });

  test.each([
    ["gone.json", "missing"],
    ["small.json/more", "missing"],
    ["nul\u0000.json", "missing"],
    [`${"x".repeat(5000)}.json`, "missing"],
    ["inner", "not-a-file"],
    ["huge.json", "too-large"],
  ])("says why it does not read %s", async (name, reason) => {
    expect(await diskFiles.read(join(folder, name))).toEqual({ ok: false, reason });
  });

  test("refuses what is no file, without waiting for its end", async () => {
    expect(await diskFiles.read("/dev/zero")).toEqual({ ok: false, reason: "not-a-file" });
  });

  test("resolves beside the file that refers", () => {
    expect(diskFiles.resolve(join("plans", "plan.json"), "../demo.rocket.json")).toBe("demo.rocket.json");
    expect(diskFiles.resolve("plan.json", join(folder, "small.json"))).toBe(join(folder, "small.json"));
  });

  test("lists a folder, and nothing of one that is not there", async () => {
    expect(await diskFiles.list(folder)).toEqual(["huge.json", "inner", "small.json"]);
    expect(await diskFiles.list(join(folder, "gone"))).toEqual([]);
  });
});

describe("writeWhole()", () => {
  const out = join(folder, "inner", "card.html");

  test("writes a file, and over one, and leaves nothing beside it", async () => {
    expect(await writeWhole(out, "one")).toBeNull();
    expect(await writeWhole(out, "two")).toBeNull();
    expect(readFileSync(out, "utf8")).toBe("two");
    expect(readdirSync(join(folder, "inner"))).toEqual(["card.html"]);
  });

  test.each([
    ["gone/card.html", "there is no such folder"],
    ["small.json/card.html", "there is no such folder"],
    ["inner", "it is a folder"],
    ["inner/.", "it is a folder"],
  ])("says why it does not write %s, and leaves nothing", async (name, reason) => {
    expect(await writeWhole(`${folder}/${name}`, "x")).toBe(reason);
    expect(readdirSync(folder).filter((each) => each.endsWith(".tmp"))).toEqual([]);
  });
});
