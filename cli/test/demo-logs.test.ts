import { readFileSync } from "node:fs";
import { join } from "node:path";
import * as documents from "@delaywright/documents";
import * as engine from "@delaywright/engine";
import { describe, expect, test } from "vitest";
import { demoDebriefs, demoLogs, demoLogsFolder } from "../../scripts/demo-logs.mjs";
import { diskFiles } from "../src/io/files.js";
import { memoryIo } from "../src/io/memory.js";
import { run } from "../src/run.js";

const files = await demoLogs({ ...engine, ...documents }, diskFiles);
const stale = "after a change run: node scripts/demo-logs.mjs";

/** Runs words in the demo's folder; what it writes is kept in memory. */
async function debriefed(words: readonly string[]) {
  const inFolder = (path: string): string => join(demoLogsFolder, path);
  const io = memoryIo(
    {},
    {
      files: {
        ...diskFiles,
        read: (path) =>
          path === words.at(-1) ? Promise.resolve({ ok: false, reason: "missing" }) : diskFiles.read(inFolder(path)),
        readRecord: (path) => diskFiles.readRecord(inFolder(path)),
        list: (folder) => diskFiles.list(inFolder(folder)),
      },
    },
  );
  const code = await run(words, io, { version: "0.0.0-test", debug: false });
  return { code, ...io.written };
}

describe("the demo's logs", () => {
  test(`are what the script makes, to the letter; ${stale}`, () => {
    expect(files.map(({ name }) => name)).toEqual(["first-flight.csv", "second-flight.csv", "third-flight.csv"]);
    for (const { name, text } of files) expect(readFileSync(join(demoLogsFolder, name), "utf8"), name).toBe(text);
  });

  test.each(files.map(({ name, text }) => [name, text] as const))(
    "%s says that it is invented, and is read",
    (_, text) => {
      expect(text.split("\n")[0]).toContain("Invented: no rocket flew this.");
      const read = documents.readLog(text);
      expect(read.ok && engine.flightsIn(read.samples)).toHaveLength(1);
    },
  );

  test(`are debriefed as the flights beside them say; ${stale}`, async () => {
    for (const words of demoDebriefs.slice(0, 1)) {
      const output = words.at(-1) ?? "";
      const { code, err, files: written } = await debriefed(words);
      expect({ code, err }).toEqual({ code: 0, err: "" });
      expect(JSON.parse(written[output] ?? "")).toEqual(JSON.parse(readFileSync(join(demoLogsFolder, output), "utf8")));
    }
  });
});
